using Loadmark.Circuits.Devices;
using Loadmark.Circuits.Networks;

namespace Loadmark.Circuits.Analyses;

/// <summary>Computes what a network does over time, with steps chosen by their error and events located, not stepped over.</summary>
/// <remarks>See docs/theory/transient.md. May be run again and again; a run allocates nothing once it is under way.</remarks>
public sealed class Transient
{
    private const double Safety = 0.9;
    private const double LargestGrowth = 5;
    private const double SmallestGrowth = 0.2;

    private readonly Network _network;
    private readonly TransientOptions _options;
    private readonly AnalysisPoint _point;
    private readonly TransientStepper _stepper;
    private readonly Indicators _indicators;
    private readonly Element[] _timed;
    private readonly double[] _due;
    private readonly double _longestStep;
    private readonly OperatingPoint? _steady;
    private readonly RepeatWatch? _repeats;
    private double _end;
    private double? _repetition;
    private bool _hasChanged;
    private int _steps;
    private int _rejected;
    private int _located;

    /// <summary>Prepares the analysis of a network.</summary>
    /// <param name="network">The network; the analysis runs in it and leaves it at its last point.</param>
    /// <param name="options">How to compute it.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure of the options is not over 0.</exception>
    public Transient(Network network, TransientOptions options)
    {
        ArgumentNullException.ThrowIfNull(network);
        ArgumentNullException.ThrowIfNull(options);
        foreach (var figure in new[]
        {
            options.EndSeconds,
            options.RelativeError,
            options.AbsoluteError,
            options.LongestStep,
            options.ShortestStep,
            options.EventSeconds,
            options.ChangeLimit,
        })
        {
            if (!(figure > 0))
                throw new ArgumentOutOfRangeException(nameof(options), figure, "Must be over 0.");
        }

        _network = network;
        _options = options;
        _point = network.Point;
        _stepper = new TransientStepper(network);
        _indicators = new Indicators(network);
        _timed =
            [.. network.Elements.Where(element => element is LoadElement or OutletElement or VoltageSourceElement or CurrentSourceElement)];
        _due = new double[_timed.Length];
        _steady = options.StartsSteady ? new OperatingPoint(network) : null;
        _repeats = options.RepeatsAfter < options.EndSeconds && RepeatWatch.Suits(network) ? new(network, options.EndSeconds) : null;
        _longestStep = options.LongestStep;
        foreach (var element in network.Elements)
            _longestStep = Math.Min(_longestStep, element.LongestStep);
    }

    /// <summary>Runs from time 0 to the end.</summary>
    /// <param name="observer">Sees every point and event; null: nobody does.</param>
    /// <param name="cancellation">Stops the run.</param>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public TransientResult Run(ITransientObserver? observer = null, CancellationToken cancellation = default)
    {
        (_steps, _rejected, _located, _stepper.Newton.Iterations) = (0, 0, 0, 0);
        (_end, _repetition, _hasChanged) = (_options.EndSeconds, null, false);
        _repeats?.Begin();
        var most = _options.MostWork == long.MaxValue ? long.MaxValue : _network.Work + _options.MostWork;
        if (Start(observer, cancellation) is { } failure)
            return Result(failure);

        var step = _stepper.FirstStep();
        while (_point.Time < _end)
        {
            LookForRepeat(observer);
            cancellation.ThrowIfCancellationRequested();
            if (_network.Work >= most)
                return Result(TransientStatus.Spent);
            var next = NextTime();
            if (next <= _point.Time)
            {
                if (Change(next, hasCrossed: false, observer, out _) is { } stuck)
                    return Result(stuck);
                continue;
            }

            if (!Advance(ref step, next, out var hasCrossed))
                return Result(TransientStatus.NotFound);
            _steps++;
            if (_point.Time >= Math.BitDecrement(next))
                _point.Time = next;
            observer?.OnPoint(_point.Time, _network);
            if (!hasCrossed && _point.Time < next)
            {
                _stepper.Keep(isSmooth: true);
                _indicators.TakeAsLow();
                continue;
            }

            if (Change(next, hasCrossed, observer, out var jumped) is { } ended)
                return Result(ended);
            if (jumped)
                step = _stepper.FirstStep();
        }

        return Result(_repetition is null ? TransientStatus.Completed : TransientStatus.Repeats);
    }

    /// <summary>Where a change has brought the network back to where it was, lets the run end after one more repetition.</summary>
    private void LookForRepeat(ITransientObserver? observer)
    {
        if (!_hasChanged)
            return;
        _hasChanged = false;
        if (_repeats is null || _repetition is not null || _point.Time < _options.RepeatsAfter)
            return;
        if (_repeats.Mark() is not { } repetition || _point.Time + repetition >= _options.EndSeconds)
            return;
        (_repetition, _end) = (repetition, _point.Time + repetition);
        observer?.OnRepeat(_point.Time, repetition, Math.Max(1, _repeats.Rounds));
    }

