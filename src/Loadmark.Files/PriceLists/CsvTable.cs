using System.Text;
using CsvHelper;
using Loadmark.Files.Trees;

namespace Loadmark.Files.PriceLists;

/// <summary>Takes a text apart into rows of cells, each with its place. Rows without any text are left out.</summary>
internal sealed class CsvTable
{
    private readonly byte[] _bytes;
    private readonly LineTable _lines;
    private readonly ErrorList _errors;
    private int _seenBytes;
    private int _seenCharacters;

    private CsvTable(string text, ErrorList errors)
    {
        _bytes = Encoding.UTF8.GetBytes(text);
        _lines = new LineTable(text);
        _errors = errors;
        Separator = SeparatorOf(text);
    }

    /// <summary>What parts the cells: a comma or a semicolon.</summary>
    public char Separator { get; }

    /// <summary>The rows with any text in them, the header first.</summary>
    public List<ScalarNode[]> Rows { get; } = [];

    /// <summary>Reads a text. Quotes that are not closed or have text behind them are errors.</summary>
    public static CsvTable Read(string text, ErrorList errors)
    {
        var table = new CsvTable(text, errors);
        table.ReadRows();
        return table;
    }

    /// <summary>
    /// Whichever of the two there is more of in the first line with text. None of the column names has either in it.
    /// </summary>
    private static char SeparatorOf(string text)
    {
        var header = text.AsSpan().TrimStart();
        var end = header.IndexOfAny('\r', '\n');
        header = end < 0 ? header : header[..end];
        return header.Count(';') > header.Count(',') ? ';' : ',';
    }

    private void ReadRows()
    {
        var options = new CsvReaderOptions
        {
            HasHeader = false,
            Separator = Separator,
            DetectSeparatorHint = false,
            MalformedData = CsvMalformedDataHandling.Recover,
            OnMalformedRecord = AddMalformed,
        };
        using var csv = CsvReader.Create(_bytes, options);
        while (csv.Read())
        {
            var cells = new ScalarNode[csv.FieldCount];
            for (var index = 0; index < cells.Length; index++)
            {
                var start = csv.RawRecord.Overlaps(csv.GetRawSpan(index), out var offset) ? csv.ByteOffset + offset : csv.ByteOffset;
                cells[index] = new ScalarNode(SpotOf(start), csv.GetString(index).Trim(), isPlain: false);
            }

            if (Array.Exists(cells, static cell => cell.Value.Length > 0))
                Rows.Add(cells);
        }
    }

    private void AddMalformed(CsvMalformedRecord record)
    {
        if (record.Reason == CsvMalformedReason.TextAfterClosingQuote)
            _errors.Add(SpotOf(record.ByteOffset), "there is text after a closing quotation mark; write a quotation mark inside a cell twice (\"\")", null, "the end of the cell");
        else if (record.Reason == CsvMalformedReason.UnterminatedQuote)
            _errors.Add(SpotOf(record.ByteOffset), "a quotation mark opens a cell and is never closed", null, "a closing quotation mark");
    }

    /// <summary>The place of a byte. They are mostly asked for in ascending order, so the characters are counted on from the last.</summary>
    private Spot SpotOf(long byteOffset)
    {
        var bytes = (int)Math.Clamp(byteOffset, 0, _bytes.Length);
        if (bytes < _seenBytes)
            (_seenBytes, _seenCharacters) = (0, 0);
        _seenCharacters += Encoding.UTF8.GetCharCount(_bytes, _seenBytes, bytes - _seenBytes);
        _seenBytes = bytes;
        return _lines.SpotOf(_seenCharacters);
    }
}
