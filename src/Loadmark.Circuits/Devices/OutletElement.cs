using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Networks;

namespace Loadmark.Circuits.Devices;

internal sealed class OutletElement(OutletDevice outlet, int index) : Element(outlet, index)
{
    /// <summary>Keeps the node of an outlet that gives nothing defined, S.</summary>
    internal const double OffSiemens = 1e-9;

    private const int Blocking = -1;
    private const int Straight = 0;
    private const int Limited = 1;
    private const int AboveLimit = 0;
    private const int AboveEmf = 1;

    private ParameterTable _parameters = null!;
    private int _volts;
    private int _ohms;
    private int _limit;
    private double _started;
    private double _tripsAt = double.PositiveInfinity;
    private double _retriesAt = double.PositiveInfinity;
    private int _piece;
    private bool _isLimiting;
    private bool _isBlocking;

    public override bool IsNonlinear => true;

    public override int IndicatorCount => 2;

    public double Volts => _parameters.Values[_volts];

    public double SourceOhms => _parameters.Values[_ohms];

    public double LimitAmps => outlet.Overload == OverloadBehaviour.None ? double.PositiveInfinity : _parameters.Values[_limit];

    public override DeviceState State =>
        IsSwitchedOff ? DeviceState.Off : _isLimiting ? DeviceState.Limiting : _isBlocking ? DeviceState.Blocking : DeviceState.Regulating;

    private bool IsSwitchedOff => !double.IsPositiveInfinity(_retriesAt);

    public override void Declare(NetworkLayout layout)
    {
        base.Declare(layout);
        _parameters = layout.Parameters;
        _volts = layout.AddParameter(this, DeviceParameter.Volts, outlet.Volts, mayBeZero: true);
        _ohms = layout.AddParameter(this, DeviceParameter.SourceOhms, outlet.SourceOhms);
        _limit = layout.AddParameter(this, DeviceParameter.LimitAmps, outlet.LimitAmps);
    }

    public override void Reset(AnalysisPoint point)
    {
        _piece = Straight;
        _isLimiting = _isBlocking = false;
        _tripsAt = _retriesAt = double.PositiveInfinity;
        _started = point.IsSteady ? double.NegativeInfinity : outlet.DelaySeconds;
    }

    public override void StampNonlinear(EquationSystem system, AnalysisPoint point)
    {
        var (volts, emf) = (system.VoltageOf(Pair), Emf(point));
        var (amps, siemens) = Give(volts, emf);
        if (!IsSwitchedOff)
        {
            // Newton could leap between limit and blocking for ever; it has to pass the straight part between them.
            var free = (emf - volts) / SourceOhms;
            var piece = free <= 0 ? Blocking : free <= Limit(volts).Amps ? Straight : Limited;
            if (Math.Abs(piece - _piece) > 1)
            {
                piece = Straight;
                (amps, siemens) = (free - (OffSiemens * volts), (1 / SourceOhms) + OffSiemens);
                system.IsHeldBack = true;
            }

            _piece = piece;
        }

        system.AddCurrent(Pair, -amps, siemens);
    }

    public override double Current(EquationSystem system, AnalysisPoint point) => Give(system.VoltageOf(Pair), Emf(point)).Amps;

    /// <summary>In a steady state: notes which part of the characteristic the solution lies on.</summary>
    public override void Accept(EquationSystem system, AnalysisPoint point)
    {
        if (!point.IsSteady)
            return;
        var volts = system.VoltageOf(Pair);
        var free = (Emf(point) - volts) / SourceOhms;
        _isBlocking = free < 0;
        _isLimiting = free > Limit(volts).Amps;
    }

    public override void Indicate(Span<double> indicators, EquationSystem system, AnalysisPoint point)
    {
        var volts = system.VoltageOf(Pair);
        var free = (Emf(point) - volts) / SourceOhms;
        indicators[AboveLimit] = IsSwitchedOff || double.IsPositiveInfinity(LimitAmps) ? -1 : free - Limit(volts).Amps;
        indicators[AboveEmf] = IsSwitchedOff ? -1 : -free;
    }

    public override bool Cross(int indicator, bool isPositive, AnalysisPoint point)
    {
        if (indicator == AboveEmf)
        {
            _isBlocking = isPositive;
            return false;
        }

        _isLimiting = isPositive;
        if (outlet.Overload == OverloadBehaviour.Hiccup && !IsSwitchedOff)
            _tripsAt = isPositive ? point.Time + outlet.TripSeconds : double.PositiveInfinity;
        return false;
    }

    public override double NextTime(double seconds)
    {
        var next = Math.Min(_tripsAt, _retriesAt);
        if (_started > seconds)
            return Math.Min(next, _started);
        var risen = _started + outlet.SoftStartSeconds;
        return risen > seconds ? Math.Min(next, risen) : next;
    }

    public override int ClockCount => 3;

    public override void ReadClocks(Span<double> clocks, double seconds)
    {
        var risen = _started + outlet.SoftStartSeconds;
        (clocks[0], clocks[1]) = (_tripsAt - seconds, _retriesAt - seconds);
        clocks[2] = risen > seconds ? risen - seconds : double.PositiveInfinity;
    }

    public override bool Elapse(AnalysisPoint point)
    {
        if (point.Time >= _tripsAt)
        {
            _tripsAt = double.PositiveInfinity;
            _retriesAt = point.Time + outlet.OffSeconds;
            _isLimiting = _isBlocking = false;
            return true;
        }

        if (point.Time >= _retriesAt)
        {
            _retriesAt = double.PositiveInfinity;
            _started = point.Time;
        }

        return true;
    }

    private double Emf(AnalysisPoint point)
    {
        if (point.IsSteady)
            return point.SourceShare * Volts;
        var elapsed = point.Time - _started;
        if (elapsed < 0)
            return 0;
        return elapsed >= outlet.SoftStartSeconds ? Volts : Volts * elapsed / outlet.SoftStartSeconds;
    }

    /// <summary>What the outlet gives at a voltage, and by how much that falls per volt.</summary>
    private (double Amps, double Siemens) Give(double volts, double emf)
    {
        var leak = -OffSiemens * volts;
        if (IsSwitchedOff || emf <= volts)
            return (leak, OffSiemens);
        var free = (emf - volts) / SourceOhms;
        var (limit, rise) = Limit(volts);
        return free <= limit ? (free + leak, (1 / SourceOhms) + OffSiemens) : (limit + leak, OffSiemens - rise);
    }

    /// <summary>The limit in force at a voltage, and how it rises per volt.</summary>
    private (double Amps, double Rise) Limit(double volts)
    {
        var limit = LimitAmps;
        if (outlet.Overload != OverloadBehaviour.Foldback)
            return (limit, 0);
        var knee = Volts - (SourceOhms * limit);
        var rise = knee > 0 ? (limit - outlet.ShortAmps) / knee : 0;
        return volts <= 0 ? (outlet.ShortAmps, 0) : volts >= knee ? (limit, 0) : (outlet.ShortAmps + (rise * volts), rise);
    }
}
