namespace Loadmark.Terminal;

/// <summary>A plain table: as wide as what stands in it, its last column wrapped to the page.</summary>
internal sealed class ColumnTable
{
    private const int Indent = 2;
    private const int Gap = 2;
    private const int WidestName = 20;

    private readonly string[] _head;
    private readonly List<string[]> _rows = [];

    /// <summary>Begins a table.</summary>
    /// <param name="head">The heads: the first and the last column begin at the left, those between end at the right.</param>
    public ColumnTable(params string[] head) => _head = head;

    /// <summary>Adds a row, with a text for each column.</summary>
    public void Add(params string[] row) => _rows.Add(row);

    /// <summary>Writes the table; nothing where it has no rows.</summary>
    public void Write(Sheet sheet)
    {
        if (_rows.Count == 0)
            return;
        var ends = new int[_head.Length];
        for (var column = 0; column < ends.Length; column++)
        {
            var widest = _rows.Append(_head).Max(row => sheet.CellsOf(row[column]));
            ends[column] = (column == 0 ? Indent + Math.Min(WidestName, widest) : ends[column - 1] + Gap + widest);
        }

        sheet.BlankLine();
        WriteRow(sheet, _head, ends, isHead: true);
        foreach (var row in _rows)
            WriteRow(sheet, row, ends, isHead: false);
    }

    private static void WriteRow(Sheet sheet, string[] row, int[] ends, bool isHead)
    {
        var style = isHead ? SheetStyle.Faint : SheetStyle.Plain;
        sheet.PadTo(Indent).PutShortened(row[0], WidestName, isHead ? SheetStyle.Faint : SheetStyle.Strong);
        for (var column = 1; column < row.Length - 1; column++)
            sheet.PutRight(row[column], ends[column], style);
        var last = ends[^2] + Gap;
        sheet.PadTo(last).Wrap(row[^1], last, style).EndLine();
    }
}
