using System.Text;
using CsvHelper;
using Loadmark.Files.Errors;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Tables;

/// <summary>Takes a text apart into rows of cells, each with its place. Rows without any text are left out.</summary>
internal sealed class CsvTable
{
    private readonly byte[] _bytes;
    private readonly LineTable _lines;
    private readonly ErrorList _errors;
    private readonly bool _isExact;
    private string? _problem;
    private int _seenBytes;
    private int _seenCharacters;

    private CsvTable(string text, ErrorList errors, bool isExact)
    {
        _bytes = Encoding.UTF8.GetBytes(text);
        _lines = new LineTable(text);
        _errors = errors;
        _isExact = isExact;
        Separator = SeparatorOf(text);
    }

    /// <summary>What parts the cells: a comma, a semicolon or a tab.</summary>
    public char Separator { get; }

    /// <summary>The rows with any text in them, the header first.</summary>
    public List<ScalarNode[]> Rows { get; } = [];

    /// <summary>What is wrong with the quotes of a row, by its index among <see cref="Rows"/>.</summary>
    public Dictionary<int, string> Problems { get; } = [];

    /// <summary>Reads a text. Quotes that are not closed or have text behind them are errors.</summary>
    /// <param name="text">The text, without a byte order mark.</param>
    /// <param name="errors">Where faults go.</param>
    /// <param name="isExact">Whether spaces at the ends of a cell in quotes belong to it.</param>
    public static CsvTable Read(string text, ErrorList errors, bool isExact = false)
    {
        var table = new CsvTable(text, errors, isExact);
        table.ReadRows();
        return table;
    }

    /// <summary>
    /// A tab where the first line with text has one outside quotes; else a semicolon where it has as many as commas, which may
    /// be decimal ones; else a comma.
    /// </summary>
    private static char SeparatorOf(string text)
    {
        var (semicolons, commas, isQuoted) = (0, 0, false);
        foreach (var character in text.AsSpan().TrimStart("\r\n "))
        {
            switch (character)
            {
                case '"':
                    isQuoted = !isQuoted;
                    break;
                case '\t' when !isQuoted:
                    return '\t';
                case ';' when !isQuoted:
                    semicolons++;
                    break;
                case ',' when !isQuoted:
                    commas++;
                    break;
                case '\r' or '\n' when !isQuoted:
                    return semicolons > 0 && semicolons >= commas ? ';' : ',';
            }
        }

        return semicolons > 0 && semicolons >= commas ? ';' : ',';
    }

    private void ReadRows()
    {
        var options = new CsvReaderOptions
        {
            HasHeader = false,
            Separator = Separator,
            DetectSeparatorHint = false,
            TrimWhitespace = _isExact ? true : null,
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
                cells[index] = new ScalarNode(SpotOf(start), _isExact ? csv.GetString(index) : csv.GetString(index).Trim(), isPlain: false);
            }

            if (_problem is not null)
                Problems.Add(Rows.Count, _problem);
            if (_problem is not null || Array.Exists(cells, static cell => cell.Value.Length > 0))
                Rows.Add(cells);
            _problem = null;
        }
    }

    private void AddMalformed(CsvMalformedRecord record)
    {
        if (record.Reason == CsvMalformedReason.TextAfterClosingQuote)
            AddProblem(
                record,
                "there is text after a closing quotation mark; write a quotation mark inside a cell twice (\"\")",
                "the end of the cell");
        else if (record.Reason == CsvMalformedReason.UnterminatedQuote)
            AddProblem(record, "a quotation mark opens a cell and is never closed", "a closing quotation mark");
    }

    private void AddProblem(CsvMalformedRecord record, string problem, string expected)
    {
        _problem ??= problem;
        _errors.Add(SpotOf(record.ByteOffset), problem, null, expected);
    }

    /// <summary>
    /// The place of a byte. They are mostly asked for in ascending order, so the characters are counted on from the last.
    /// </summary>
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
