using CsCheck;
using Loadmark.Planning.Cutting;

namespace Loadmark.Planning.Tests.Cutting;

/// <summary>Cut lists of chance: small ones against every way of cutting, larger ones against first fit.</summary>
public sealed class CuttingOracleTests(ITestOutputHelper output)
{
    private static readonly Gen<int?> Count = Gen.Frequency((2, Gen.Const((int?)null)), (3, Gen.Int[0, 3].Select(static count => (int?)count)));

    [Fact]
    public void No_way_of_cutting_is_better()
    {
        var (asked, notFirst, tooShort) = (0, 0, 0);
        Lists(mostPieces: 6, mostLength: 14, mostReel: 20).Sample(
            list =>
            {
                var result = CuttingPlanner.Plan(list.Pieces, list.Reels, list.Options, TestContext.Current.CancellationToken);
                CutAssert.IsSound(list.Pieces, list.Reels, list.Options, result);
                var best = new CuttingOracle(list.Pieces, list.Reels, list.Options.CutLoss.Value).Best();
                Assert.Equal(best, CutAssert.Levels(result));
                Assert.Equal(CuttingStatus.Optimal, result.Status);
                Interlocked.Increment(ref asked);
                if (best.CompareTo(CutAssert.Levels(FirstFitCutting.Decreasing(list.Pieces, list.Reels, list.Options))) < 0)
                    Interlocked.Increment(ref notFirst);
                if (result.LeftOver.Count > 0)
                    Interlocked.Increment(ref tooShort);
            },
            iter: Rounds.Of(1500));
        output.WriteLine($"{asked} lists; in {notFirst} first fit decreasing is not the best, in {tooShort} the reels do not suffice");
        Assert.True(notFirst > asked / 20);
        Assert.True(tooShort > asked / 20);
    }

    [Fact]
    public void First_fit_is_sound_and_never_better()
    {
        var better = 0;
        Lists(mostPieces: 40, mostLength: 400, mostReel: 1000).Sample(
            list =>
            {
                var options = list.Options with { WorkLimit = 0.02 };
                var result = CuttingPlanner.Plan(list.Pieces, list.Reels, options, TestContext.Current.CancellationToken);
                CutAssert.IsSound(list.Pieces, list.Reels, options, result);
                foreach (var naive in new[] { FirstFitCutting.InOrder(list.Pieces, list.Reels, options), FirstFitCutting.Decreasing(list.Pieces, list.Reels, options) })
                {
                    CutAssert.IsSound(list.Pieces, list.Reels, options, naive);
                    Assert.True(CutAssert.Levels(result).CompareTo(CutAssert.Levels(naive)) <= 0);
                    if (CutAssert.Levels(result).CompareTo(CutAssert.Levels(naive)) < 0)
                        Interlocked.Increment(ref better);
                }
            },
            iter: Rounds.Of(150));
        Assert.True(better > 0);
    }

    private static Gen<(CutPiece[] Pieces, StockReel[] Reels, CuttingOptions Options)> Lists(int mostPieces, int mostLength, int mostReel) => Gen.Select(
        Gen.Int[1, mostLength].Array[0, mostPieces],
        Gen.Select(Gen.Int[mostReel / 4, mostReel], Count).Array[1, 3],
        Gen.Int[0, 3],
        static (lengths, reels, loss) => (
            lengths.Select(static (length, place) => new CutPiece($"piece-{place}", new Metres(length / 10m))).ToArray(),
            reels.Select(static (reel, place) => new StockReel($"reel-{place}", new Metres(reel.Item1 / 10m), reel.Item2)).ToArray(),
            new CuttingOptions { CutLoss = new Metres(loss / 10m) }));
}
