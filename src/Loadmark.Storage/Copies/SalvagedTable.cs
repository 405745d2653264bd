using Loadmark.Storage.Seals;
using Microsoft.Data.Sqlite;

namespace Loadmark.Storage.Copies;

/// <summary>Reads past what is broken in a table.</summary>
internal static class SalvagedTable
{
    /// <summary>So many rows are tried one after the other behind a place that cannot be read, then each step is twice the last.</summary>
    private const int OneByOne = 500;

    private const int MostSteps = OneByOne + 40;

    /// <summary>Every row that can be read, by its number within the table.</summary>
    /// <returns>The rows, and whether the table could be read from its beginning to its end.</returns>
    public static (List<RowSeal> Rows, bool IsWhole) Read(SealedTable table)
    {
        var rows = new List<RowSeal>();
        var (after, isWhole, step) = (0L, true, 1L);
        for (var tried = 0; tried < MostSteps; tried++)
        {
            try
            {
                if (TakeInOrder(table, rows, ref after, ref tried))
                    return (rows, isWhole);
            }
            catch (SqliteException)
            {
                // Behind what was read last.
            }

            isWhole = false;
            step = tried < OneByOne ? 1 : step * 2;
            after += step;
        }

        return (rows, isWhole);
    }

    /// <summary>Takes rows as long as their numbers go up. Pages that lead in a circle would be read without end.</summary>
    private static bool TakeInOrder(SealedTable table, List<RowSeal> rows, ref long after, ref int tried)
    {
        foreach (var row in table.Rows(after))
        {
            if (row.Row <= after)
                return false;
            rows.Add(row);
            (after, tried) = (row.Row, 0);
        }

        return true;
    }
}
