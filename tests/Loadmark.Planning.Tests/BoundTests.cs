using Loadmark.Planning.LocalSearch;
using Loadmark.Planning.Model;
using Loadmark.Planning.Objective;
using Loadmark.Planning.Problem;
using Loadmark.Planning.Search;
using Loadmark.Planning.Tests.Oracle.Fleet;

namespace Loadmark.Planning.Tests;

/// <summary>What is called proven when the time is up.</summary>
public sealed class BoundTests
{
    /// <summary>
    /// A search that time ends may have met worse wirings than were known. What it has proven until then holds for the best known, and a
    /// bound above that would call a wiring impossible that is there.
    /// </summary>
    [Theory]
    [InlineData(500, 3, 0.5)]
    [InlineData(500, 3, 1)]
    [InlineData(500, 3, 2)]
    [InlineData(500, 3, 4)]
    [InlineData(200, 3, 1)]
    [InlineData(200, 4, 1)]
    public void No_bound_is_above_a_wiring_that_is_known(int loads, int seed, double seconds)
    {
        var problem = new PlanProblemBuilder(Rigs.Read(new FleetRig(seed, loads, isShort: seed % 2 == 0).ToString())).Build(null);
        var space = new WiringSpace(problem);
        var annealing = new SimulatedAnnealing(space, GreedyWiring.Of(space), 1, static () => false);
        annealing.Run(new long[annealing.Best.Levels.Length], 400 * loads, Level.Unfed);
        var known = annealing.Best.Levels;
        var limit = TimeSpan.FromSeconds(seconds);
        using var solver = new LevelSolver(
            new WiringModel(new Coarsening(problem).Coarsest(byPriority: true)), [], limit, TimeProvider.System, null, TestContext.Current.CancellationToken);
        var answer = solver.Solve(null, known, limit, static (_, _) => false, CancellationToken.None);
        Assert.True(answer.Levels.AsSpan().SequenceCompareTo(known) <= 0, $"known is {string.Join(' ', known)}, the answer {string.Join(' ', answer.Levels)}");
        Assert.True(answer.ObjectiveBounds().AsSpan().SequenceCompareTo(known) <= 0, $"known is {string.Join(' ', known)}, the bound {string.Join(' ', answer.ObjectiveBounds())}");
    }
}
