using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;

namespace Loadmark.Files.Keys;

/// <summary>The fixed words of the rig file.</summary>
internal static class RigWords
{
    public static WordTable<Polarity> Polarity { get; } = new(
        ("centre negative", Core.Gear.Polarity.CentreNegative), ("center negative", Core.Gear.Polarity.CentreNegative),
        ("centre positive", Core.Gear.Polarity.CentrePositive), ("center positive", Core.Gear.Polarity.CentrePositive));

    public static WordTable<GroundSide> Ground { get; } = new(("negative", GroundSide.Negative), ("positive", GroundSide.Positive));

    public static WordTable<DrawLaw> Draws { get; } = new(
        ("current", DrawLaw.Current), ("power", DrawLaw.Power), ("resistance", DrawLaw.Resistance));

    public static WordTable<OverloadWay> Overload { get; } = new(
        ("current limit", OverloadWay.CurrentLimit), ("foldback", OverloadWay.Foldback),
        ("hiccup", OverloadWay.Hiccup), ("fuse", OverloadWay.Fuse));

    public static WordTable<LeadType> LeadType { get; } = new(
        ("straight", Core.Rigs.LeadType.Straight), ("daisy chain", Core.Rigs.LeadType.DaisyChain),
        ("reversing", Core.Rigs.LeadType.Reversing), ("series", Core.Rigs.LeadType.Series), ("parallel", Core.Rigs.LeadType.Parallel));

    public static WordTable<Joint> Joined { get; } = new(("series", Joint.Series), ("parallel", Joint.Parallel));
}
