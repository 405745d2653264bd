using Loadmark.Files.Errors;
using Loadmark.Files.Tables;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Entry;

/// <summary>One row of a table.</summary>
/// <param name="Source">The row's first line, with the text of all its lines.</param>
/// <param name="Cells">The row's cells.</param>
/// <param name="Problem">What is wrong with its quotation marks or its size; null when nothing is.</param>
internal sealed record TableRow(SourceLine Source, ScalarNode[] Cells, string? Problem)
{
    /// <summary>The most cells of a row.</summary>
    private const int MostCells = 100;

    /// <summary>The text of a cell without the apostrophe that keeps it from being a formula; null of an empty one.</summary>
    /// <param name="index">Which; one past the row's end is empty.</param>
    public string? Text(int index) => index >= 0 && index < Cells.Length ? CellGuard.Unguard(Cells[index].Value) : null;

    /// <summary>A text at the place of a cell.</summary>
    public ScalarNode Node(int index, string text) => new(Cells[Math.Min(index, Cells.Length - 1)].Start, text, isPlain: false);

    /// <summary>Takes a text apart and reads its rows, unless the text is too large or has none.</summary>
    /// <param name="text">The text; a byte order mark at its start is passed over.</param>
    /// <param name="read">Reads the rows, of which there is one at least; it is told what parts the cells.</param>
    /// <param name="limits">How much is read.</param>
    public static EntryResult ReadAll(string text, Func<List<TableRow>, char, EntryResult> read, TableLimits limits)
    {
        text = text.TrimStart('\uFEFF');
        if (SourceLine.ProblemOf(text, limits.Lines, limits.Characters) is { } problem)
            return EntryResult.Failed(problem);
        var table = CsvTable.Read(text, new ErrorList(""), isExact: true);
        if (table.Rows.Exists(row => row.Length > MostCells))
            return EntryResult.Failed($"a row has more than {MostCells} cells");
        return table.Rows.Count == 0 ? new EntryResult([], [], null) : read(RowsOf(text, table), table.Separator);
    }

    private static List<TableRow> RowsOf(string text, CsvTable table)
    {
        var starts = table.Rows.ConvertAll(row => text.AsSpan(0, row[0].Start.Index).LastIndexOfAny('\r', '\n') + 1);
        var rows = new List<TableRow>(starts.Count);
        for (var index = 0; index < starts.Count; index++)
        {
            var end = index + 1 < starts.Count ? Math.Max(starts[index], starts[index + 1]) : text.Length;
            var source = new SourceLine(table.Rows[index][0].Start.Line, text[starts[index]..end].TrimEnd('\r', '\n'));
            rows.Add(new TableRow(source, table.Rows[index], table.Problems.GetValueOrDefault(index)));
        }

        return rows;
    }

    /// <summary>Why the row cannot be read with the columns there are; null when it can.</summary>
    /// <param name="columns">How many columns there are.</param>
    /// <param name="separator">What parts the cells.</param>
    public EntryRefusal? Refuse(int columns, char separator)
    {
        if (Problem is not null)
            return new EntryRefusal(Problem, null);
        if (Cells.Skip(columns).Any(cell => cell.Value.Length > 0))
            return new EntryRefusal(
                $"it has {Cells.Length} cells and there are {columns} columns; a cell with '{separator}' in it goes in quotation marks",
                $"{columns} cells");
        var text = Source.Text;
        for (var index = 0; index < text.Length; index++)
        {
            if (index + 1 < text.Length && char.IsSurrogatePair(text[index], text[index + 1]))
                index++;
            else if (char.IsSurrogate(text[index]) || text[index] is '\0' or '\uFFFE' or '\uFFFF')
                return new EntryRefusal($"it holds the character U+{(int)text[index]:X4}, which has no place in a text", null);
        }

        return null;
    }
}
