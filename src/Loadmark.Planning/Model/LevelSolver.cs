using Google.OrTools.Sat;
using Loadmark.Planning.Objective;

namespace Loadmark.Planning.Model;

/// <summary>
/// Minimises the levels one after the other. A level whose value the relaxation already proves needs no search; for the
/// others, levels that have to do with one another are searched together as a weighted sum, exact and without loss. What is
/// proven is held fast for the next.
/// </summary>
internal sealed class LevelSolver : IDisposable
{
    /// <summary>Weighted sums stay below this: the solver tells bounds in floating point, exact to 2^53.</summary>
    private const long MostWeighted = 1L << 50;

    /// <summary>The share of the time left that one search may take, so that some is left for the levels after it.</summary>
    private const double ShareOfTime = 0.5;

    /// <summary>Levels that have to do with one another; all in one sum would slow the search down with its large weights.</summary>
    private static readonly Level[][] Together =
    [
        [Level.Unfed],
        [Level.UnfedFirst, Level.UnfedSecond, Level.Doubtful, Level.Moves, Level.Thin, Level.Margins],
        [Level.Noise, Level.NoisyLoads],
        [Level.SpecialLeads, Level.Sharing, Level.Capacity],
    ];

    private readonly WiringModel _wiring;
    private readonly LinearRelaxation _linear;
    private readonly IntegerSearch _search;
    private TimeSpan _limit;
    private readonly TimeProvider _time;
    private readonly IProgress<PlanProgress>? _progress;
    private CancellationToken _cancellation;
    private long _begin;
    private readonly long?[] _bounds = new long?[Enum.GetValues<Level>().Length];
    private long[] _easierBounds;
    private long[] _levels = [];
    private bool _isProven = true;
    private bool _isOnBound = true;

    /// <summary>Prepares to solve a model, level by level.</summary>
    /// <param name="wiring">The model; levels that are done are held fast in it.</param>
    /// <param name="easierBounds">The best vector of an easier problem, for the first levels: no solution's is before it in order.</param>
    /// <param name="limit">How long to bound levels at the most.</param>
    /// <param name="time">The clock for that.</param>
    /// <param name="progress">Told what is searched for; null for nobody.</param>
    /// <param name="cancellation">Stops the search.</param>
    public LevelSolver(
        WiringModel wiring, long[] easierBounds, TimeSpan limit, TimeProvider time, IProgress<PlanProgress>? progress,
        CancellationToken cancellation)
    {
        _wiring = wiring;
        _linear = new LinearRelaxation(wiring);
        _search = new IntegerSearch(wiring);
        _easierBounds = easierBounds;
        _limit = limit;
        _time = time;
        _progress = progress;
        _cancellation = cancellation;
        _begin = time.GetTimestamp();
    }

    /// <summary>The best solution so far; null where only its levels are known.</summary>
    public long[]? Values => _search.Values;

    private bool IsOver => Left <= TimeSpan.Zero || _cancellation.IsCancellationRequested;

    private TimeSpan Left => _limit - _time.GetElapsedTime(_begin);

    /// <inheritdoc />
    public void Dispose() => _linear.Dispose();

    /// <summary>
    /// A vector of levels that no solution's is before in order: each level as the relaxation has it while those before it are
    /// no worse than that. Mostly it is the best there is, or nearly.
    /// </summary>
    /// <param name="known">The levels of a wiring: where one is nothing and those before it are as low as can be, the relaxation need not
    /// be asked.</param>
    /// <param name="last">The last level wanted.</param>
    /// <returns>As many levels as the time allowed.</returns>
    public long[] Ideal(ReadOnlySpan<long> known, Level last = Level.Capacity)
    {
        var values = known.ToArray();
        var isOnBound = true;
        var isKnown = values.Length > 0;
        return [.. Relax(Level.Unfed, last, level =>
        {
            var isNothing = isKnown && values[(int)level] == 0;
            var least = isNothing ? values[(int)level] : _linear.Of(level, Left * ShareOfTime, _cancellation);
            if (isOnBound && (int)level < _easierBounds.Length)
                least = Math.Max(least, _easierBounds[(int)level]);
            isKnown = isKnown && values[(int)level] == least;
            isOnBound &= (int)level < _easierBounds.Length && least == _easierBounds[(int)level];
            return least;
        })];
    }

