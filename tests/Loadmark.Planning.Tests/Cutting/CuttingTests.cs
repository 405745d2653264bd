using System.Diagnostics;
using Loadmark.Planning.Cutting;

namespace Loadmark.Planning.Tests.Cutting;

/// <summary>Small cut lists whose answer is plain, and what must not happen to large ones.</summary>
public sealed class CuttingTests(ITestOutputHelper output)
{
    private static readonly CuttingOptions NoLoss = new();

    [Fact]
    public void First_fit_opens_a_reel_more_than_is_needed()
    {
        // 3 + 3 and 2 + 2 + 2 fill two reels; in this order 2 + 3 stand on each of two, and the last 2 is left.
        var pieces = Pieces(2, 3, 2, 3, 2);
        StockReel[] reels = [new("drum", new Metres(6))];
        var naive = FirstFitCutting.InOrder(pieces, reels, NoLoss);
        var result = Plan(pieces, reels, NoLoss);
        Assert.Equal((3, 6m), (naive.Reels.Count, naive.Wasted.Value));
        Assert.Equal((2, 0m, CuttingStatus.Optimal), (result.Reels.Count, result.Wasted.Value, result.Status));
        Assert.Null(naive.WastedBound);
        Assert.False(naive.IsWasteProven);
    }

    [Fact]
    public void A_cut_takes_its_width_but_not_behind_the_end_of_the_reel()
    {
        StockReel[] reels = [new("drum", new Metres(2.005m), 1)];
        var options = new CuttingOptions { CutLoss = new Metres(0.005m) };
        var result = Plan(Pieces(1, 1), reels, options);
        Assert.Empty(result.LeftOver);
        Assert.Equal((0m, 0.005m), (result.Reels[0].Offcut.Value, result.Reels[0].LostInCuts.Value));
        Assert.Single(Plan(Pieces(1, 1), reels, new CuttingOptions { CutLoss = new Metres(0.006m) }).LeftOver);
        Assert.Equal(0.007m, Plan(Pieces(1, 1), [new("drum", new Metres(2.012m))], NoLoss with { CutLoss = new Metres(0.0025m) }).Reels[0].Offcut.Value);
    }

    [Fact]
    public void A_length_that_no_micrometre_divides_is_rounded_to_the_safe_side()
    {
        // Three thirds of a metre, each cut a hair too long, do not come out of a metre and a hair less.
        var third = new Metres(0.3333334m);
        CutPiece[] pieces = [new("a", third), new("b", third), new("c", third)];
        Assert.Single(Plan(pieces, [new("drum", new Metres(1), 1)], NoLoss).LeftOver);
        Assert.Empty(Plan(pieces, [new("drum", new Metres(1.000003m), 1)], NoLoss).LeftOver);
    }

    [Fact]
    public void Among_several_lengths_the_least_is_opened_then_the_fewest_reels()
    {
        StockReel[] reels = [new("long", new Metres(10)), new("middle", new Metres(5)), new("short", new Metres(3))];
        var result = Plan(Pieces(4, 2.5m, 2.5m, 1), reels, NoLoss);

        // 5 + 5 opens as little as 10 does, on one reel more.
        Assert.Equal(["long"], result.Reels.Select(static reel => reel.Reel.Id));
        Assert.Equal(CuttingStatus.Optimal, result.Status);
        Assert.Equal(["middle", "short"], Plan(Pieces(4, 2.5m, 1), reels, NoLoss).Reels.Select(static reel => reel.Reel.Id));
    }

    [Fact]
    public void Among_equals_the_longest_rest_is_kept()
    {
        // First fit decreasing cuts 8 + 1 and 6 + 3 from two reels of 10 m, which leaves 1 m on each; 6 + 3 + 1 beside 8 leaves 2 m in one.
        var pieces = Pieces(8, 6, 3, 1);
        StockReel[] reels = [new("drum", new Metres(10))];
        var result = Plan(pieces, reels, NoLoss);
        Assert.Equal(1m, FirstFitCutting.Decreasing(pieces, reels, NoLoss).LongestOffcut.Value);
        Assert.Equal((2m, 2m, CuttingStatus.Optimal), (result.Wasted.Value, result.LongestOffcut.Value, result.Status));
        Assert.Equal([[6m, 3m, 1m], [8m]], result.Reels.Select(static reel => reel.Pieces.Select(static piece => piece.Length.Value).ToArray()));
    }

