using System.Numerics;
using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Networks;

namespace Loadmark.Circuits.Devices;

/// <summary>
/// With u = known + w·du/dt and C·du/dt = i = (v − u) / R, the branch is a conductance 1 / (R + w / C) in series with the known
/// voltage: no unknown of its own.
/// </summary>
internal sealed class CapacitorElement(Capacitor capacitor, int index) : Element(capacitor, index)
{
    private ParameterTable _parameters = null!;
    private int _farads;
    private int _ohms;
    private int _state;
    private double _siemens;

    public override void Declare(NetworkLayout layout)
    {
        base.Declare(layout);
        _parameters = layout.Parameters;
        _farads = layout.AddParameter(this, DeviceParameter.Farads, capacitor.Farads);
        _ohms = layout.AddParameter(this, DeviceParameter.SeriesOhms, capacitor.SeriesOhms, mayBeZero: true);
        _state = layout.AddState();
    }

    public override void StampMatrix(EquationSystem system, AnalysisPoint point)
    {
        _siemens = point.IsSteady ? 0 : 1 / (_parameters.Values[_ohms] + (point.Weight / _parameters.Values[_farads]));
        system.AddConductance(Pair, _siemens);
    }

    public override void StampConstant(EquationSystem system, AnalysisPoint point) =>
        system.AddConstant(Pair, -_siemens * point.Known[_state]);

    public override void StampSmallSignal(SmallSignalSystem system, double angularFrequency)
    {
        var admittance = new Complex(0, angularFrequency * _parameters.Values[_farads]);
        system.AddAdmittance(Pair, admittance / (1 + (admittance * _parameters.Values[_ohms])));
    }

    public override void Accept(EquationSystem system, AnalysisPoint point)
    {
        var volts = system.VoltageOf(Pair);
        if (point.IsSteady)
        {
            (point.States[_state], point.Slopes[_state]) = (volts, 0);
            return;
        }

        var slope = _siemens * (volts - point.Known[_state]) / _parameters.Values[_farads];
        point.Slopes[_state] = slope;
        point.States[_state] = point.Known[_state] + (point.Weight * slope);
    }

    public override void Reset(AnalysisPoint point)
    {
        if (point.IsSteady)
            return;
        (point.States[_state], point.Slopes[_state]) = (capacitor.InitialVolts, 0);
    }

    public override double Current(EquationSystem system, AnalysisPoint point) =>
        point.IsSteady ? 0 : point.Slopes[_state] * _parameters.Values[_farads];
}
