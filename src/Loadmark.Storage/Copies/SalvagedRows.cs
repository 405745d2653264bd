using Loadmark.Storage.Entities;
using Loadmark.Storage.Seals;
using Loadmark.Storage.Sqlite;
using Microsoft.Data.Sqlite;

namespace Loadmark.Storage.Copies;

/// <summary>Rows that are taken one by one from a damaged database into a new one, over a connection to the new one.</summary>
internal sealed class SalvagedRows(SqliteConnection connection)
{
    /// <summary>What is found again from the rest, or counted anew.</summary>
    private static readonly string[] Derived = ["GearUses", "Totals", "Counts"];

    /// <summary>
    /// Each rig's edits, and the pieces of gear's changes, hang on it; what came from the damaged file stays with what came from there.
    /// </summary>
    private static readonly (string Table, string Name, string[] Below, string Key)[] Owners =
        [("Rigs", "Name", ["Edits", "Acceptances"], "RigId"), ("Gear", "Tag", ["GearChanges"], "GearId")];

    private readonly List<string> _lost = [];
    private readonly List<string> _filled = [];

    /// <summary>What could not be read, or is not as it was saved.</summary>
    public IReadOnlyList<string> Lost => _lost;

    /// <summary>What a backup had instead.</summary>
    public IReadOnlyList<string> Filled => _filled;

    /// <summary>Takes what can be read and is as it was saved.</summary>
    /// <param name="path">A copy of the damaged database.</param>
    /// <returns>Whether any row could be read at all, or there are none.</returns>
    public bool TakeFrom(string path)
    {
        using var damaged = Open(path);
        if (damaged is null)
            return false;
        _lost.Clear();
        var (tables, found) = (TablesIn(damaged), 0);
        var totals = TotalsIn(damaged, tables);
        foreach (var table in tables.Where(static table => !Derived.Contains(table.Name)))
        {
            var (rows, isWhole) = SalvagedTable.Read(table);
            found += rows.Count(static row => row.IsWhole);
            foreach (var row in rows)
            {
                if (!row.IsWhole || !Insert(damaged, table, row.Row))
                    _lost.Add(table.PlaceOf(row.Row));
            }

            // Where a page of another table stands in the place of this one's, nothing fails and nothing is there.
            if (!totals.TryGetValue(table.Name, out var total) || !isWhole)
                _lost.Add($"rows of the table {table.Name} that cannot be read");
            else if (total > rows.Count)
                _lost.Add($"rows of the table {table.Name}: {total - rows.Count} of {total}");
        }

        return found > 0 || (tables.Count > 0 && _lost.Count == 0);
    }

    /// <summary>Has a whole database at hand; to be called before the transaction.</summary>
    /// <param name="path">The whole database.</param>
    public void Attach(string path)
    {
        using var attach = connection.CreateCommand();
        attach.CommandText = "ATTACH DATABASE $path AS backup";
        attach.Parameters.AddWithValue("$path", path);
        attach.ExecuteNonQuery();
    }

    /// <summary>Takes rigs and gear that are not there at all from the whole database.</summary>
    /// <param name="when">The time of which it is, in words.</param>
    public void FillFromAttached(string when)
    {
        foreach (var (table, name, below, key) in Owners)
        {
            foreach (var found in connection.Column($"SELECT {name} FROM backup.{table} WHERE Id NOT IN (SELECT Id FROM main.{table})"))
                _filled.Add($"{RowPlace.Of(table, _ => found)} of {when}");
            connection.Run($"CREATE TEMP TABLE Missing AS SELECT Id FROM backup.{table} WHERE Id NOT IN (SELECT Id FROM main.{table});");
            foreach (var one in below)
            {
                var parts = ColumnsOf(one);
                connection.Run($"""
                    DELETE FROM main.{one} WHERE {key} IN (SELECT Id FROM Missing);
                    INSERT INTO main.{one} ({parts}) SELECT {parts} FROM backup.{one} WHERE {key} IN (SELECT Id FROM Missing);
                    """);
            }

            var columns = ColumnsOf(table);
            connection.Run($"""
                INSERT INTO main.{table} ({columns}) SELECT {columns} FROM backup.{table} WHERE Id IN (SELECT Id FROM Missing);
                DROP TABLE Missing;
                """);
        }
    }

    private string ColumnsOf(string table) =>
        string.Join(", ", connection.Column($"SELECT '\"' || name || '\"' FROM pragma_table_info('{table}')"));

