using Loadmark.Planning.Decoding;
using Loadmark.Planning.LocalSearch;
using Loadmark.Planning.Problem;
using Loadmark.Planning.Search;
using Loadmark.Planning.Tests.Oracle.Fleet;

namespace Loadmark.Planning.Tests;

/// <summary>Improving a wiring change by change: it keeps every demand, and knows what the rules would measure.</summary>
public sealed class AnnealingTests
{
    [Theory]
    [InlineData(12, 20)]
    [InlineData(40, 6)]
    [InlineData(120, 2)]
    public void What_it_reckons_is_what_the_rules_measure(int loads, int seeds)
    {
        for (var seed = 1; seed <= seeds; seed++)
        {
            var rig = Rigs.Read(new FleetRig(seed, loads, seed % 2 == 0).ToString());
            var space = new WiringSpace(new PlanProblemBuilder(rig).Build(null));
            var annealing = new SimulatedAnnealing(space, GreedyWiring.Of(space), seed, static () => false);
            for (var run = 0; run < 3; run++)
            {
                annealing.Run(new long[annealing.Best.Levels.Length], 60 * loads);
                var candidate = Candidate.Of(rig, ShapeDecoder.Decode(space, annealing.Best), []);
                Assert.Equal(annealing.Best.Levels, candidate.Units());
                Assert.True(candidate.IsSafe, string.Join('\n', candidate.Check.Findings));
            }
        }
    }

    [Fact]
    public void The_same_seed_finds_the_same_wiring()
    {
        var rig = Rigs.Read(new FleetRig(5, 30, isShort: true).ToString());
        Assert.Equal(Find(), Find());

        string Find()
        {
            var space = new WiringSpace(new PlanProblemBuilder(rig).Build(null));
            var annealing = new SimulatedAnnealing(space, GreedyWiring.Of(space), 7, static () => false);
            annealing.Run(new long[annealing.Best.Levels.Length], 5_000);
            return string.Join('\n', ShapeDecoder.Decode(space, annealing.Best));
        }
    }

    [Fact]
    public void What_a_move_takes_apart_it_puts_back()
    {
        for (var seed = 1; seed <= 20; seed++)
        {
            var space = new WiringSpace(new PlanProblemBuilder(Rigs.Read(new FleetRig(seed, 24, isShort: false).ToString())).Build(null));
            var wiring = GreedyWiring.Of(space);
            var before = Describe(wiring);
            var move = new Move(wiring);
            for (var load = 0; load < wiring.Count; load += 3)
            {
                // Each load after the other leaves, so that chains fall apart to one load and to none.
                move.Begin();
                for (var other = load; other < wiring.Count; other++)
                    move.Take(other);
                _ = space.Placements[wiring.GroupOf(load).Index].Any(placement => move.Put(load, placement.FeedSite, placement.Ends));
                move.Undo();
                Assert.Equal(before, Describe(wiring));
            }
        }

        static string Describe(LiveWiring wiring) => string.Join(' ', wiring.Levels.Values.ToArray()) + "\n" + string.Join('\n', wiring.Feeds
            .Select(feed => $"{feed.FeedSite.Capacity} {feed.FeedSite.Volts} {string.Join(' ', feed.Loads.Order())}").Order(StringComparer.Ordinal));
    }
}
