using Loadmark.Planning.Decoding;
using Loadmark.Planning.LocalSearch;
using Loadmark.Planning.Model;
using Loadmark.Planning.Problem;
using Loadmark.Planning.Search;
using Loadmark.Planning.Tests.Oracle;
using Loadmark.Planning.Tests.Oracle.Fleet;

namespace Loadmark.Planning.Tests;

/// <summary>Wirings made of solutions in which loads are merged and outlets pooled.</summary>
public sealed class SketchTests(ITestOutputHelper output)
{
    [Fact]
    public void A_solution_of_the_problem_as_it_is_is_read_as_it_is()
    {
        for (var seed = 1; seed <= 60; seed++)
        {
            var problem = new PlanProblemBuilder(Rigs.Read(new RandomRig(seed).Write())).Build(null);
            var space = new WiringSpace(problem);
            var model = new WiringModel(problem);
            var answer = Solve(model, FoundWiring.Of(GreedyWiring.Of(space)).Levels);
            if (answer.Values is not { } values)
                continue;
            Assert.Equal(answer.Levels, new RelaxedSolutionReader(problem, model, space).Read(values).Levels.Values.ToArray());
        }
    }

    [Theory]
    [InlineData(20, 12)]
    [InlineData(60, 4)]
    public void A_sketch_becomes_a_wiring_that_the_rules_accept_and_measure_alike(int loads, int seeds)
    {
        var (read, reached) = (0, 0);
        for (var seed = 1; seed <= seeds; seed++)
        {
            var rig = Rigs.Read(new FleetRig(seed, loads, seed % 2 == 0).ToString());
            var problem = new PlanProblemBuilder(rig).Build(null);
            var space = new WiringSpace(problem);
            var first = FoundWiring.Of(GreedyWiring.Of(space));
            var coarsest = new Coarsening(problem).Coarsest(byPriority: true);
            var model = new WiringModel(coarsest);
            if (Solve(model, first.Levels) is not { Values: { } values } answer)
                continue;
            var wiring = FoundWiring.Of(new RelaxedSolutionReader(coarsest, model, space).Read(values));
            AssertMeasured(rig, space, wiring);
            read++;

            var follower = new RelaxedSolutionRepair(space, static () => false);
            reached += follower.Follow(coarsest, model, values, answer.Levels) ? 1 : 0;
            AssertMeasured(rig, space, follower.Best!);
            Assert.True(follower.Best!.Levels.AsSpan().SequenceCompareTo(wiring.Levels) <= 0);
            Assert.True(follower.Best.Levels.AsSpan().SequenceCompareTo(answer.Levels) >= 0 || !answer.IsProven);
        }

        output.WriteLine($"{read} relaxedSolutions, of which {reached} became wirings as good");
        Assert.True(read >= seeds / 2);
        Assert.True(reached * 2 > read);
    }

    [Fact]
    public void A_wiring_that_was_found_lives_again_as_it_was()
    {
        for (var seed = 1; seed <= 12; seed++)
        {
            var space = new WiringSpace(new PlanProblemBuilder(Rigs.Read(new FleetRig(seed, 30, seed % 2 == 0).ToString())).Build(null));
            var annealing = new SimulatedAnnealing(space, GreedyWiring.Of(space), seed, static () => false);
            annealing.Run(new long[annealing.Best.Levels.Length], 3_000);
            Assert.Equal(annealing.Best.Levels, annealing.Best.Live(space).Levels.Values.ToArray());
        }
    }

    private static ModelAnswer Solve(WiringModel model, long[] known)
    {
        using var solver = new LevelSolver(model, [], TimeSpan.FromSeconds(10), TimeProvider.System, null, TestContext.Current.CancellationToken);
        return solver.Solve(null, known, TimeSpan.FromSeconds(10), static (_, _) => false, CancellationToken.None);
    }

    private static void AssertMeasured(Core.Rigs.Rig rig, WiringSpace space, FoundWiring wiring)
    {
        var candidate = Candidate.Of(rig, ShapeDecoder.Decode(space, wiring), []);
        Assert.Equal(wiring.Levels, candidate.Units());
        Assert.True(candidate.IsSafe, string.Join('\n', candidate.Check.Findings));
    }
}
