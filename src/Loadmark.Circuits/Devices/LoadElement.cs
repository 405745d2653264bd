using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Networks;

namespace Loadmark.Circuits.Devices;

internal sealed class LoadElement(LoadDevice load, int index) : Element(load, index)
{
    /// <summary>What a load lets through while it is off, S: only to keep its nodes defined.</summary>
    internal const double OffSiemens = 1e-9;

    private ParameterTable _parameters = null!;
    private int _draw;
    private int _bootDraw;
    private int _bootSeconds;
    private int _startsAbove;
    private int _stopsBelow;
    private double _bootEnds = double.PositiveInfinity;
    private double _starts = double.PositiveInfinity;

    public override bool IsNonlinear => true;

    public override int IndicatorCount => 1;

    /// <summary>Whether the load draws. A steady-state analysis switches it.</summary>
    public bool IsOn { get; set; } = true;

    public bool IsBooting { get; private set; }

    /// <summary>Whether the load is off and its voltage suffices, so that it will start if that lasts.</summary>
    private bool IsWaiting => !double.IsPositiveInfinity(_starts);

    public double StartsAbove => _parameters.Values[_startsAbove];

    public double StopsBelow => _parameters.Values[_stopsBelow];

    public double Draw => _parameters.Values[_draw];

    public LoadLaw Law => load.Law;

    public double FloorVolts => load.FloorVolts;

    public override DeviceState State => !IsOn ? DeviceState.Off : IsBooting ? DeviceState.Booting : DeviceState.Running;

    public override void Declare(NetworkLayout layout)
    {
        base.Declare(layout);
        var mayBeZero = load.Law != LoadLaw.Resistance;
        _parameters = layout.Parameters;
        _draw = layout.AddParameter(this, DeviceParameter.Draw, load.Draw, mayBeZero);
        _bootDraw = layout.AddParameter(this, DeviceParameter.BootDraw, load.BootDraw ?? load.Draw, mayBeZero);
        _bootSeconds = layout.AddParameter(this, DeviceParameter.BootSeconds, load.BootSeconds, mayBeZero: true);
        _startsAbove = layout.AddParameter(this, DeviceParameter.StartsAbove, load.StartsAbove, mayBeZero: true);
        _stopsBelow = layout.AddParameter(this, DeviceParameter.StopsBelow, load.StopsBelow, mayBeZero: true);
    }

    public override void StampNonlinear(EquationSystem system, AnalysisPoint point)
    {
        var (amps, siemens) = Evaluate(system.VoltageOf(Pair));
        system.AddCurrent(Pair, amps, siemens);
    }

    public override double Current(EquationSystem system, AnalysisPoint point) => Evaluate(system.VoltageOf(Pair)).Amps;

    public override void Reset(AnalysisPoint point)
    {
        IsOn = point.IsSteady;
        IsBooting = false;
        _bootEnds = double.PositiveInfinity;
        _starts = double.PositiveInfinity;
        if (!point.IsSteady && StartsAbove == 0)
            Start(point.Time);
    }

    public override void Indicate(Span<double> indicators, EquationSystem system, AnalysisPoint point)
    {
        var volts = system.VoltageOf(Pair);
        indicators[0] = IsOn ? StopsBelow - volts : IsWaiting ? StartsAbove - volts : volts - StartsAbove;
        if (IsOn && StopsBelow == 0)
            indicators[0] = -1;
    }

    public override bool IsSwitch(int indicator) => true;

    public override bool Cross(int indicator, bool isPositive, AnalysisPoint point)
    {
        if (!isPositive)
            return false;
        if (IsOn)
        {
            IsOn = IsBooting = false;
            _bootEnds = double.PositiveInfinity;
            return true;
        }

        // Waiting draws nothing more, so the equations jump only where there is nothing to wait for.
        if (load.DelaySeconds > 0)
        {
            _starts = IsWaiting ? double.PositiveInfinity : point.Time + load.DelaySeconds;
            return false;
        }

        Start(point.Time);
        return true;
    }

    public override double NextTime(double seconds) => IsBooting ? _bootEnds : _starts;

    public override int ClockCount => 1;

    public override void ReadClocks(Span<double> clocks, double seconds) => clocks[0] = NextTime(seconds) - seconds;

    public override bool Elapse(AnalysisPoint point)
    {
        if (point.Time >= _starts)
        {
            Start(point.Time);
            return true;
        }

        if (!IsBooting || point.Time < _bootEnds)
            return false;
        IsBooting = false;
        _bootEnds = double.PositiveInfinity;
        return true;
    }

    private void Start(double seconds)
    {
        IsOn = true;
        _starts = double.PositiveInfinity;
        IsBooting = load.BootDraw is not null && _parameters.Values[_bootSeconds] > 0;
        _bootEnds = IsBooting ? seconds + _parameters.Values[_bootSeconds] : double.PositiveInfinity;
    }

    private (double Amps, double Siemens) Evaluate(double volts) =>
        IsOn
            ? LoadCurve.At(load.Law, _parameters.Values[IsBooting ? _bootDraw : _draw], load.FloorVolts, volts)
            : (OffSiemens * volts, OffSiemens);
}
