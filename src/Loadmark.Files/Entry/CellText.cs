using System.Globalization;
using CsvHelper;
using Loadmark.Files.Tables;

namespace Loadmark.Files.Entry;

/// <summary>Writes rows of texts as separated text (RFC 4180, with line feeds).</summary>
internal static class CellText
{
    /// <summary>Writes rows of cells as one text.</summary>
    /// <param name="rows">The rows; null is an empty cell, which differs from an empty text.</param>
    /// <param name="separator">A comma, a semicolon or a tab.</param>
    public static string Write(IEnumerable<IEnumerable<string?>> rows, char separator)
    {
        if (separator is not (',' or ';' or '\t'))
            throw new ArgumentException("Cells are separated by a comma, a semicolon or a tab.", nameof(separator));
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        var options = new CsvWriterOptions { NewLine = "\n", Separator = separator };
        using var csv = CsvWriter.Create(text, options, leaveOpen: true);
        foreach (var row in rows)
        {
            foreach (var cell in row)
                WriteCell(csv, CellGuard.GuardOrEmpty(cell));
            csv.EndRecord();
        }

        csv.Flush();
        return text.ToString();
    }

    /// <summary>Spaces at the ends count where they are in quotes; without, they are what people put in between.</summary>
    private static void WriteCell(CsvWriter csv, string cell) =>
        csv.WriteField(cell, cell.AsSpan().Trim(" \t").Length < cell.Length ? CsvQuoting.Always : CsvQuoting.WhenNeeded);
}
