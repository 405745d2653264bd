using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Cutting;

/// <summary>What is cut from one reel.</summary>
public sealed record ReelCuts
{
    /// <summary>The reel.</summary>
    public required StockReel Reel { get; init; }

    /// <summary>Which of the reels of this name it is, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>
    /// The pieces in the order in which they are cut; at least one. The longest come first: what is cut wrongly can then still become a
    /// shorter one (common practice, no source).
    /// </summary>
    public required ValueList<CutPiece> Pieces { get; init; }

    /// <summary>The wire that ends up in pieces.</summary>
    public required Metres Used { get; init; }

    /// <summary>What is left on the reel after the last cut; zero where the last piece ends with the reel.</summary>
    public required Metres Offcut { get; init; }

    /// <summary>What the cuts themselves take away.</summary>
    public Metres LostInCuts => Reel.Length - Used - Offcut;
}