    [Fact]
    public void Nothing_is_dropped_that_cannot_be_cut()
    {
        var result = Plan(Pieces(7, 4, 3, 3), [new("drum", new Metres(5), 2), new("gone", new Metres(9), 0)], NoLoss);
        Assert.Equal([7m], result.Impossible.Select(static piece => piece.Length.Value));
        Assert.Equal([3m], result.LeftOver.Select(static piece => piece.Length.Value));
        Assert.Equal(CuttingStatus.Optimal, result.Status);
        Assert.Equal(2, Plan(Pieces(1, 2), [], NoLoss).Impossible.Count);
        Assert.Equal((0, CuttingStatus.Optimal), (Plan([], [new("drum", new Metres(5))], NoLoss).Reels.Count, result.Status));
    }

    [Fact]
    public void A_thousand_pieces_are_bounded_work_and_answered_alike()
    {
        // 250 lengths of leads to the millimetre, from reels on which few of them fit, with a cut of 1.5 mm: no graph of it is exact.
        var pieces = Enumerable.Range(0, 1000).Select(static place => new CutPiece($"lead-{place}", new Metres(0.3m + (place * 7919 % 250 * 0.007m)))).ToList();
        StockReel[] reels = [new("drum", new Metres(4)), new("coil", new Metres(5.5m), 100)];
        var options = new CuttingOptions { CutLoss = new Metres(0.0015m), WorkLimit = 2 };
        var begin = Stopwatch.GetTimestamp();
        var result = Plan(pieces, reels, options);
        output.WriteLine($"{Stopwatch.GetElapsedTime(begin).TotalSeconds:0.0} s: {result.Reels.Count} reels, {result.Wasted} wasted, at the least {result.WastedBound}, {result.Status}; first fit decreasing {FirstFitCutting.Decreasing(pieces, reels, options).Wasted}");
        CutAssert.IsSound(pieces, reels, options, result);
        Assert.Empty(result.LeftOver);
        Assert.Equal(result, Plan(pieces, reels, options));
        Assert.True(Stopwatch.GetElapsedTime(begin) < TimeSpan.FromMinutes(2));
    }

    [Fact]
    public void Who_cancels_gets_what_first_fit_has_at_the_least()
    {
        var instance = BinPackingInstance.All().Single(static one => one.Name == "u120_08");
        var pieces = instance.Sizes.Select(static (size, item) => new CutPiece($"{item}", new Metres(size / 100m))).ToList();
        StockReel[] reels = [new("reel", new Metres(1.5m))];
        using var source = new CancellationTokenSource();
        source.Cancel();
        var result = CuttingPlanner.Plan(pieces, reels, NoLoss, source.Token);
        CutAssert.IsSound(pieces, reels, NoLoss, result);
        Assert.True(result.Reels.Count <= FirstFitCutting.Decreasing(pieces, reels, NoLoss).Reels.Count);
        Assert.Equal(CuttingStatus.Feasible, result.Status);
    }

    [Fact]
    public void What_is_no_length_is_refused()
    {
        Assert.Throws<ArgumentException>(static () => Plan(Pieces(0), [new("drum", new Metres(5))], NoLoss));
        Assert.Throws<ArgumentException>(static () => Plan(Pieces(1), [new("drum", new Metres(-5))], NoLoss));
        Assert.Throws<ArgumentException>(static () => Plan(Pieces(1), [new("drum", new Metres(5), -1)], NoLoss));
        Assert.Throws<ArgumentException>(static () => Plan(Pieces(1), [new("drum", new Metres(5))], NoLoss with { CutLoss = new Metres(-0.001m) }));
        Assert.Throws<ArgumentException>(static () => Plan(Pieces(1_000_001), [new("drum", new Metres(5))], NoLoss));
    }

    private static CuttingResult Plan(IReadOnlyList<CutPiece> pieces, IReadOnlyList<StockReel> reels, CuttingOptions options) =>
        CuttingPlanner.Plan(pieces, reels, options, TestContext.Current.CancellationToken);

    private static CutPiece[] Pieces(params decimal[] metres) => [.. metres.Select(static (length, place) => new CutPiece($"piece-{place}", new Metres(length)))];
}
