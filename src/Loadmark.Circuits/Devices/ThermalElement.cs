using System.Numerics;
using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Networks;

namespace Loadmark.Circuits.Devices;

/// <summary>A resistance that depends on a heat state x, an unknown of its own, with τ·dx/dt = p / P − x and p = v² / R(x).</summary>
internal abstract class ThermalElement(Device device, int index) : Element(device, index)
{
    private int _heat;
    private int _row;
    private int _state;
    private int _heatHeat;
    private int _heatPlus;
    private int _heatMinus;
    private int _plusHeat;
    private int _minusHeat;

    public override bool IsNonlinear => true;

    /// <summary>The heat state as it is now.</summary>
    protected double Heat { get; private set; }

    protected ParameterTable Parameters { get; private set; } = null!;

    protected abstract double RatedWatts { get; }

    protected abstract double ThermalSeconds { get; }

    public override void Declare(NetworkLayout layout)
    {
        base.Declare(layout);
        Parameters = layout.Parameters;
        var (plus, minus) = (layout.Plus(this), layout.Minus(this));
        _heat = layout.AddUnknown(this);
        _state = layout.AddState();
        layout.Meet(plus, _heat);
        layout.Meet(minus, _heat);
    }

    public override void Bind(NetworkLayout layout)
    {
        base.Bind(layout);
        var (plus, minus) = (layout.Plus(this), layout.Minus(this));
        _row = layout.Place(_heat);
        _heatHeat = layout.Value(_heat, _heat);
        _heatPlus = layout.Value(_heat, plus);
        _heatMinus = layout.Value(_heat, minus);
        _plusHeat = layout.Value(plus, _heat);
        _minusHeat = layout.Value(minus, _heat);
    }

    public override void Reset(AnalysisPoint point)
    {
        (point.States[_state], point.Slopes[_state]) = (0, 0);
        Heat = 0;
    }

    public override void StampNonlinear(EquationSystem system, AnalysisPoint point)
    {
        var volts = system.VoltageOf(Pair);
        var heat = system.Unknowns[_row];
        var (ohms, rise) = Resistance(heat);
        var siemens = 1 / ohms;
        var amps = volts * siemens;
        var slopeByHeat = -amps * rise * siemens;
        system.AddCurrent(Pair, amps, siemens);
        system.AddSlope(_plusHeat, slopeByHeat);
        system.AddSlope(_minusHeat, -slopeByHeat);

        // Steady: x = p/P. In time: x − known = weight·(p/P − x)/τ.
        var share = point.IsSteady ? 1 : point.Weight / ThermalSeconds;
        var perWatt = share / RatedWatts;
        system.AddResidual(_row, heat * (point.IsSteady ? 1 : 1 + share));
        system.AddResidual(_row, -perWatt * volts * amps);
        if (!point.IsSteady)
            system.AddResidual(_row, -point.Known[_state]);
        system.AddSlope(_heatHeat, (point.IsSteady ? 1 : 1 + share) - (perWatt * volts * slopeByHeat));
        system.AddSlope(_heatPlus, -perWatt * 2 * amps);
        system.AddSlope(_heatMinus, perWatt * 2 * amps);
    }

    public override void StampSmallSignal(SmallSignalSystem system, double angularFrequency) =>
        system.AddValue(_heatHeat, new Complex(0, angularFrequency * ThermalSeconds));

    public override void Accept(EquationSystem system, AnalysisPoint point)
    {
        Heat = system.Unknowns[_row];
        var volts = system.VoltageOf(Pair);
        point.States[_state] = Heat;
        point.Slopes[_state] = point.IsSteady ? 0 : ((volts * volts / (Resistance(Heat).Ohms * RatedWatts)) - Heat) / ThermalSeconds;
    }

    public override double Current(EquationSystem system, AnalysisPoint point) =>
        system.VoltageOf(Pair) / Resistance(system.Unknowns[_row]).Ohms;

    /// <summary>The heat state at the point that is being solved.</summary>
    protected double HeatOf(EquationSystem system) => system.Unknowns[_row];

    /// <summary>Resistance at a heat state, and how it rises with it.</summary>
    protected abstract (double Ohms, double Rise) Resistance(double heat);
}