    /// <summary>
    /// Lets go of what hangs on nothing any more, of edits that can no longer be reached one by one from the present text, and seals all.
    /// Revisions and counts go past any that a page may have seen.
    /// </summary>
    public void MakeConsistent()
    {
        _lost.AddRange(connection.Column("""
            SELECT DISTINCT 'all but its edits of the rig ' || NameAfter FROM Edits WHERE RigId NOT IN (SELECT Id FROM Rigs)
            UNION ALL SELECT 'what was measured on a rig that is lost itself, version ' || Version FROM Acceptances
                WHERE RigId NOT IN (SELECT Id FROM Rigs)
            """));
        connection.Run("""
            DELETE FROM Edits WHERE RigId NOT IN (SELECT Id FROM Rigs);
            CREATE TEMP TABLE Beyond AS SELECT Edits.rowid AS Edit, Name FROM Edits JOIN Rigs ON RigId = Id WHERE
                CASE WHEN Number <= Present
                    THEN (SELECT COUNT(*) FROM Edits AS other WHERE other.RigId = Id AND other.Number BETWEEN Edits.Number AND Present)
                        < Present - Number + 1
                    ELSE (SELECT COUNT(*) FROM Edits AS other WHERE other.RigId = Id AND other.Number BETWEEN Present + 1 AND Edits.Number)
                        < Number - Present END;
            """);
        _lost.AddRange(connection.Column("""
            SELECT 'edits of the rig ' || Name || ' that lie beyond a lost one: ' || COUNT(*) FROM Beyond GROUP BY Name
            """));
        connection.Run($"""
            DELETE FROM Edits WHERE rowid IN (SELECT Edit FROM Beyond);
            DROP TABLE Beyond;
            DELETE FROM Acceptances WHERE RigId NOT IN (SELECT Id FROM Rigs);
            DELETE FROM GearChanges WHERE GearId NOT IN (SELECT Id FROM Gear);
            DELETE FROM GearReadings WHERE GearId NOT IN (SELECT Id FROM Gear);
            DELETE FROM GearDecisions WHERE GearId NOT IN (SELECT Id FROM Gear) OR RigId NOT IN (SELECT Id FROM Rigs);
            UPDATE Rigs SET UsesRevision = 0;
            DELETE FROM Counts;
            INSERT INTO Counts (Name, Value, Seal)
                SELECT name, (SELECT COALESCE(MAX(Stamp), 0) + 1 FROM Gear), 0
                FROM (SELECT '{CountRow.Gear}' AS name UNION ALL SELECT '{CountRow.Restored}');
            """);
        DatabaseSeals.SealAll(connection);
    }

    /// <summary>How many rows each table had, where that is as it was saved.</summary>
    private static Dictionary<string, long> TotalsIn(SqliteConnection damaged, List<SealedTable> tables)
    {
        var totals = new Dictionary<string, long>(StringComparer.Ordinal);
        if (tables.Find(static table => table.Name == "Totals") is not { } table)
            return totals;
        foreach (var row in SalvagedTable.Read(table).Rows.Where(static row => row.IsWhole))
        {
            using var command = damaged.CreateCommand();
            command.CommandText = "SELECT \"Table\", Rows FROM Totals WHERE rowid = $row";
            command.Parameters.AddWithValue("$row", row.Row);
            using var values = command.ExecuteReader();
            if (values.Read())
                totals[values.GetString(0)] = values.GetInt64(1);
        }

        return totals;
    }

    private static List<SealedTable> TablesIn(SqliteConnection damaged)
    {
        try
        {
            return SealedTable.In(damaged);
        }
        catch (SqliteException)
        {
            return [];
        }
    }

    /// <summary>Over a connection that only reads; null where SQLite does not know the file for a database.</summary>
    private static SqliteConnection? Open(string path)
    {
        var damaged = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Pooling = false }.ToString());
        try
        {
            damaged.Open();
            damaged.KeepsLog(true);
            damaged.Look("SELECT name FROM sqlite_master");
            return damaged;
        }
        catch (Exception fault) when (MediumFaults.KindOf(fault) is not null)
        {
            damaged.Dispose();
            return null;
        }
    }

    private bool Insert(SqliteConnection damaged, SealedTable table, long row)
    {
        using var read = damaged.CreateCommand();
#pragma warning disable CA2100 // Names of tables and columns, quoted.
        read.CommandText = $"SELECT * FROM {table.QuotedName} WHERE rowid = $row";
        read.Parameters.AddWithValue("$row", row);
        try
        {
            using var values = read.ExecuteReader();
            if (!values.Read())
                return false;
            using var insert = connection.CreateCommand();
            var names = Enumerable.Range(0, values.FieldCount).Select(values.GetName).ToList();
            insert.CommandText =
                $"INSERT INTO {table.QuotedName} ({string.Join(", ", names.Select(static name => $"\"{name}\""))}) "
                + $"VALUES ({string.Join(", ", names.Select(static (_, at) => $"${at}"))})";
#pragma warning restore CA2100
            for (var at = 0; at < names.Count; at++)
                insert.Parameters.AddWithValue($"${at}", values.GetValue(at));
            insert.ExecuteNonQuery();
            return true;
        }
        catch (SqliteException)
        {
            return false;
        }
    }
}
