using CsvHelper;

namespace Loadmark.Reference.Figures;

/// <summary>The tables of published figures that lie in Data/; Data/SOURCE.md says where each was read.</summary>
public static class ReferenceTable
{
    /// <summary>Reads a table.</summary>
    /// <param name="name">The file's name in Data/, without <c>.csv</c>.</param>
    /// <returns>Its rows in the order of the file; at least one.</returns>
    /// <exception cref="InvalidDataException">The table has no rows.</exception>
    public static IReadOnlyList<ReferenceRow> Read(string name)
    {
        using var csv = CsvReader.FromFile(Path.Combine(AppContext.BaseDirectory, "Data", $"{name}.csv"), new CsvReaderOptions());
        var rows = new List<ReferenceRow>();
        while (csv.Read())
        {
            var cells = new Dictionary<string, string>();
            for (var column = 0; column < csv.Headers.Count; column++)
                cells.Add(csv.Headers[column], csv.GetString(column));
            rows.Add(new ReferenceRow(cells));
        }

        // A table that lost its rows would make every theory over it pass by not running.
        return rows.Count > 0 ? rows : throw new InvalidDataException($"{name}.csv has no rows.");
    }

    /// <summary>The row whose cell in a column is the given text.</summary>
    /// <exception cref="InvalidOperationException">There is none, or more than one.</exception>
    public static ReferenceRow Row(string name, string column, string cell) =>
        Read(name).Single(row => row[column] == cell);
}
