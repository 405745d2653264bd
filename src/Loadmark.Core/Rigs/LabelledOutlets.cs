using Loadmark.Core.Nameplates;

namespace Loadmark.Core.Rigs;

/// <summary>The outlets that a supply has by what is printed on it, where nobody lists them.</summary>
public static class LabelledOutlets
{
    private const string OnlyId = "1";

    /// <summary>The outlets that a label says: one, called 1, where it speaks of one output.</summary>
    /// <param name="label">The label of the supply; null where it has none.</param>
    /// <param name="problem">Why the label does not tell, as the end of a sentence ("its label …"); null where it does.</param>
    /// <returns>The outlets, at least one; null where the label does not tell.</returns>
    public static ValueList<Outlet>? Of(Nameplate? label, out string? problem)
    {
        problem = label is null || string.IsNullOrWhiteSpace(label.Text) ? "nothing is said of what is printed on it"
            : !SaysOutput(label) ? "its label says nothing of what it gives"
            : null;
        return problem is null ? [new Outlet { Id = OnlyId, Label = NameplateReader.Read("") }] : null;
    }

    /// <summary>Whether a supply's outlets are the ones that its label says, so that nobody need list them.</summary>
    /// <param name="supply">The supply.</param>
    public static bool AreOf(Supply supply)
    {
        ArgumentNullException.ThrowIfNull(supply);
        return Of(supply.Label, out _) is { } said && said == supply.Outlets;
    }

    /// <summary>The outlets of a supply whose label has changed: where they were the ones that the old label says, the ones that the new one says.</summary>
    /// <param name="before">The supply with its old label.</param>
    /// <param name="label">The new label; null for none.</param>
    /// <returns>The outlets; the old ones where they were listed, and where the new label does not tell any.</returns>
    public static ValueList<Outlet> After(Supply before, Nameplate? label)
    {
        ArgumentNullException.ThrowIfNull(before);
        return AreOf(before) ? Of(label, out _) ?? before.Outlets : before.Outlets;
    }

    private static bool SaysOutput(Nameplate label) =>
        label.Modes.Length > 0 || label.AmbiguousVolts.State != FieldState.Absent || label.AmbiguousAmps.State != FieldState.Absent || label.AmbiguousWatts.State != FieldState.Absent;
}
