using Loadmark.Core.Gear;
using Loadmark.Files.Library;
using Loadmark.Workshop.Library;

namespace Loadmark.Terminal;

/// <summary>Gear of the library, a line each.</summary>
internal static class GearListPage
{
    /// <summary>Writes the page.</summary>
    /// <param name="sheet">The page.</param>
    /// <param name="gear">The gear, the best match first.</param>
    /// <param name="words">What was looked for; empty for everything.</param>
    public static void Write(Sheet sheet, IReadOnlyList<ListedGear> gear, string words)
    {
        sheet.Put("GEAR  ", SheetStyle.Strong).Wrap(Head(gear.Count, words), sheet.Column, SheetStyle.Strong).EndLine();
        if (gear.Count == 0)
            return;

        // What was looked for stays in one list, since its order tells how well it fits.
        var loads = gear.Where(static one => one.Gear.Kind == GearKind.Load).ToList();
        if (loads.Count > 0)
        {
            var table = new ColumnTable("load", "running", "starting", "rigs", "what it is");
            foreach (var one in loads)
                table.Add(one.Gear.Tag, $"{one.Gear.Piece?.Load?.Run}", $"{one.Gear.Piece?.Load?.Start?.Current}", Rigs(one), What(one));
            table.Write(sheet);
        }

        foreach (var kind in (ReadOnlySpan<GearKind>)[GearKind.Supply, GearKind.Lead])
        {
            var table = new ColumnTable(kind == GearKind.Supply ? "supply" : "lead", "rigs", "what it is");
            foreach (var one in gear.Where(one => one.Gear.Kind == kind))
                table.Add(one.Gear.Tag, Rigs(one), What(one));
            table.Write(sheet);
        }
    }

    private static string Head(int count, string words) => (count, words.Length) switch
    {
        (0, 0) => "the library is empty",
        (0, _) => $"nothing like '{words}' in the library",
        (_, 0) => $"{count} in the library",
        _ => $"{count} for '{words}'",
    };

    private static string Rigs(ListedGear one) => one.Rigs == 0 ? "." : $"{one.Rigs}";

    private static string What(ListedGear one)
    {
        var content = one.Gear.Stored.Content;
        var lead = one.Gear.Piece is { Lead: not null } known
            ? string.Join(
                ", ", GearText.FieldsOf(known).Select(static field => field.Key == "type" ? field.Value : $"{field.Key} {field.Value}"))
            : "";
        var words = content.Words.Count == 0 ? "" : $"[{string.Join(", ", content.Words.Items)}]";
        return string.Join("; ", new[] { content.Name, content.Label, lead, words }.Where(static text => text.Length > 0));
    }
}
