using Loadmark.Workshop.Library;


namespace Loadmark.Terminal;

/// <summary>What became of gear that was to be taken into the library.</summary>
internal static class ImportPage
{
    private const int Indent = 2;
    private const int Deeper = 4;

    /// <summary>Writes the page.</summary>
    public static void Write(Sheet sheet, ImportPreview preview, ImportResult result)
    {
        var same = preview.Rows.Count(static row => row.State == ImportState.Same);
        sheet.Put("GEAR  ", SheetStyle.Strong)
            .Wrap(
                $"{result.Added.Length} added, {result.Changed.Length} changed, {same} the same already, "
                + $"{result.Left.Length} different and left as they are, "
                + $"{preview.Rows.Count(static row => row.State == ImportState.Refused)} refused",
                sheet.Column,
                SheetStyle.Strong).EndLine();
        if (result.Added.Length > 0)
            sheet.BlankLine().Wrap($"Added: {string.Join(", ", result.Added.Select(static row => row.Tag))}.", Indent).EndLine();
        WriteDifferences(sheet, "Changed", result.Changed);
        WriteDifferences(sheet, "Different in the library, and left as they are", result.Left);
        if (result.Left.Length > 0)
            sheet.PadTo(Indent)
                .Wrap($"To take what is new of one, add --take {result.Left[0].Tag}; of all, --take-all.", Indent, SheetStyle.Faint)
                .EndLine();
        if (result.Overtaken.Length > 0)
            sheet.BlankLine()
                .Wrap(
                    "Not taken, because somebody else changed them in the library meanwhile: "
                    + $"{string.Join(", ", result.Overtaken.Select(static row => row.Tag))}. Try again.",
                    Indent,
                    SheetStyle.Orange).EndLine();
        WriteRefused(sheet, preview);
    }

    /// <summary>Writes that gear was written to a file.</summary>
    public static void WriteExport(Sheet sheet, int count, string file) =>
        sheet.Wrap($"{count} pieces of gear are written to {file}. Readings and earlier changes stay in the library.", 0).EndLine();

    private static void WriteDifferences(Sheet sheet, string head, IReadOnlyList<ImportRow> rows)
    {
        if (rows.Count == 0)
            return;
        sheet.BlankLine().Line($"{head}:");
        foreach (var row in rows)
        {
            sheet.PadTo(Indent).Wrap(row.Present!.Tag, Indent, SheetStyle.Strong).EndLine();
            foreach (var difference in row.Differences)
                sheet.PadTo(Deeper).Wrap(GearPage.Say(difference), Deeper).EndLine();
        }
    }

    private static void WriteRefused(Sheet sheet, ImportPreview preview)
    {
        var isFirst = true;
        foreach (var row in preview.Rows.Where(static row => row.State == ImportState.Refused))
        {
            if (isFirst)
                sheet.BlankLine().Line("Refused:");
            isFirst = false;
            var place = row.Line > 0 ? $"line {row.Line}" : "";
            sheet.PadTo(Indent)
                .Wrap($"{string.Join(", ", new[] { place, row.Tag }.Where(static part => part.Length > 0))}: {row.Refusal}", Deeper)
                .EndLine();
        }
    }
}
