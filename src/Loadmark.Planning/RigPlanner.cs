using Loadmark.Core.Checks;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Decoding;
using Loadmark.Planning.Model;
using Loadmark.Planning.Problem;

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

        var problem = new PlanProblemBuilder(rig).Build(options.Only);
        var model = new WiringModel(problem);
        var start = new GreedyStart(problem, model).Make();
        var answer = new LevelSolver(model, start, options.TimeLimit, TimeProvider.System, cancellation).Solve();
        var feeds = new FeedDecoder(problem, model).Decode(answer.Values);
        return Describe(rig with { Wired = feeds }, answer);
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

        var problem = new PlanProblemBuilder(rig).Build(options.Only);
        var model = new WiringModel(problem);
        var start = new GreedyStart(problem, model).Make();
        var solver = new LevelSolver(model, start, options.TimeLimit, TimeProvider.System, cancellation);
        return solver.FeedsAll();
    }

    private static PlanResult Describe(Rig rig, ModelAnswer answer)
    {
        var wired = WiredRig.Of(rig);
        var check = RigChecker.Check(wired);
        var levels = new List<ObjectiveLevel>();
        foreach (var level in Enum.GetValues<Level>())
        {
            // What pinned feeds add is the same for every wiring, so the gap is what the search left of it.
            var value = LevelMeter.Measure(level, wired, check);
            var bound = answer.Gaps[(int)level] is { } gap ? Math.Max(0, value - LevelMeter.Scaled(level, gap)) : 0;
            levels.Add(new ObjectiveLevel(LevelMeter.NameOf(level), value, bound));
        }

        return new PlanResult
        {
            Status = StatusOf(levels, answer),
            Rig = rig,
            Unfed = [.. wired.Loads.Items.Where(load => load.Feeds.Count == 0).Select(load => load.Id)],
            Objective = [.. levels],
            Check = check,
        };
    }

    private static PlanStatus StatusOf(List<ObjectiveLevel> levels, ModelAnswer answer)
    {
        var unfed = levels[(int)Level.Unfed];
        if (unfed.Value == 0)
            return answer.Gaps.All(gap => gap == 0) ? PlanStatus.Optimal : PlanStatus.Feasible;
        return unfed.Bound > 0 ? PlanStatus.Infeasible : PlanStatus.Unknown;
    }
}
