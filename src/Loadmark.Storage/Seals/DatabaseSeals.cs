using Loadmark.Storage.Entities;
using Microsoft.Data.Sqlite;

namespace Loadmark.Storage.Seals;

/// <summary>The seals of all rows of a database at once: looked at when it is opened, set when rows were changed by statements.</summary>
internal static class DatabaseSeals
{
    private const string TotalsTable = "Totals";

    /// <summary>What is not as it was saved, in words; empty when all is, and for a database of before there were seals.</summary>
    /// <param name="connection">Within a transaction, so that rows and totals are of one moment.</param>
    public static List<string> Broken(SqliteConnection connection)
    {
        var broken = new List<string>();
        var sums = new Dictionary<string, (long Rows, long Sum)>(StringComparer.Ordinal);
        foreach (var table in SealedTable.In(connection))
        {
            var (rows, sum) = (0L, 0L);
            foreach (var seal in table.Rows())
            {
                if (!seal.IsWhole)
                    broken.Add(table.PlaceOf(seal.Row));
                rows++;
                sum = unchecked(sum + seal.Kept);
            }

            sums[table.Name] = (rows, sum);
        }

        // One row that is damaged spoils no total: what counts there is the seal that it has.
        if (sums.Remove(TotalsTable))
            AddMissing(broken, sums, Totals(connection));
        return broken;
    }

    /// <summary>Seals every row as it stands, and the totals.</summary>
    /// <param name="connection">Within the transaction that changed the rows.</param>
    public static void SealAll(SqliteConnection connection)
    {
        var tables = SealedTable.In(connection);
        if (tables.Count == 0)
            return;
        Run(connection, $"DELETE FROM {TotalsTable}");
        using var add = connection.CreateCommand();
        add.CommandText = $"INSERT INTO {TotalsTable} (\"Table\", Rows, Sum, Seal) VALUES ($table, $rows, $sum, 0)";
        var (name, count, total) = (
            add.Parameters.Add("$table", SqliteType.Text),
            add.Parameters.Add("$rows", SqliteType.Integer),
            add.Parameters.Add("$sum", SqliteType.Integer));
        foreach (var table in tables.Where(static table => table.Name != TotalsTable))
        {
            (name.Value, count.Value, total.Value) = (table.Name, 0L, 0L);
            foreach (var right in SealTable(connection, table))
                (count.Value, total.Value) = ((long)count.Value + 1, unchecked((long)total.Value + right));
            add.ExecuteNonQuery();
        }

        SealTable(connection, tables.Find(static table => table.Name == TotalsTable)!);
    }

    private static List<long> SealTable(SqliteConnection connection, SealedTable table)
    {
        var rows = table.Rows().ToList();
        using var update = connection.CreateCommand();
#pragma warning disable CA2100 // The name of a table, quoted.
        update.CommandText = $"UPDATE {table.QuotedName} SET {nameof(SealedRow.Seal)} = $seal WHERE rowid = $row";
#pragma warning restore CA2100
        var (seal, number) = (update.Parameters.Add("$seal", SqliteType.Integer), update.Parameters.Add("$row", SqliteType.Integer));
        foreach (var row in rows.Where(static row => !row.IsWhole))
        {
            (seal.Value, number.Value) = (row.Right, row.Row);
            update.ExecuteNonQuery();
        }

        return rows.ConvertAll(static row => row.Right);
    }

    private static Dictionary<string, (long Rows, long Sum)> Totals(SqliteConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = $"SELECT CAST(\"Table\" AS TEXT), CAST(Rows AS INTEGER), CAST(Sum AS INTEGER) FROM {TotalsTable}";
        using var reader = command.ExecuteReader();
        var totals = new Dictionary<string, (long Rows, long Sum)>(StringComparer.Ordinal);
        while (reader.Read())
            totals[reader.GetString(0)] = (reader.GetInt64(1), reader.GetInt64(2));
        return totals;
    }

    private static void AddMissing(
        List<string> broken, Dictionary<string, (long Rows, long Sum)> sums, Dictionary<string, (long Rows, long Sum)> totals)
    {
        foreach (var (table, (rows, sum)) in sums)
        {
            if (!totals.TryGetValue(table, out var total))
                broken.Add($"the total of the table {table}");
            else if (total.Rows > rows)
                broken.Add($"the table {table}, where {total.Rows - rows} of {total.Rows} rows are missing");
            else if (total != (rows, sum))
                broken.Add($"the table {table}, where there are rows of another time");
        }
    }

    private static void Run(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // Fixed text.
        command.CommandText = sql;
#pragma warning restore CA2100
        command.ExecuteNonQuery();
    }
}
