using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Objective;
using Loadmark.Planning.Problem;
using Loadmark.Planning.Search;
using Loadmark.Planning.Decomposition;

namespace Loadmark.Planning;

/// <summary>Plans the wiring of a rig.</summary>
public static class RigPlanner
{
    /// <summary>Finds the best wiring under the objective's order. The same rig and options give the same plan.</summary>
    /// <param name="rig">The rig; of its own wiring only pinned feeds count.</param>
    /// <param name="options">How to plan.</param>
    /// <param name="cancellation">Stops the search; what was found so far is returned.</param>
    /// <exception cref="InvalidRigException">The rig refers to a load, outlet or lead that it does not have.</exception>
    public static PlanResult Plan(Rig rig, PlanOptions options, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(options);

        var present = options.FewestMoves ? PresentWiring.Of(rig) : null;
        return Describe(Search(rig, options with { Present = present }, cancellation).Best(), options.FewestMoves);
    }

    /// <summary>Answers whether every load of a rig can be fed, and looks no further for the best wiring.</summary>
    /// <param name="rig">The rig; of its own wiring only pinned feeds count.</param>
    /// <param name="options">How to plan.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <returns>Whether it can; null when the time did not suffice to tell.</returns>
    /// <exception cref="InvalidRigException">The rig refers to a load, outlet or lead that it does not have.</exception>
    public static bool? CanFeedAll(Rig rig, PlanOptions options, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(options);

        return Search(rig, options, cancellation).FeedsAll();
    }

    /// <summary>Answers whether every load of a rig can be fed with no finding of noise.</summary>
    /// <param name="rig">The rig; of its own wiring only pinned feeds count.</param>
    /// <param name="options">How to plan.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <returns>Whether it can; null when that was not found out.</returns>
    /// <exception cref="InvalidRigException">The rig refers to a load, outlet or lead that it does not have.</exception>
    internal static bool? CanFeedAllQuietly(Rig rig, PlanOptions options, CancellationToken cancellation)
    {
        var search = Search(rig, options with { IsQuiet = true }, cancellation);
        var feeds = search.FeedsAll();

        // What pinned feeds, and supplies that others feed, do to returns the search does not foresee; the rules see it.
        return feeds is true && search.Whole?.Levels[(int)Level.Noise] is not 0 ? null : feeds;
    }

    /// <summary>Finds a wiring that feeds every load and that the rules do not refuse, and looks no further for the best.</summary>
    /// <param name="rig">The rig; of its own wiring only pinned feeds count.</param>
    /// <param name="options">How to plan.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <returns>The wiring, with nothing proven of it; null where none was found, be it that there is none.</returns>
    /// <exception cref="InvalidRigException">The rig refers to a load, outlet or lead that it does not have.</exception>
    internal static PlanResult? FeedAll(Rig rig, PlanOptions options, CancellationToken cancellation)
    {
        var search = Search(rig, options, cancellation);
        var isFound = search.FeedsAll() is true && search.Whole is { IsSafe: true, Unfed: 0 };
        return isFound ? Describe(search.Whole! with { Gaps = [] }, false) : null;
    }

    private static InputSearch Search(Rig rig, PlanOptions options, CancellationToken cancellation) =>
        new(rig, options, TimeProvider.System, cancellation);

    private static PlanResult Describe(Candidate plan, bool fewestMoves)
    {
        var levels = new List<ObjectiveLevel>();
        foreach (var level in Enum.GetValues<Level>())
        {
            if (level == Level.Moves && !fewestMoves)
                continue;

            // What pinned feeds add is the same for every wiring, so the gap is what the search left of it.
            var value = plan.Levels[(int)level];
            var bound = plan.Gaps.ElementAtOrDefault((int)level) is { } gap ? Math.Max(0, value - LevelMeter.Scaled(level, gap)) : 0;
            levels.Add(new ObjectiveLevel(LevelMeter.NameOf(level), value, bound));
        }

        return new PlanResult
        {
            Status = StatusOf(plan, levels[(int)Level.Unfed]),
            Rig = plan.Wired.Rig,
            Unfed = [.. FedSupplies.Unfed(plan.Wired, PlannedInputs.None).Select(static load => load.Id)],
            Objective = [.. levels],
            Check = plan.Check,
        };
    }

    private static PlanStatus StatusOf(Candidate plan, ObjectiveLevel unfed)
    {
        if (unfed.Value == 0)
            return plan.IsProven ? PlanStatus.Optimal : PlanStatus.Feasible;
        return unfed.Bound > 0 ? PlanStatus.Infeasible : PlanStatus.Unknown;
    }
}
