using Loadmark.Core.Rigs;
using Loadmark.Planning.Decoding;
using Loadmark.Planning.LocalSearch;
using Loadmark.Planning.Model;
using Loadmark.Planning.Objective;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Search;

/// <summary>
/// Searches for the best wiring from two sides. A wiring of the loads as they are is improved change by change; a model in
/// which loads of similar draw are merged says what no wiring can better, because it is the easier problem. Where the two meet
/// the wiring is the best of all. Where they do not, the loads are told apart more finely, in the end every one.
/// </summary>
internal sealed class PlanSearch
{
    /// <summary>The share of the time left that an easier problem may take.</summary>
    private const double ShareOfTime = 0.4;

    private readonly Rig _rig;
    private readonly PlanProblem _problem;
    private readonly PlanOptions _options;
    private readonly TimeProvider _time;
    private readonly CancellationToken _cancellation;
    private readonly long _begin;
    private readonly ObjectiveBounds _bounds = new();
    private readonly WiringSpace _space;
    private readonly Improver _improver;
    private readonly Coarsening _coarsening;
    private bool _isRelaxed;
    private Candidate? _best;

    /// <summary>Prepares to search for a rig's best wiring.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="problem">Its problem, every draw told apart.</param>
    /// <param name="options">How to plan.</param>
    /// <param name="time">The clock for that.</param>
    /// <param name="cancellation">Stops the search; what was found so far is returned.</param>
    public PlanSearch(Rig rig, PlanProblem problem, PlanOptions options, TimeProvider time, CancellationToken cancellation)
    {
        _rig = rig;
        _problem = problem;
        _options = options;
        _time = time;
        _cancellation = cancellation;
        _begin = time.GetTimestamp();
        _coarsening = new Coarsening(problem);
        _space = new WiringSpace(problem);
        _improver = new Improver(_space, _bounds, () => Left, () => IsOver, Report);
    }

    private TimeSpan Left => _options.TimeLimit - _time.GetElapsedTime(_begin);

    private bool IsOver => Left <= TimeSpan.Zero || _cancellation.IsCancellationRequested;

    /// <summary>Finds the best wiring, or the best that the time allows.</summary>
    public Candidate Best() => _problem.IsNarrowed ? Search() with { Gaps = [] } : Search();

    private Candidate Search()
    {
        _improver.Begin();
        var coarsest = _coarsening.Coarsest(_improver.IsAnyDark);
        var model = new WiringModel(coarsest);
        using var solver = Solver(coarsest, model);
        if (Relax(solver) is { } met)
            return met;

        var isFirst = true;
        foreach (var problem in GrainsInTime())
        {
            // Of a large rig a search in the coarsest problem takes far less time than the relaxation of the finest.
            if (!isFirst && RelaxFinest(coarsest) is { } bounded)
                return bounded;
            isFirst = false;
            if ((problem == coarsest ? Solve(problem, model, solver) : Solve(problem)) is { } found)
                return found;
        }

        _improver.Improve(CancellationToken.None);
        return BestSoFar();
    }

    /// <summary>
    /// The wiring that feeds every load which <see cref="FeedsAll"/> has found, improved a little, as the rules see it; null where it has
    /// found none.
    /// </summary>
    public Candidate? Whole()
    {
        if (_best is null && !_improver.IsAnyDark)
            _improver.Begin();
        return _best ?? (_improver.IsAnyDark ? null : BestSoFar());
    }

