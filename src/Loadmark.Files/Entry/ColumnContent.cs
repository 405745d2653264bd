using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Files.Texts;

namespace Loadmark.Files.Entry;

/// <summary>Tells what the columns of a table of loads are from what is in them, where the first row does not name them.</summary>
internal static class ColumnContent
{
    /// <summary>Whether a text is a figure: a bare number, or words of a label with one.</summary>
    public static bool IsFigure(string text) => PlainNumber.TryRead(text.Trim(), out _) || LineParts.HasFigures(NameplateReader.Read(text));

    /// <summary>Tells what each column of a table is by its cells.</summary>
    public static List<EntryColumn> Recognise(List<TableRow> rows)
    {
        var count = rows.Max(row => row.Cells.Length);
        var cells = Enumerable.Range(0, count).Select(index => rows.ConvertAll(row => row.Text(index)).OfType<string>().ToList()).ToList();
        var meanings = cells.ConvertAll(MeaningOf);

        // Where no column has whole labels, the only one with figures has them in part.
        var figures = Enumerable.Range(0, count).Where(index => meanings[index] is "voltage" or "current" or "watts").ToList();
        if (!meanings.Contains("label") && figures.Count == 1)
            meanings[figures[0]] = "label";
        var columns = new List<EntryColumn>();
        for (var index = 0; index < count; index++)
        {
            var meaning = meanings[index];
            if (meaning is null || columns.Exists(one => one.Becomes == meaning))
                columns.Add(new EntryColumn(index, null, null, null, Reason(cells[index], meaning)));
            else
                columns.Add(new EntryColumn(index, null, meaning, null, "by what is in it"));
        }

        return columns;
    }

    private static string Reason(List<string> cells, string? meaning)
    {
        if (cells.Count == 0)
            return "left out: it is empty";
        return meaning is null
            ? "left out: bare numbers may be volts, milliamps or anything; name the columns in the first row"
            : $"left out: a column before it is the {meaning} already";
    }

    private static string? MeaningOf(List<string> cells)
    {
        if (cells.Count == 0)
            return null;
        if (cells.TrueForAll(cell => AssetTag.Is(cell.Trim())))
            return "tag";
        if (cells.TrueForAll(cell => PlainNumber.TryRead(cell.Trim(), out _)))
            return null;
        var readings = cells.ConvertAll(NameplateReader.Read);
        if (readings.Exists(LineParts.HasFigures))
            return FiguresOf(readings);
        if (readings.TrueForAll(reading => reading.Polarity.State == FieldState.Read && reading.Unread.Length == 0))
            return "polarity";
        if (readings.TrueForAll(reading => reading.Plug.State == FieldState.Read && reading.Unread.Length == 0))
            return "plug";
        return cells.TrueForAll(
            cell => new LoadKind(
                cell.Length == 0 || string.IsNullOrWhiteSpace(cell) ? "-" : cell).Class != LoadClass.Unknown) ? "kind" : "name";
    }

    private static string FiguresOf(List<Nameplate> readings)
    {
        var alone = readings.TrueForAll(reading => reading is { Unread.Length: 0, Mains: null, Modes.Length: <= 1 });
        if (alone && readings.TrueForAll(reading => reading.Modes.All(mode => mode is { Volts: null, Watts: null })))
            return "current";
        if (alone && readings.TrueForAll(reading => reading.Modes.All(mode => mode is { Amps: null, Watts: null })))
            return "voltage";
        return alone && readings.TrueForAll(reading => reading.Modes.All(mode => mode is { Volts: null, Amps: null })) ? "watts" : "label";
    }
}
