using Loadmark.Circuits.Networks;

namespace Loadmark.Circuits.Analyses;

/// <summary>
/// Sees whether what a network does repeats: whether it comes back to a state in which it was before, all of it (states of devices, times
/// that run, voltages, heat), as a network whose sources are constant must then do again and again.
/// </summary>
/// <remarks>
/// With what it compares is taken anew after 1, 2, 4, 8 … changes, as in R. P. Brent, An improved Monte Carlo factorization algorithm,
/// BIT 20 (1980), so that the way into the cycle and the cycle's length need not be known. A small change from round to round may add up
/// (a fuse that warms, a capacitor that is pumped up), so a round counts as repeated only where all that is to come would not move a
/// state by more than 1 %, if it went on moving as it did.
/// </remarks>
internal sealed class RepeatWatch
{
    private const double MostDrift = 0.01;
    private const double Nearness = 0.05;
    private const double LeastScale = 0.1;

    private readonly Network _network;
    private readonly double _end;
    private readonly DeviceState[] _devices;
    private readonly double[] _states;
    private readonly double[] _scales;
    private readonly double[] _clocks;
    private readonly double[] _present;
    private double _time;
    private int _window;
    private int _marks;
    private int _passes;

    /// <summary>Prepares to watch.</summary>
    /// <param name="network">The network.</param>
    /// <param name="end">Until when it would be computed, s.</param>
    public RepeatWatch(Network network, double end)
    {
        (_network, _end) = (network, end);
        _devices = new DeviceState[network.Elements.Length];
        _states = new double[network.Point.States.Length];
        _scales = new double[network.Point.States.Length];
        var clocks = 0;
        foreach (var element in network.Elements)
            clocks += element.ClockCount;
        _clocks = new double[clocks];
        _present = new double[clocks];
    }

    /// <summary>How many like rounds make up the time that <see cref="Mark"/> has returned, 1 or more.</summary>
    public int Rounds => _passes;

    /// <summary>Whether a network can repeat: no source of it goes by the time of day.</summary>
    public static bool Suits(Network network)
    {
        foreach (var element in network.Elements)
        {
            if (element.GoesByTime)
                return false;
        }

        return true;
    }

    /// <summary>Forgets what it has seen.</summary>
    public void Begin()
    {
        Array.Fill(_scales, LeastScale);
        (_window, _marks, _passes) = (0, 0, 0);
    }

    /// <summary>Looks at the network after a device has changed its state.</summary>
    /// <returns>After how long it repeats, s; null where that is not seen yet.</returns>
    public double? Mark()
    {
        ReadClocks(_present);
        for (var state = 0; state < _scales.Length; state++)
            _scales[state] = Math.Max(_scales[state], Math.Abs(_network.Point.States[state]));
        if (_window > 0 && IsAlike())
        {
            var round = _network.Point.Time - _time;
            var distance = Distance(round);
            _passes += distance <= Nearness ? 1 : 0;
            if (distance * Math.Max(1, (_end - _network.Point.Time) / round) <= MostDrift)
                return round;
        }

        if (_marks++ == _window)
            TakeOver();
        return null;
    }

    private void TakeOver()
    {
        (_window, _marks, _passes, _time) = (Math.Max(1, 2 * _window), 0, 0, _network.Point.Time);
        _network.Point.States.CopyTo(_states, 0);
        _present.CopyTo(_clocks, 0);
        foreach (var element in _network.Elements)
            _devices[element.Index] = element.State;
    }

    /// <summary>Whether the devices are in the same states as then, and the same times run.</summary>
    private bool IsAlike()
    {
        foreach (var element in _network.Elements)
        {
            if (element.State != _devices[element.Index])
                return false;
        }

        for (var clock = 0; clock < _clocks.Length; clock++)
        {
            if (double.IsInfinity(_clocks[clock]) != double.IsInfinity(_present[clock]))
                return false;
        }

        return _network.Point.Time > _time;
    }

    /// <summary>The largest distance of a state from what it was then, as a share of its scale; of a time, as one of the round.</summary>
    private double Distance(double round)
    {
        var largest = 0.0;
        for (var state = 0; state < _states.Length; state++)
            largest = Math.Max(largest, Math.Abs(_network.Point.States[state] - _states[state]) / _scales[state]);
        for (var clock = 0; clock < _clocks.Length; clock++)
        {
            if (!double.IsInfinity(_clocks[clock]))
                largest = Math.Max(largest, Math.Abs(_present[clock] - _clocks[clock]) / round);
        }

        return largest;
    }

    private void ReadClocks(double[] clocks)
    {
        var place = 0;
        foreach (var element in _network.Elements)
        {
            element.ReadClocks(clocks.AsSpan(place, element.ClockCount), _network.Point.Time);
            place += element.ClockCount;
        }
    }
}