    /// <summary>Whether every load can be fed; null when the time did not suffice to tell.</summary>
    public bool? FeedsAll()
    {
        _improver.FeedAll(400);
        if (!_improver.IsAnyDark)
            return true;
        if (_options.IsBrief)
            return null;
        if (LeavesDark(_coarsening.Finest))
            return false;
        _improver.FeedAll(6_400);
        foreach (var problem in GrainsInTime())
        {
            if (!_improver.IsAnyDark)
                return true;
            var model = new WiringModel(problem);
            using var solver = Solver(problem, model);
            if (solver.FeedsAll(HintOf(problem, model, _improver.Best), _improver.Best.Levels, TimeFor(problem)) is not { } feeds)
                continue;
            if (!feeds)
                return false;
            if (solver.Values is { } values)
            {
                var decoded = CanBeDecoded(problem)
                    ? Candidate.Of(_rig, new FeedDecoder(problem, model).Decode(values), [], _options)
                    : null;
                if (decoded is { IsSafe: true, Unfed: 0 } whole)
                {
                    _best = whole;
                    return true;
                }

                var repair = new RelaxedSolutionRepair(_space, () => IsOver);
                if (problem != _problem && repair.Follow(problem, model, values, _bounds.Ideal, Level.Unfed) && repair.Best is { } repaired)
                {
                    _improver.Take(repaired);
                    return true;
                }
            }

            if (problem == _problem)
                return true;
        }

        // What a model cannot say may still be found.
        for (var effort = 12_800; _improver.IsAnyDark && !IsOver; effort *= 2)
            _improver.FeedAll(effort);
        return _improver.IsAnyDark ? null : true;
    }

    /// <summary>Whether a problem's relaxation alone says that something stays dark.</summary>
    private bool LeavesDark(PlanProblem problem)
    {
        using var solver = Solver(problem, new WiringModel(problem));
        return solver.Ideal([], Level.Unfed) is [> 0, ..];
    }

    /// <summary>The problem from coarse to fine, as long as there is time; priorities matter only where something stays dark.</summary>
    private IEnumerable<PlanProblem> GrainsInTime() =>
        _coarsening.FromCoarseToFine(_improver.IsLarge, () => _improver.IsAnyDark).TakeWhile(_ => !IsOver);

    /// <summary>
    /// The best wiring where the relaxation with every draw told apart proves it so; else null. Of a rig that is not large a search
    /// with draws merged takes no longer, and says more.
    /// </summary>
    private Candidate? RelaxFinest(PlanProblem coarsest)
    {
        if (!_improver.IsLarge || IsOver || _isRelaxed || coarsest.Loads.Length == _problem.Loads.Length)
            return null;
        _isRelaxed = true;
        var finest = _coarsening.Finest;
        return Beside((begun, _, _) =>
        {
            using var solver = Solver(finest, new WiringModel(finest));
            return solver.Ideal(begun.Levels);
        });
    }

    /// <summary>The best wiring where a problem's relaxation alone proves it so; else null.</summary>
    private Candidate? Relax(LevelSolver solver)
    {
        _bounds.Raise(solver.Ideal(_improver.Best.Levels));
        _improver.Approach();
        return _improver.IsDone ? BestSoFar() : null;
    }

