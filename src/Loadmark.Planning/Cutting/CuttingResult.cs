using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Cutting;

/// <summary>Which pieces are cut from which reels.</summary>
public sealed record CuttingResult
{
    /// <summary>What is proven of it.</summary>
    public required CuttingStatus Status { get; init; }

    /// <summary>The reels that are opened, in the order of the list of reels, of one name the fullest first.</summary>
    public required ValueList<ReelCuts> Reels { get; init; }

    /// <summary>The pieces that are longer than every reel on the list.</summary>
    public required ValueList<CutPiece> Impossible { get; init; }

    /// <summary>The pieces that would fit on a reel of the list, and for which too few are there.</summary>
    public required ValueList<CutPiece> LeftOver { get; init; }

    /// <summary>
    /// What is wasted at the least by any way of cutting that leaves as few pieces over and as few metres of them; null where nothing is
    /// known of that.
    /// </summary>
    public required Metres? WastedBound { get; init; }

    /// <summary>The wire on all reels that are opened.</summary>
    public Metres Opened => Sum(static reel => reel.Reel.Length);

    /// <summary>The wire that ends up in pieces.</summary>
    public Metres Used => Sum(static reel => reel.Used);

    /// <summary>
    /// What is opened and ends up in no piece: offcuts, <see cref="LongestOffcut"/> among them, and what the cuts take away.
    /// </summary>
    public Metres Wasted => Opened - Used;

    /// <summary>The longest offcut of one reel, which is the one worth keeping; zero where nothing is left.</summary>
    public Metres LongestOffcut => Reels.Items.Aggregate(Metres.Zero, static (most, reel) => Metres.Max(most, reel.Offcut));

    /// <summary>Whether it is proven that no other way of cutting as much wastes less.</summary>
    public bool IsWasteProven => WastedBound is { } bound && bound >= Wasted;

    private Metres Sum(Func<ReelCuts, Metres> length) => Reels.Items.Aggregate(Metres.Zero, (sum, reel) => sum + length(reel));
}
