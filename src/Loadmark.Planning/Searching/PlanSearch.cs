using Loadmark.Core.Rigs;
using Loadmark.Planning.Decoding;
using Loadmark.Planning.Model;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Searching;

/// <summary>
/// Searches for the best wiring, first with loads of similar draw merged: the best of that easier problem is a bound, and
/// where it can be had with the loads as they are, it is the best of all. Where it cannot, the loads are told apart more
/// finely, in the end every one.
/// </summary>
internal sealed class PlanSearch
{
    /// <summary>How far apart merged draws may be, from coarse to fine.</summary>
    private static readonly decimal[] Ratios = [1_000_000m, 1.5m, 1.1m];

    /// <summary>The share of the time left that an easier problem may take.</summary>
    private const double ShareOfTime = 0.3;

    /// <summary>Merging is worth it only where it leaves less than this share of the groups.</summary>
    private const double WorthMerging = 0.85;

    private readonly Rig _rig;
    private readonly PlanProblem _problem;
    private readonly PlanOptions _options;
    private readonly TimeProvider _time;
    private readonly CancellationToken _cancellation;
    private readonly long _begin;
    private long[] _floors = [];
    private Candidate? _best;

    /// <summary>Prepares.</summary>
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
    }

    private TimeSpan Left => _options.TimeLimit - _time.GetElapsedTime(_begin);

    /// <summary>Finds the best wiring, or the best that the time allows.</summary>
    public Candidate Best()
    {
        // What pinned feeds add to the levels is not in the model, so what it says is not what the rules measure.
        if (_problem.Pinned.Feeds.Count == 0 && SearchMerged() is { } found)
            return found;

        var model = new WiringModel(_problem);
        var answer = Solver(_problem, model, Left).Solve();
        var exact = Candidate.Of(_rig, new FeedDecoder(_problem, model).Decode(answer.Values), answer.Gaps);
        if (_best is not { } other || answer.IsProven || !other.IsBetterThan(exact))
            return exact;

        // What is proven of the first level holds for every wiring.
        var gap = answer.Gaps[0] - (long)(exact.Unfed - other.Unfed);
        return other with { Gaps = [gap] };
    }

    /// <summary>Whether every load can be fed; null when the time did not suffice to tell.</summary>
    public bool? FeedsAll()
    {
        foreach (var merged in Merged(static () => false))
        {
            var coarse = new WiringModel(merged);
            var solver = Solver(merged, coarse, Left * ShareOfTime);
            if (solver.FeedsAll() is not { } feeds)
                break;
            if (!feeds)
                return false;
            if (Candidate.Of(_rig, new FeedDecoder(merged, coarse).Decode(solver.Values), []) is { IsSafe: true, Unfed: 0 })
                return true;
        }

        var model = new WiringModel(_problem);
        return Solver(_problem, model, Left).FeedsAll();
    }

    private Candidate? SearchMerged()
    {
        // Priorities matter only where something stays dark.
        var byPriority = false;
        foreach (var merged in Merged(() => byPriority))
        {
            var model = new WiringModel(merged);
            var solver = Solver(merged, model, Left * ShareOfTime);
            if (!byPriority && solver.FeedsAll() is not true)
            {
                byPriority = true;
                continue;
            }

            var answer = solver.Solve();
            if (!answer.IsProven)
                return null;
            _floors = answer.LevelsIn(model);
            var candidate = Candidate.Of(_rig, new FeedDecoder(merged, model).Decode(answer.Values), answer.Gaps);
            if (candidate.IsSafe && candidate.Reaches(_floors))
                return candidate;
            if (candidate.IsSafe && (_best is not { } best || candidate.IsBetterThan(best)))
                _best = candidate with { Gaps = [] };
        }

        return null;
    }

    /// <summary>The problem with loads merged, from coarse to fine; the same again where priorities have come to count.</summary>
    private IEnumerable<PlanProblem> Merged(Func<bool> byPriority)
    {
        var merger = new LoadMerger(_problem);
        foreach (var ratio in Ratios)
        {
            foreach (var now in new[] { false, true })
            {
                if (now != byPriority())
                    continue;
                var merged = merger.Merge(new LoadGrain(ratio, now));
                if (merged.Loads.Length < WorthMerging * _problem.Loads.Length && Left > TimeSpan.Zero && !_cancellation.IsCancellationRequested)
                    yield return merged;
            }
        }
    }

    private LevelSolver Solver(PlanProblem problem, WiringModel model, TimeSpan limit) =>
        new(model, new GreedyStart(problem, model).Make(), _floors, limit, _time, _options.Progress, _cancellation);
}
