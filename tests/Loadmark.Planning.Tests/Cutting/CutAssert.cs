using Loadmark.Planning.Cutting;

namespace Loadmark.Planning.Tests.Cutting;

/// <summary>What holds of every way of cutting, however it was found; reckoned from the result alone.</summary>
internal static class CutAssert
{
    /// <summary>No reel is overfull or opened too often, every piece is in the result once, and the sums are those of its parts.</summary>
    public static void IsSound(IReadOnlyList<CutPiece> pieces, IReadOnlyList<StockReel> reels, CuttingOptions options, CuttingResult result)
    {
        var cut = result.Reels.SelectMany(static reel => reel.Pieces).ToList();
        Assert.Equal(
            pieces.Select(static piece => piece.Id).Order(StringComparer.Ordinal),
            cut.Concat(result.Impossible).Concat(result.LeftOver).Select(static piece => piece.Id).Order(StringComparer.Ordinal));
        Assert.All(cut, piece => Assert.Contains(piece, pieces));
        foreach (var reel in result.Reels)
        {
            Assert.NotEmpty(reel.Pieces);
            Assert.Contains(reel.Reel, reels);
            Assert.InRange(reel.Number, 1, reel.Reel.Count ?? int.MaxValue);

            // Sawn one after the other: behind each piece the blade takes its width, or what is left.
            var left = reel.Reel.Length;
            foreach (var piece in reel.Pieces)
            {
                Assert.True(piece.Length <= left, $"{reel.Reel.Id} is overfull");
                left = Metres.Max(Metres.Zero, left - piece.Length - options.CutLoss);
            }

            Assert.Equal(left, reel.Offcut);
            Assert.Equal(reel.Pieces.Sum(static piece => piece.Length.Value), reel.Used.Value);
            Assert.Equal(reel.Reel.Length, reel.Used + reel.Offcut + reel.LostInCuts);
        }

        Assert.Equal(result.Reels.Count, result.Reels.Select(static reel => (reel.Reel.Id, reel.Number)).Distinct().Count());
        Assert.Equal(result.Opened - result.Used, result.Wasted);
        Assert.All(result.Impossible, piece => Assert.True(reels.All(reel => reel.Length < piece.Length || reel.Count == 0)));
        if (result.WastedBound is { } bound)
            Assert.True(bound <= result.Wasted, $"{bound} is said to be the least, and {result.Wasted} are wasted");
        if (result.Status == CuttingStatus.Optimal)
            Assert.True(result.IsWasteProven);
    }

    /// <summary>The levels of the objective in their order, less being better on each.</summary>
    public static (int LeftOver, decimal MetresOver, decimal Opened, int Reels, decimal NoOffcut) Levels(CuttingResult result) => (
        result.LeftOver.Count, result.LeftOver.Sum(static piece => piece.Length.Value), result.Opened.Value, result.Reels.Count, -result.LongestOffcut.Value);
}