    /// <summary>Takes into account what is proven since.</summary>
    /// <param name="easierBounds">As in the beginning.</param>
    public void Raise(long[] easierBounds) => _easierBounds = easierBounds;

    /// <summary>Solves all levels, or as many as the time allows.</summary>
    /// <param name="start">A solution to begin with; null where only its levels are known.</param>
    /// <param name="levels">Its levels.</param>
    /// <param name="limit">How long to look at the most, from now on.</param>
    /// <param name="follow">
    /// Given a solution whose first levels are proven, and a vector of levels that no solution's is before in order: whether a wiring like
    /// it has just these levels. Then nothing is left to search for.
    /// </param>
    /// <param name="cancellation">Stops the search.</param>
    public ModelAnswer Solve(
        long[]? start, ReadOnlySpan<long> levels, TimeSpan limit, Func<long[], long[], bool> follow, CancellationToken cancellation)
    {
        _cancellation = cancellation;
        Begin(start, levels, limit);
        foreach (var related in Together)
        {
            for (var from = 0; from < related.Length;)
            {
                if (ProveFirst(related[from]))
                {
                    from++;
                    continue;
                }

                from += Search(related[from..]);
                var done = (int)related[from - 1] + 1;
                if (done < _levels.Length && _isProven && Values is { } values && RelaxRest(done) is { } rest && follow(values, rest))
                    return new ModelAnswer(null, rest, [.. rest.Select(static _ => (long?)0)]);
            }
        }

        return new ModelAnswer(
            Values,
            _levels,
            [.. _bounds.Zip(_levels, static (bound, value) => bound is { } least ? Math.Max(0, value - least) : (long?)null)]);
    }

    /// <summary>
    /// The levels that are proven, and after them each as the relaxation has it while those before it are no worse than that.
    /// </summary>
    /// <param name="done">How many are proven.</param>
    private long[]? RelaxRest(int done)
    {
        long[] levels =
            [.. _levels[..done], .. Relax((Level)done, Level.Capacity, level => _linear.Of(level, Left * ShareOfTime, _cancellation))];
        return levels.Length == _levels.Length ? levels : null;
    }

    /// <summary>
    /// Bounds levels one after the other, each while those before it are no worse than their bounds; afterwards none of them is held.
    /// </summary>
    /// <returns>As many as the time allowed.</returns>
    private List<long> Relax(Level first, Level last, Func<Level, long> leastOf)
    {
        var least = new List<long>();
        for (var level = first; level <= last && !IsOver; level++)
        {
            least.Add(leastOf(level));
            _linear.Hold(level, long.MinValue, least[^1]);
        }

        for (var level = first; level <= last; level++)
            _linear.Hold(level, long.MinValue, long.MaxValue);
        return least;
    }

    /// <summary>Whether no load need stay dark; null when the time did not suffice to tell.</summary>
    /// <param name="start">A solution to begin with; null where only its levels are known.</param>
    /// <param name="levels">Its levels.</param>
    /// <param name="limit">How long to look at the most, from now on.</param>
    public bool? FeedsAll(long[]? start, ReadOnlySpan<long> levels, TimeSpan limit)
    {
        Begin(start, levels, limit);
        if (ValueOf(Level.Unfed) > 0 && !ProveFirst(Level.Unfed))
            Search([Level.Unfed]);
        if (ValueOf(Level.Unfed) == 0)
            return true;
        return _bounds[(int)Level.Unfed] > 0 ? false : null;
    }

    /// <summary>A solution of a model whose loads are merged may be better than the wiring it was made of, never worse.</summary>
    private void Begin(long[]? start, ReadOnlySpan<long> levels, TimeSpan limit)
    {
        _limit = limit;
        _begin = _time.GetTimestamp();
        _search.Values = start;
        _levels = start is null ? levels.ToArray() : LevelsOf(start);
        if (_levels.AsSpan().SequenceCompareTo(levels) > 0)
            (_search.Values, _levels) = (null, levels.ToArray());
    }

    private void Take(long[] values)
    {
        _search.Values = values;
        _levels = LevelsOf(values);
    }

    private long[] LevelsOf(long[] values) => [.. Enum.GetValues<Level>().Select(level => _wiring[level].ValueIn(values))];

    private long ValueOf(Level level) => _levels[(int)level];

