using Google.OrTools.Sat;

namespace Loadmark.Planning.Model;

/// <summary>
/// Minimises the levels one after the other. Levels that together fit into one weighted sum, exactly and without loss,
/// are minimised in one go; what is proven is then held fast for the next.
/// </summary>
internal sealed class LevelSolver(WiringModel wiring, long[] start, TimeSpan limit, TimeProvider time, CancellationToken cancellation)
{
    /// <summary>Weighted sums stay below this: the solver tells bounds in floating point, exact to 2^53.</summary>
    private const long MostWeighted = 1L << 50;

    /// <summary>Levels that have to do with one another; all in one sum would slow the search down with its large weights.</summary>
    private static readonly Level[][] Together =
    [
        [Level.Unfed, Level.UnfedFirst, Level.UnfedSecond],
        [Level.Thin, Level.Margins],
        [Level.Noise, Level.NoisyLoads],
        [Level.SpecialLeads, Level.Sharing],
        [Level.Capacity],
    ];

    private readonly long _begin = time.GetTimestamp();
    private readonly IntVar[] _variables = [.. wiring.Variables.All];
    private long[] _values = start;

    /// <summary>Solves all levels, or as many as the time allows.</summary>
    public ModelAnswer Solve()
    {
        var gaps = new long?[Enum.GetValues<Level>().Length];
        foreach (var levels in Together)
        {
            if (!Pieces(levels).All(piece => SolveTogether(piece, gaps)))
                break;
        }

        return new ModelAnswer(_values, gaps);
    }

    /// <summary>Whether no load need stay dark; null when the time did not suffice to tell.</summary>
    public bool? FeedsAll()
    {
        if (wiring[Level.Unfed].ValueIn(_values) == 0)
            return true;
        wiring.Model.Add(wiring[Level.Unfed].Expression() <= 0);
        return Run(out _) switch
        {
            CpSolverStatus.Optimal or CpSolverStatus.Feasible => true,
            CpSolverStatus.Infeasible => false,
            _ => null,
        };
    }

    /// <summary>Cuts levels where their weighted sum would not be exact.</summary>
    private IEnumerable<Level[]> Pieces(Level[] levels)
    {
        var from = 0;
        var weight = 1L;
        for (var place = 0; place < levels.Length; place++)
        {
            var range = wiring[levels[place]].Most + 1;
            if (place > from && weight > MostWeighted / range)
            {
                yield return levels[from..place];
                (from, weight) = (place, 1);
            }

            weight *= range;
        }

        yield return levels[from..];
    }

    /// <summary>Minimises some levels in one go.</summary>
    /// <returns>Whether every one of them is proven.</returns>
    private bool SolveTogether(Level[] levels, long?[] gaps)
    {
        // Nothing is below zero.
        if (levels.All(level => wiring[level].ValueIn(_values) == wiring[level].Constant))
        {
            foreach (var level in levels)
                Hold(level, gaps);
            return true;
        }

        var sum = new Tally();
        var weights = new long[levels.Length];
        var weight = 1L;
        for (var place = levels.Length - 1; place >= 0; place--)
        {
            weights[place] = weight;
            sum.Add(wiring[levels[place]], weight);
            weight *= wiring[levels[place]].Most + 1;
        }

        wiring.Model.Minimize(sum.Expression());
        var status = Run(out var bound);
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
            return false;

        // The bound's digits in the mixed base of the weights: each holds as long as all before it are reached.
        var rest = bound;
        for (var place = 0; place < levels.Length; place++)
        {
            var level = levels[place];
            var value = wiring[level].ValueIn(_values);
            var least = place == levels.Length - 1 ? rest : Math.DivRem(rest, weights[place], out rest);
            if (status != CpSolverStatus.Optimal && value > Math.Max(0, least))
            {
                gaps[(int)level] = value - Math.Max(0, least);
                return false;
            }

            Hold(level, gaps);
        }

        return true;
    }

    private void Hold(Level level, long?[] gaps)
    {
        gaps[(int)level] = 0;
        if (!wiring[level].IsEmpty)
            wiring.Model.Add(wiring[level].Expression() <= wiring[level].ValueIn(_values));
    }

    private CpSolverStatus Run(out long bound)
    {
        bound = 0;
        var left = limit - time.GetElapsedTime(_begin);
        if (left <= TimeSpan.Zero || cancellation.IsCancellationRequested)
            return CpSolverStatus.Unknown;

        wiring.Model.ClearHints();
        foreach (var variable in _variables)
            wiring.Model.AddHint(variable, _values[variable.Index]);

        using var solver = new CpSolver();
        solver.StringParameters = FormattableString.Invariant(
            $"num_workers:1 random_seed:1 max_time_in_seconds:{left.TotalSeconds:0.######}");

        // Asked again and again, because a request that comes before the search has begun is lost.
        using var asking = new Timer(_ => solver.StopSearch(), null, Timeout.Infinite, Timeout.Infinite);
        using var registration = cancellation.Register(() => asking.Change(0, 20));
        var status = solver.Solve(wiring.Model);
        if (status is CpSolverStatus.Optimal or CpSolverStatus.Feasible)
        {
            _values = [.. _variables.Select(variable => solver.Value(variable))];
            bound = (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6);
        }

        return status;
    }
}