    private TransientStatus? Start(ITransientObserver? observer, CancellationToken cancellation)
    {
        if (_options.StartsSteady)
        {
            if (_steady!.Solve(cancellation).Status != OperatingPointStatus.Solved)
                return TransientStatus.NoStart;
            _point.IsSteady = false;
        }
        else
        {
            _point.IsSteady = false;
            (_point.Time, _point.SourceShare) = (0, 1);
            Array.Clear(_network.System.Unknowns);
            foreach (var element in _network.Elements)
                element.Reset(_point);
        }

        _stepper.Keep(isSmooth: false);
        if (!_stepper.ResolveJump())
            return TransientStatus.NotFound;
        observer?.OnPoint(0, _network);
        _indicators.Begin();
        return Change(double.PositiveInfinity, hasCrossed: true, observer, out _);
    }

    /// <summary>The next time at which something is due; notes what.</summary>
    private double NextTime()
    {
        var next = _end;
        for (var index = 0; index < _timed.Length; index++)
        {
            _due[index] = _timed[index].NextTime(_point.Time);
            next = Math.Min(next, _due[index]);
        }

        return next;
    }

    /// <summary>
    /// Makes one step that is accurate enough, up to what is due next or to the first event. False where none can be made.
    /// </summary>
    private bool Advance(ref double step, double next, out bool hasCrossed)
    {
        var start = _point.Time;
        while (true)
        {
            step = Math.Min(step, _longestStep);
            var left = next - start;
            var length = step >= left ? left : step > 0.6 * left ? left / 2 : step;
            var isSolved = TryStep(start, length, next);
            var error = isSolved ? _stepper.Error(length, _options.RelativeError, _options.AbsoluteError) : double.PositiveInfinity;
            if (error <= 1)
            {
                step = length * Math.Clamp(Safety / Math.Cbrt(Math.Max(error, 1e-9)), SmallestGrowth, LargestGrowth);
                hasCrossed = _indicators.Read();
                return !hasCrossed || Locate(start, length, next);
            }

            _rejected++;
            step = length * (isSolved ? Math.Clamp(Safety / Math.Cbrt(error), SmallestGrowth, Safety) : 0.125);
            if (step >= _options.ShortestStep)
                continue;
            hasCrossed = false;
            return false;
        }
    }

    private bool TryStep(double start, double length, double next)
    {
        // At what is due the sources are seen just before it.
        var end = start + length;
        return _stepper.Step(length, end >= next || length >= next - start ? Math.BitDecrement(next) : end);
    }

    /// <summary>Shortens the step just made until it ends just behind the first event in it.</summary>
    private bool Locate(double start, double length, double next)
    {
        var (low, high, last) = (0.0, length, length);
        _indicators.TakeAsHigh();
        var side = 0;
        while (high - low > _options.EventSeconds)
        {
            var expected = low + (_indicators.FirstCrossing() * (high - low));

            // On either side of where it is expected by turns, so that the interval closes from both.
            var margin = 0.4 * _options.EventSeconds;
            var trial = side++ % 4 == 3 ? (low + high) / 2 : side % 2 == 1 ? expected + margin : expected - margin;
            if (!(trial > low && trial < high))
                trial = (low + high) / 2;
            _located++;
            last = trial;
            if (!TryStep(start, trial, next))
                return false;
            if (_indicators.Read())
            {
                high = trial;
                _indicators.TakeAsHigh();
            }
            else
            {
                low = trial;
                _indicators.TakeAsLow();
            }
        }

        return last == high || (TryStep(start, high, next) && (_indicators.Read() || true));
    }

    /// <summary>Does what is due and what follows from crossings, and from those in turn. Null where the run can go on.</summary>
    private TransientStatus? Change(double next, bool hasCrossed, ITransientObserver? observer, out bool jumped)
    {
        jumped = false;
        if (_point.Time >= next)
        {
            for (var index = 0; index < _timed.Length; index++)
            {
                if (_due[index] <= _point.Time)
                    jumped |= _timed[index].Elapse(_point);
            }

            if (!Follow(jumped, observer))
                return TransientStatus.NotFound;
            hasCrossed = _indicators.Read();
        }

        for (var count = 0; hasCrossed; count++)
        {
            if (count > _options.ChangeLimit)
                return TransientStatus.Chatters;
            var jumps = _indicators.Act();
            jumped |= jumps;
            if (!Follow(jumps, observer))
                return TransientStatus.NotFound;
            hasCrossed = _indicators.Read();
        }

        if (jumped)
            observer?.OnPoint(_point.Time, _network);
        _stepper.Keep(isSmooth: false);
        _indicators.TakeAsLow();
        return null;
    }

    /// <summary>Tells what has changed, and solves for what follows at once where the equations jump.</summary>
    private bool Follow(bool jumps, ITransientObserver? observer)
    {
        _hasChanged |= _indicators.Tell(observer);
        _stepper.Keep(isSmooth: false);
        return !jumps || _stepper.ResolveJump();
    }

    private TransientResult Result(TransientStatus status)
    {
        var worst = status switch
        {
            TransientStatus.Completed or TransientStatus.Spent or TransientStatus.Repeats => null,
            TransientStatus.Chatters => _indicators.LastChanged,
            _ => _network.RowName(_network.System.WorstRow()),
        };
        return new TransientResult(status, _point.Time, _steps, _rejected, _located, _stepper.Newton.Iterations, worst)
        {
            RepetitionSeconds = _repetition,
        };
    }
}
