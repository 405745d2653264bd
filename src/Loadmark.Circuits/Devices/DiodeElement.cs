using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Networks;

namespace Loadmark.Circuits.Devices;

/// <summary>A junction, behind a node of its own where the diode has a series resistance.</summary>
internal sealed class DiodeElement(Diode diode, int index) : Element(diode, index)
{
    /// <summary>Boltzmann constant over elementary charge (SI 2019, exact) times 300.15 K, V.</summary>
    private const double ThermalVolts = 1.380649e-23 * 300.15 / 1.602176634e-19;

    /// <summary>SPICE's GMIN, which it puts across every junction, S.</summary>
    private const double JunctionSiemens = 1e-12;

    private readonly double _unit = diode.Emission * ThermalVolts;
    private readonly double _critical = diode.Emission * ThermalVolts * Math.Log(
        diode.Emission * ThermalVolts / (Math.Sqrt(2) * diode.SaturationAmps));
    private int _inside;
    private PairSlots _junction;
    private PairSlots _series;
    private double _last;

    public override bool IsNonlinear => true;

    public override void Declare(NetworkLayout layout)
    {
        var (plus, minus) = (layout.Plus(this), layout.Minus(this));
        _inside = diode.SeriesOhms > 0 ? layout.AddUnknown(this) : plus;
        layout.Meet(plus, _inside);
        layout.Meet(_inside, minus);
    }

    public override void Bind(NetworkLayout layout)
    {
        var (plus, minus) = (layout.Plus(this), layout.Minus(this));
        Pair = new PairSlots(layout.Place(plus), layout.Place(minus), -1, -1, -1, -1);
        _junction = layout.Pair(_inside, minus);
        if (diode.SeriesOhms > 0)
            _series = layout.Pair(plus, _inside);
    }

    public override void Reset(AnalysisPoint point) => _last = 0;

    public override void StampMatrix(EquationSystem system, AnalysisPoint point)
    {
        if (diode.SeriesOhms > 0)
            system.AddConductance(_series, 1 / diode.SeriesOhms);
    }

    public override void StampNonlinear(EquationSystem system, AnalysisPoint point)
    {
        var asked = system.VoltageOf(_junction);
        var volts = Limit(asked);
        if (Math.Abs(volts - asked) > 1e-9)
            system.IsHeldBack = true;
        _last = volts;
        var (amps, siemens) = Law(volts);
        system.AddCurrent(_junction, amps + (siemens * (asked - volts)), siemens);
    }

    public override double Current(EquationSystem system, AnalysisPoint point) => Law(system.VoltageOf(_junction)).Amps;

    private (double Amps, double Siemens) Law(double volts)
    {
        var exponential = Math.Exp(Math.Min(volts / _unit, 600));
        return (
            (diode.SaturationAmps * (exponential - 1)) + (JunctionSiemens * volts),
            (diode.SaturationAmps * exponential / _unit) + JunctionSiemens);
    }

    /// <summary>A step up the exponential goes as far as its logarithm: L. W. Nagel, SPICE2, memo ERL-M520 (1975), section 4.3.</summary>
    private double Limit(double volts)
    {
        if (volts <= _critical || Math.Abs(volts - _last) <= 2 * _unit)
            return volts;
        if (_last <= 0)
            return _unit * Math.Log(volts / _unit);
        var argument = 1 + ((volts - _last) / _unit);
        return argument > 0 ? _last + (_unit * Math.Log(argument)) : _critical;
    }
}
