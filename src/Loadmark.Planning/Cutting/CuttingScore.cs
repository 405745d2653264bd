namespace Loadmark.Planning.Cutting;

/// <summary>How good a way of cutting is; the levels one after the other, and less is better on each but the last.</summary>
/// <param name="Uncut">The pieces left over.</param>
/// <param name="UncutSize">What these would take, in micrometres.</param>
/// <param name="Opened">The wire on the reels that are opened, in micrometres.</param>
/// <param name="Reels">How many are opened.</param>
/// <param name="Offcut">The longest offcut of one reel, in <see cref="CuttingUnits.OffcutStep"/> rounded down; more is better.</param>
internal readonly record struct CuttingScore(int Uncut, long UncutSize, long Opened, int Reels, long Offcut)
{
    /// <summary>The levels in their order, less being better on each.</summary>
    public (int Uncut, long UncutSize, long Opened, int Reels, long NoOffcut) Rank => (Uncut, UncutSize, Opened, Reels, -Offcut);

    /// <summary>Whether it is better than another.</summary>
    public bool IsBetterThan(CuttingScore other) => Rank.CompareTo(other.Rank) < 0;
}
