using Loadmark.Planning.Cutting;

namespace Loadmark.Workshop.Sheets;

/// <summary>From what the cable of a rig's leads is cut.</summary>
public sealed record CuttingWishes
{
    /// <summary>
    /// What stripping and soldering take up of each stretch of cable, both its ends together: 40 mm (common practice, no source).
    /// </summary>
    public static Metres CommonAllowance { get; } = new(0.04m);

    /// <summary>The reels that there are; the same ones for each size of wire. Empty where nobody said: then nothing is cut.</summary>
    public IReadOnlyList<StockReel> Reels { get; init; } = [];

    /// <summary>What stripping and soldering take up of each stretch of cable, both its ends together; zero or more.</summary>
    public Metres Allowance { get; init; } = CommonAllowance;

    /// <summary>What each cut takes away; zero or more.</summary>
    public Metres CutLoss { get; init; }
}
