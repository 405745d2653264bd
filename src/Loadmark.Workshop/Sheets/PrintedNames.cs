using System.Globalization;
using Loadmark.Core.Rigs;

namespace Loadmark.Workshop.Sheets;

/// <summary>
/// Names for paper: of one that is longer than any that means something, only the beginning is printed, and how much is missing.
/// </summary>
internal static class PrintedNames
{
    private const int Most = 600;

    /// <summary>The rig with its name and those of its loads and supplies as they are printed.</summary>
    public static Rig Of(Rig rig) => rig with
    {
        Name = Of(rig.Name)!,
        Loads = [.. rig.Loads.Items.Select(static load => load with { Name = Of(load.Name) })],
        Supplies = [.. rig.Supplies.Items.Select(static supply => supply with { Name = Of(supply.Name) })],
    };

    private static string? Of(string? name)
    {
        if (name is null || name.Length <= Most)
            return name;
        var kept = char.IsHighSurrogate(name[Most - 1]) ? Most - 1 : Most;
        return string.Create(CultureInfo.InvariantCulture, $"{name.AsSpan(0, kept)} … ({name.Length - kept} characters more)");
    }
}
