using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using Loadmark.Files.Errors;
using Loadmark.Files.Parsing;
using Loadmark.Files.Trees;

namespace Loadmark.Files.PriceLists;

/// <summary>
/// Reads the outlets of a supply out of one cell: <c>1-4: 9 V 150 mA | 5: 9 V 500 mA; 12 V 400 mA</c>. A bar parts one entry from
/// the next, since a semicolon parts the settings of an outlet and a comma may be in a figure; each entry is what the rig file
/// has.
/// </summary>
internal static class OutletCell
{
    private const char Bar = '|';
    private const string Form = "an id or a range, a colon and a label, such as 1-4: 9 V 150 mA";

    /// <summary>The outlets; without a cell the ones that the supply's label says.</summary>
    /// <param name="cell">The cell; null when there is none, or nothing in it.</param>
    /// <param name="label">The supply's label; null when it has none.</param>
    /// <param name="supply">The supply's name, for the error where neither tells.</param>
    /// <param name="allowance">How many outlets the file may still name.</param>
    /// <param name="errors">Where faults go.</param>
    public static List<Outlet> Read(ScalarNode? cell, Nameplate? label, ScalarNode supply, OutletAllowance allowance, ErrorList errors)
    {
        var outlets = new List<Outlet>();
        if (cell is null)
        {
            if (LabelledOutlets.Of(label, out var problem) is not { } said)
                errors.Add(
                    supply.Start,
                    $"nothing tells what '{ErrorList.Quote(supply.Value)}' gives: no outlets are listed, and {problem}",
                    null,
                    Form);
            else if (!allowance.TryTake(said.Count))
                errors.Add(supply.Start, $"outlets: with these there are more than {OutletAllowance.Most}", supply.Value);
            else
                outlets.AddRange(said);
            return outlets;
        }

        var places = new Dictionary<string, Spot>(StringComparer.Ordinal);
        foreach (var entry in cell.Value.Split(Bar))
        {
            var colon = entry.IndexOf(':', StringComparison.Ordinal);
            if (colon < 0 || entry.AsSpan(0, colon).IsWhiteSpace())
            {
                errors.Expected(cell.Start, PriceColumn.Outlets, Form, entry.Trim());
                continue;
            }

            var id = new ScalarNode(cell.Start, entry[..colon].Trim(), isPlain: false);
            var text = new ScalarNode(cell.Start, entry[(colon + 1)..].Trim(), isPlain: false);
            OutletReader.Read(id, text, places, outlets, allowance, errors);
        }

        return outlets;
    }
}