    /// <summary>Holds a level whose value is proven without a search.</summary>
    private bool ProveFirst(Level level)
    {
        // Nothing is below zero.
        if (ValueOf(level) == 0)
        {
            Hold(level, ValueOf(level));
            return true;
        }

        // Nor is anything below what an easier problem has proven.
        if (_isOnBound && (int)level < _easierBounds.Length && _easierBounds[(int)level] >= ValueOf(level))
        {
            Hold(level, ValueOf(level));
            return true;
        }

        if (IsOver)
            return false;
        var least = _linear.Of(level, Left * ShareOfTime, _cancellation);
        if (_isOnBound && (int)level < _easierBounds.Length)
            least = Math.Max(least, _easierBounds[(int)level]);
        if (_linear.Whole is { } whole && _wiring[level].ValueIn(whole) < ValueOf(level))
            Take(whole);
        if (least >= ValueOf(level))
        {
            Hold(level, ValueOf(level));
            return true;
        }

        _progress?.Report(
            new PlanProgress(LevelMeter.NameOf(level), LevelMeter.Scaled(level, ValueOf(level)), LevelMeter.Scaled(level, least)));
        _linear.Hold(level, least, long.MaxValue);
        if (least > 0)
            _wiring.Model.Add(_wiring[level].Expression() >= least);
        Note(level, least);
        return false;
    }

    /// <summary>Searches for the least weighted sum of levels, as many of them as fit in one exactly, and holds what is found.</summary>
    /// <returns>How many levels are done.</returns>
    private int Search(Level[] levels)
    {
        var (count, weights) = Weigh(levels);
        var sum = new BoundedSum();
        for (var place = 0; place < count; place++)
            sum.Add(_wiring[levels[place]], weights[place]);
        _wiring.Model.Minimize(sum.Expression());
        var (values, known) = (Values, _levels);
        var status = _search.Run(() => Left * ShareOfTime, _cancellation);
        if (status is CpSolverStatus.Optimal or CpSolverStatus.Feasible)
        {
            // A search that the time has ended may have met worse ones only.
            _levels = LevelsOf(Values!);
            if (_levels.AsSpan().SequenceCompareTo(known) > 0)
                (_search.Values, _levels) = (values, known);
        }

        // The bound's digits in the mixed base of the weights: each holds as long as all before it are reached.
        var rest = _search.Bound;
        for (var place = 0; place < count; place++)
        {
            var least = place == count - 1 ? rest : Math.DivRem(rest, weights[place], out rest);
            if (status is CpSolverStatus.Optimal)
                Hold(levels[place], ValueOf(levels[place]));
            else if (status is CpSolverStatus.Feasible)
                Hold(levels[place], Math.Min(least, ValueOf(levels[place])));
            else
                Hold(levels[place], null);
        }

        return count;
    }

    /// <summary>The weights with which the first levels make one sum that tells every one of them.</summary>
    private (int Count, long[] Weights) Weigh(Level[] levels)
    {
        var count = 1;
        var range = _wiring[levels[0]].Most + 1;
        while (count < levels.Length && range <= MostWeighted / (_wiring[levels[count]].Most + 1))
            range *= _wiring[levels[count++]].Most + 1;
        var weights = new long[count];
        var weight = 1L;
        for (var place = count - 1; place >= 0; place--)
        {
            weights[place] = weight;
            weight *= _wiring[levels[place]].Most + 1;
        }

        return (count, weights);
    }

    /// <summary>Demands for all that follows that a level does not get worse.</summary>
    /// <param name="level">The level.</param>
    /// <param name="bound">What it is not below; null where nothing is proven.</param>
    private void Hold(Level level, long? bound)
    {
        if (bound is { } least)
            Note(level, least);
        _isProven = _isProven && _bounds[(int)level] >= ValueOf(level);
        _isOnBound &= (int)level < _easierBounds.Length && ValueOf(level) == _easierBounds[(int)level];
        _linear.Hold(level, long.MinValue, ValueOf(level));
        if (!_wiring[level].IsEmpty)
            _wiring.Model.Add(_wiring[level].Expression() <= ValueOf(level));
    }

    /// <summary>A bound counts only while all levels before are proven; of two the greater holds.</summary>
    private void Note(Level level, long bound)
    {
        if (_isProven)
            _bounds[(int)level] = Math.Max(bound, _bounds[(int)level] ?? bound);
    }
}
