using System.Globalization;
using CsvHelper;

namespace Loadmark.Files.Tables;

/// <summary>A table of numbers as comma-separated text (RFC 4180, with line feeds) that spreadsheets read as numbers.</summary>
public static class NumberTable
{
    /// <summary>Writes a table.</summary>
    /// <param name="head">The names of the columns; one that would be taken for a formula gets an apostrophe before it.</param>
    /// <param name="rows">The rows, each with a number for each column; what is not a number is left empty.</param>
    public static string Write(IReadOnlyList<string> head, IEnumerable<IReadOnlyList<double>> rows)
    {
        ArgumentNullException.ThrowIfNull(head);
        ArgumentNullException.ThrowIfNull(rows);
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using var csv = CsvWriter.Create(text, new CsvWriterOptions { NewLine = "\n" }, leaveOpen: true);
        foreach (var name in head)
            csv.WriteField(CellGuard.Guard(name));
        csv.EndRecord();
        foreach (var row in rows)
        {
            foreach (var figure in row)
                csv.WriteField(Text(figure));
            csv.EndRecord();
        }

        csv.Flush();
        return text.ToString();
    }

    /// <summary>Nine digits; a zero below zero is a zero.</summary>
    private static string Text(double figure) => double.IsFinite(figure) ? (figure + 0.0).ToString("G9", CultureInfo.InvariantCulture) : "";
}
