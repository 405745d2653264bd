using Loadmark.Planning.Cutting;

namespace Loadmark.Planning.Tests.Cutting;

/// <summary>
/// Bin packing as cutting: items are pieces, bins are reels, and a cut takes nothing. Instances and optima: see Data/binpacking/SOURCE.md.
/// </summary>
public sealed class CuttingBinPackingTests(ITestOutputHelper output)
{
    public static TheoryData<string> Names() => [.. BinPackingInstance.All().Select(static one => one.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_fewest_reels_are_the_fewest_bins(string name)
    {
        var instance = BinPackingInstance.All().Single(one => one.Name == name);
        var pieces = instance.Sizes.Select(static (size, item) => new CutPiece($"{item}", new Metres(size / 100m))).ToList();
        StockReel[] reels = [new("reel", new Metres(instance.Capacity / 100m))];
        var options = new CuttingOptions();
        var result = CuttingPlanner.Plan(pieces, reels, options, TestContext.Current.CancellationToken);
        var naive = FirstFitCutting.Decreasing(pieces, reels, options);
        output.WriteLine($"{name}: {result.Reels.Count} reels, {result.Status}, longest offcut {result.LongestOffcut}; first fit decreasing {naive.Reels.Count}");

        CutAssert.IsSound(pieces, reels, options, result);
        Assert.Equal(instance.Fewest, result.Reels.Count);
        Assert.True(result.IsWasteProven);
    }
}
