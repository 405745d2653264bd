using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using Loadmark.Files.Library;

namespace Loadmark.Workshop.Library;

/// <summary>
/// Whether two pieces of gear of one tag are the same thing. A tag alone does not tell: people begin every rig with the same ones. What the
/// names or the labels say does, and where neither does it is a question.
/// </summary>
public static class GearMatching
{
    /// <summary>
    /// Whether the pieces are plainly the same: they have one name, or their labels tell the same figures and their kinds do not speak
    /// against it. No is a doubt and never a proof that they differ.
    /// </summary>
    /// <param name="one">A piece.</param>
    /// <param name="other">Another of the same kind of gear and the same tag.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static bool IsSame(GearPiece one, GearPiece other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        return (one, other) switch
        {
            ({ Load: { } load }, { Load: { } same }) =>
                IsNamedAlike(load.Name, same.Name) || (IsPrintedAlike(load.Label, same.Label) && !Differ(load.Kind, same.Kind)),
            ({ Supply: { } supply }, { Supply: { } same }) =>
                IsNamedAlike(supply.Name, same.Name)
                || (PrintOf(supply.Label) == PrintOf(same.Label) && OutletsOf(supply) == OutletsOf(same)),
            ({ Lead: { } lead }, { Lead: { } same }) => lead.Type == same.Type,
            _ => false,
        };
    }

    private static bool IsNamedAlike(string? one, string? other) =>
        one is not null && string.Equals(one, other, StringComparison.OrdinalIgnoreCase);

    /// <summary>Whether both are printed and neither says what the other does not: who types a label may leave some of it out.</summary>
    private static bool IsPrintedAlike(Nameplate? one, Nameplate? other) =>
        one is not null && other is not null && PrintOf(one) is { Length: > 0 } print && print == PrintOf(other)
        && IsAlike(one.Form.Value, other.Form.Value)
        && IsAlike(one.Polarity.Value, other.Polarity.Value);

    private static bool IsAlike<T>(T? one, T? other)
        where T : struct => one is null || other is null || one.Value.Equals(other.Value);

    /// <summary>The figures of a label in one spelling: "9V 12mA" and "9 V ⎓ 12 mA" are the same.</summary>
    private static string PrintOf(Nameplate? label) =>
        string.Join("; ", (label?.Modes ?? []).Select(static mode => $"{mode.Volts} {mode.Amps} {mode.Watts}"));

    private static string OutletsOf(Supply supply) =>
        string.Join(" | ", supply.Outlets.Items.Select(static outlet => PrintOf(outlet.Label)));

    private static bool Differ(LoadKind? one, LoadKind? other) =>
        (one is { IsDigital: { } isDigital } && other is { IsDigital: { } otherIs } && isDigital != otherIs)
        || (one is { Class: not LoadClass.Unknown } && other is { Class: not LoadClass.Unknown } && one.Class != other.Class);
}
