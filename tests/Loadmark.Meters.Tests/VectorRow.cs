using System.Globalization;
using CsvHelper;

namespace Loadmark.Meters.Tests;

/// <summary>Rows of the vectors in Data/; see SOURCE.md there.</summary>
internal static class VectorRow
{
    /// <summary>Reads a table: its cells by row; at least one.</summary>
    public static IReadOnlyList<string[]> Read(string name)
    {
        using var csv = CsvReader.FromFile(Path.Combine(AppContext.BaseDirectory, "Data", $"{name}.csv"), new CsvReaderOptions());
        var rows = new List<string[]>();
        while (csv.Read())
            rows.Add([.. Enumerable.Range(0, csv.Headers.Count).Select(csv.GetString)]);
        return rows.Count > 0 ? rows : throw new InvalidDataException($"{name}.csv has no rows.");
    }

    /// <summary>A cell as a number.</summary>
    public static int Number(string cell) => int.Parse(cell, CultureInfo.InvariantCulture);
}
