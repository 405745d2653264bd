using Loadmark.Planning.Tests.Oracle;

namespace Loadmark.Planning.Tests;

/// <summary>
/// Plans of small random rigs are as good, level by level, as the best of all wirings, which are tried one by one by the rules alone; and
/// what is called impossible is. Many more such rigs are tried by the bench <c>oracle</c>, see bench/results/oracle.md.
/// </summary>
public sealed class OracleTests(ITestOutputHelper output)
{
    private static readonly int SmallRigs = Rounds.Of(800);
    private static readonly int LargerRigs = Rounds.Of(200);

    [Fact]
    public void Plans_are_as_good_as_the_best_of_all_wirings()
    {
        var cancellation = TestContext.Current.CancellationToken;
        var runs = Enumerable.Range(1, SmallRigs + LargerRigs).AsParallel().AsOrdered().WithCancellation(cancellation)
            .Select(seed => seed <= SmallRigs ? OracleRun.Of(seed, 5, 4, cancellation) : OracleRun.Of(seed, 7, 5, cancellation)).ToList();

        var whole = runs.Count(static run => run.IsWhole);
        output.WriteLine($"{runs.Count} rigs, {runs.Sum(static run => (long)run.Tried)} wirings judged; {whole} in which every load can be fed");
        output.WriteLine("feeds planned: " + string.Join(", ", runs.SelectMany(static run => run.Feeds).CountBy(static kind => kind).Select(static kind => $"{kind.Key} {kind.Value}")));
        var traits = runs.SelectMany(static run => run.Traits).CountBy(static trait => trait).ToList();
        output.WriteLine("rigs with " + string.Join(", ", traits.Select(static trait => $"{trait.Key} {trait.Value}")));
        var faults = runs.Select(static run => run.Fault).OfType<string>().ToList();
        Assert.True(faults.Count == 0, $"{faults.Count} plans are at fault\n{string.Join("\n\n", faults.Take(5))}");
        Assert.InRange(whole, runs.Count / 10, runs.Count * 9 / 10);
        Assert.All(traits, trait => Assert.InRange(trait.Value, runs.Count / 100, runs.Count));
        Assert.Equal(17, traits.Count);
    }

    /// <summary>What the oracle leaves out makes no difference: it finds what looking at every wiring finds.</summary>
    [Fact]
    public void Every_wiring_of_smaller_rigs_has_the_same_best()
    {
        var rigs = Rounds.Of(300);
        var (all, few) = (0L, 0L);
        for (var seed = 1; seed <= rigs; seed++)
        {
            var text = new RandomRig(seed, mostLoads: 4).Write();
            var rig = Tests.Rigs.Read(text);
            var every = new BruteForce(rig, leavesOut: false).Run();
            var best = new BruteForce(rig).Run();
            (all, few) = (all + every.Tried, few + best.Tried);
            Assert.True(every.Best!.SequenceEqual(best.Best!), $"seed {seed}: {string.Join(' ', best.Best!)} instead of {string.Join(' ', every.Best!)}\n{text}");
        }

        output.WriteLine($"{rigs} rigs: {all} wirings judged, and {few} where what cannot be better is left out");
        Assert.True(few < all);
    }
}
