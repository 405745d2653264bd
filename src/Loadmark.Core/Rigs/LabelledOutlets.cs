using System.Globalization;
using Loadmark.Core.Nameplates;

namespace Loadmark.Core.Rigs;

/// <summary>The outlets that a supply has by what is printed on it, where nobody lists them.</summary>
public static class LabelledOutlets
{
    /// <summary>
    /// The outlets that a label says: the groups that it tells apart, with the ids that are printed or numbers from 1; and one, called 1,
    /// where it speaks of one output.
    /// </summary>
    /// <param name="label">The label of the supply; null where it has none.</param>
    /// <param name="problem">Why the label does not tell, as the end of a sentence ("its label …"); null where it does.</param>
    /// <returns>The outlets, at least one; null where the label does not tell.</returns>
    public static ValueList<Outlet>? Of(Nameplate? label, out string? problem)
    {
        problem = null;
        if (label is null || string.IsNullOrWhiteSpace(label.Text))
            problem = "nothing is said of what is printed on it";
        else if (label.Outlets.Length > 0)
            return OfGroups(label, out problem);
        else if (label.EachOutlet)
            problem = "its label says what each outlet gives and not how many there are";
        else if (!SaysOutput(label))
            problem = "its label says nothing of what it gives";
        return problem is null ? [new Outlet { Id = "1", Label = NameplateReader.Read("") }] : null;
    }

    /// <summary>Whether a supply's outlets are the ones that its label says, so that nobody need list them.</summary>
    /// <param name="supply">The supply.</param>
    public static bool AreOf(Supply supply)
    {
        ArgumentNullException.ThrowIfNull(supply);
        return Of(supply.Label, out _) is { } said && said == supply.Outlets;
    }

    /// <summary>
    /// The outlets of a supply whose label has changed: where they were the ones that the old label says, the ones that the new one says.
    /// </summary>
    /// <param name="before">The supply with its old label.</param>
    /// <param name="label">The new label; null for none.</param>
    /// <returns>The outlets; the old ones where they were listed, and where the new label does not tell any.</returns>
    public static ValueList<Outlet> After(Supply before, Nameplate? label)
    {
        ArgumentNullException.ThrowIfNull(before);
        return AreOf(before) ? Of(label, out _) ?? before.Outlets : before.Outlets;
    }

    private static ValueList<Outlet>? OfGroups(Nameplate label, out string? problem)
    {
        var outlets = new List<Outlet>();
        var names = new HashSet<string>(StringComparer.Ordinal);
        foreach (var group in label.Outlets)
        {
            // What is printed for the group is what would stand beside each of its outlets.
            var printed = NameplateReader.Read(NameplateWriter.Write(group, label));
            foreach (var name in group.Names(FirstFree(names)))
            {
                if (!names.Add(name))
                {
                    problem = $"its label names the outlet {name} twice";
                    return null;
                }

                outlets.Add(new Outlet { Id = name, Label = printed });
            }
        }

        problem = null;
        return [.. outlets];
    }

    /// <summary>The number above all that are names already.</summary>
    private static int FirstFree(HashSet<string> names) =>
        1 + names.Select(static name => int.TryParse(name, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0)
            .DefaultIfEmpty().Max();

    private static bool SaysOutput(Nameplate label) =>
        label.Modes.Length > 0 || label.AmbiguousVolts.State != FieldState.Absent || label.AmbiguousAmps.State != FieldState.Absent
            || label.AmbiguousWatts.State != FieldState.Absent;
}
