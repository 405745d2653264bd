using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;

namespace Loadmark.Files.Keys;

/// <summary>The fixed words of the rig file.</summary>
internal static class RigWords
{
    /// <summary>Plugs as people write them.</summary>
    public static IReadOnlyList<string> PlugExamples { get; } = ["5.5x2.1", "5.5x2.5", "3.5 mm jack"];

    public static WordTable GearSource { get; } = new(["library"], [Keys.GearSource.Library]);

    public static WordTable Polarity { get; } = new(
        ["centre negative", "center negative", "centre positive", "center positive"],
        [
            Core.Gear.Polarity.CentreNegative,
            Core.Gear.Polarity.CentreNegative,
            Core.Gear.Polarity.CentrePositive,
            Core.Gear.Polarity.CentrePositive,
        ]);

    public static WordTable Ground { get; } = new(
        ["negative", "positive"],
        [GroundSide.Negative, GroundSide.Positive]);

    public static WordTable Draws { get; } = new(
        ["current", "power", "resistance"],
        [DrawLaw.Current, DrawLaw.Power, DrawLaw.Resistance]);

    public static WordTable Overload { get; } = new(
        ["current limit", "foldback", "hiccup", "fuse"],
        [OverloadWay.CurrentLimit, OverloadWay.Foldback, OverloadWay.Hiccup, OverloadWay.Fuse]);

    public static WordTable LeadType { get; } = new(
        ["straight", "daisy chain", "reversing", "series", "parallel"],
        [
            Core.Rigs.LeadType.Straight,
            Core.Rigs.LeadType.DaisyChain,
            Core.Rigs.LeadType.Reversing,
            Core.Rigs.LeadType.Series,
            Core.Rigs.LeadType.Parallel,
        ]);

    public static WordTable Joined { get; } = new(
        ["series", "parallel"],
        [Joint.Series, Joint.Parallel]);
}