    /// <summary>
    /// Proves on this thread while the wiring is improved on another; the best wiring where that proves it the best, else null. Neither
    /// looks at what the other does before it is done, and each stops the other only where that can change nothing: so the same rig gives
    /// the same plan, whichever is the quicker.
    /// </summary>
    /// <param name="prove">Given the wiring at the beginning, what repairs coarse solutions, and when to stop, gives levels that no
    /// wiring's are before in order.</param>
    private Candidate? Beside(Func<FoundWiring, RelaxedSolutionRepair, CancellationToken, long[]> prove)
    {
        var begun = _improver.Best;
        using var enough = CancellationTokenSource.CreateLinkedTokenSource(_cancellation);
        // A thread of its own: the pool's are for what is to stop the search.
        var improving = Task.Factory.StartNew(
            () => Improve(enough), CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
        var relaxedSolutions = new RelaxedSolutionRepair(_space, () => IsOver || enough.IsCancellationRequested);
        var bounds = new ObjectiveBounds();
        try
        {
            bounds.Raise(_bounds.Levels);
            var proven = prove(begun, relaxedSolutions, enough.Token);
            if (!enough.IsCancellationRequested)
                bounds.Raise(proven);
        }
        catch
        {
            enough.Cancel();
            improving.GetAwaiter().GetResult();
            throw;
        }

        if (bounds.AreMetBy(begun.Levels))
            enough.Cancel();
        improving.GetAwaiter().GetResult();
        if (!_improver.IsDone)
        {
            _bounds.Raise(bounds.Levels);
            if (relaxedSolutions.Best is { } repaired)
                _improver.Take(repaired);
        }

        return _improver.IsDone ? BestSoFar() : null;
    }

    /// <summary>Improves the wiring towards what is proven, and ends the search beside it where that is reached.</summary>
    private void Improve(CancellationTokenSource enough)
    {
        _improver.Improve(enough.Token);
        if (_improver.IsDone)
            enough.Cancel();
    }

    /// <summary>The best wiring where a search in one problem proves it so; else null.</summary>
    private Candidate? Solve(PlanProblem problem)
    {
        var model = new WiringModel(problem);
        using var solver = Solver(problem, model);
        return Solve(problem, model, solver);
    }

    private Candidate? Solve(PlanProblem problem, WiringModel model, LevelSolver solver)
    {
        ModelAnswer? answer = null;
        var met = Beside((begun, relaxedSolutions, enough) =>
        {
            solver.Raise(_bounds.Levels);
            answer = solver.Solve(
                HintOf(problem, model, begun),
                begun.Levels,
                TimeFor(problem),
                (values, ideal) => relaxedSolutions.Follow(problem, model, values, ideal),
                enough);
            if (answer.Values is { } values)
                relaxedSolutions.Follow(problem, model, values, answer.Levels);
            return answer.ObjectiveBounds();
        });
        if (met is not null || answer is null)
            return met;

        // What the search has found may be the wiring itself.
        var candidate = CanBeDecoded(problem) && answer.Values is { } values
            ? Candidate.Of(_rig, new FeedDecoder(problem, model).Decode(values), answer.Gaps, _options)
            : null;
        if (problem == _problem && candidate is not null && answer.IsProven)
            return candidate;
        if (problem != _problem && candidate is { IsSafe: true })
        {
            candidate = candidate with { Gaps = _bounds.GapsOf(candidate.Units()) };
            if (candidate.IsProven)
                return candidate;
            if (_best is not { } best || candidate.IsBetterThan(best))
                _best = candidate;
        }

        return problem == _problem && candidate is not null && candidate.IsBetterThan(BestSoFar()) ? candidate : null;
    }

    /// <summary>Tells which level is the first that is not proven yet.</summary>
    private void Report()
    {
        var (levels, ideal) = (_improver.Best.Levels, _bounds.Ideal);
        var open = levels.AsSpan().CommonPrefixLength(ideal);
        if (open < levels.Length)
            _options.Progress?.Report(
                new PlanProgress(
                    LevelMeter.NameOf((Level)open),
                    LevelMeter.Scaled((Level)open, levels[open]),
                    LevelMeter.Scaled((Level)open, ideal[open])));
    }

    /// <summary>
    /// Whether a solution of a problem is a wiring, or may be one: not where outlets were pooled; and where loads were merged
    /// only if the rules can say so, which measure what pinned feeds add to the levels too, and the model does not.
    /// </summary>
    private bool CanBeDecoded(PlanProblem problem) => problem == _problem || (!problem.IsPooled && _problem.Pinned.Feeds.Count == 0);

    /// <summary>The best wiring as a solution of a model; null where the model does not tell outlets apart.</summary>
    private long[]? HintOf(PlanProblem problem, WiringModel model, FoundWiring wiring) =>
        problem.IsPooled ? null : new WarmStart(problem, model, _space, wiring).Write();

    private Candidate BestSoFar()
    {
        var found = _improver.Best;
        var candidate = Candidate.Of(_rig, ShapeDecoder.Decode(_space, found), _bounds.GapsOf(found.Levels), _options);
        return _best is { } best && best.IsBetterThan(candidate) ? best with { Gaps = _bounds.GapsOf(best.Units()) } : candidate;
    }

    private LevelSolver Solver(PlanProblem problem, WiringModel model) =>
        new(model, _bounds.Levels, TimeFor(problem), _time, _options.Progress, _cancellation);

    private TimeSpan TimeFor(PlanProblem problem) => problem == _problem ? Left : Left * ShareOfTime;
}
