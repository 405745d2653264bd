using System.Globalization;
using Loadmark.Storage.Entities;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Seals;
using Loadmark.Storage.Sqlite;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace Loadmark.Storage.Copies;

/// <summary>Puts a backup in the place of what is kept, while others may be using it: they see all of it or nothing.</summary>
internal sealed class Restoring(DatabaseFile file, TimeProvider clock)
{
    /// <summary>What stands beside the rows: what the program knows its schema by stays, and SQLite keeps its own.</summary>
    private const string TablesOfRows = """
        SELECT name FROM main.sqlite_master
        WHERE type = 'table' AND name NOT LIKE 'sqlite\_%' ESCAPE '\' AND name NOT LIKE '\_\_EF%' ESCAPE '\'
        ORDER BY name
        """;

    /// <summary>
    /// What refers to a revision that is in force goes along with it. Whoever has the library at hand is told by its count that all of it
    /// is to be read anew.
    /// </summary>
    private const string Counted = $"""
        UPDATE main.GearDecisions SET Revision = $next
            WHERE Revision = (SELECT Revision FROM main.Gear WHERE Gear.Id = GearDecisions.GearId);
        UPDATE main.Gear SET Revision = $next, Stamp = $next;
        UPDATE main.Rigs SET UsesRevision = CASE WHEN UsesRevision = Revision THEN $next ELSE 0 END, Revision = $next;
        INSERT OR REPLACE INTO main.Counts (Name, Value) VALUES ('{CountRow.Gear}', $next), ('{CountRow.Restored}', $next);
        PRAGMA main.user_version = $next;
        """;

    /// <summary>Puts a backup in the place of the store.</summary>
    /// <param name="path">The backup's full path.</param>
    /// <param name="named">What the user calls it; null for the path.</param>
    /// <exception cref="StorageException">Nothing was restored; what was kept is there still.</exception>
    public RestoreReport Run(string path, string? named = null)
    {
        named ??= path;
        using var staged = StagedBackup.Of(path, file, clock, named);
        try
        {
            var (opening, aside) = Open();
            using var connection = file.NewPlainConnection();
            connection.KeepsLog(false);
            Attach(connection, staged.Path);

            // From here nobody else writes, so that the copy of what was kept is the last state of it.
            using var transaction = connection.BeginTransaction(deferred: false);
            var previous = opening.WasCreated ? null : new KeptCopies(file, clock).Write(CopyReason.BeforeRestore);
            ReplaceRows(connection, named);
            if (connection.Column("SELECT 'stray' FROM pragma_foreign_key_check").Count > 0)
                throw CopyFaults.OfBackup(StoreFault.Damaged, named, cause: null);
            var report = new RestoreReport(named, CopyCheck.Count(connection), previous ?? aside, staged.WasOlder, aside is not null);
            transaction.Commit();
            return report;
        }
        catch (SqliteException fault) when (fault.SqliteErrorCode is raw.SQLITE_CONSTRAINT or raw.SQLITE_MISMATCH)
        {
            // Rows that our tables would not have taken.
            throw CopyFaults.OfBackup(StoreFault.NotADatabase, named, fault);
        }
        catch (Exception fault) when (MediumFaults.KindOf(fault) is { } kind)
        {
            throw CopyFaults.WhileRestoring(kind, file.Path, fault);
        }
    }

    /// <summary>A database that is damaged, or none of ours, is set aside: to be replaced is what was asked for.</summary>
    private (StoreOpening Opening, string? Aside) Open()
    {
        try
        {
            try
            {
                return (new Opening(file, clock).Run(), null);
            }
            catch (StorageException fault) when (fault.Fault is StoreFault.Damaged or StoreFault.NotADatabase)
            {
                file.Close();
                var aside = SetAside.Run(file, clock.GetUtcNow());
                return (new Opening(file, clock).Run(), aside);
            }
        }
        catch (StorageException fault)
        {
            throw new StorageException(fault.Fault, $"Nothing was restored. {fault.Message}", fault);
        }
    }

    private static void Attach(SqliteConnection connection, string path)
    {
        using var attach = connection.CreateCommand();
        attach.CommandText = "ATTACH DATABASE $path AS staged";
        attach.Parameters.AddWithValue("$path", path);
        attach.ExecuteNonQuery();
    }

    /// <summary>Rows alone come over, into our own tables: whatever else a file may hold, such as triggers, stays out.</summary>
    private static void ReplaceRows(SqliteConnection connection, string named)
    {
        var tables = connection.Column(TablesOfRows)
            .Select(
                table => (
                    Name: Quoted(table),
                    Columns: Columns(connection, "main", table),
                    Staged: Columns(connection, "staged", table))).ToList();
        if (tables.Any(static table => !table.Columns.ToHashSet(StringComparer.Ordinal).SetEquals(table.Staged)))
            throw CopyFaults.OfBackup(StoreFault.NotADatabase, named, cause: null);
        var revision = NextRevision(connection, named);
        foreach (var (name, columns, _) in tables)
        {
            var list = string.Join(", ", columns.Select(Quoted));
            connection.Run($"DELETE FROM main.{name}");
            connection.Run($"INSERT INTO main.{name} ({list}) SELECT {list} FROM staged.{name}");
        }

        connection.Run(Counted.Replace("$next", revision.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal));
        DatabaseSeals.SealAll(connection);
    }

    /// <summary>
    /// A revision that nothing had before, here or in the backup. An open page knows its rig by id and revision: were a restored one to
    /// have a revision that the page has seen with another text, the page's next edit would go over it unseen. So with gear, and with the
    /// library's count of changes. The number is kept in the database's header too, because a restored state may hold nothing.
    /// </summary>
    private static long NextRevision(SqliteConnection connection, string named)
    {
        var greatest = ((string[])["main", "staged"]).SelectMany(schema => (string[])
        [
            .. ((string[])["Rigs.Revision", "Gear.Revision", "Gear.Stamp", "Counts.Value"]).Select(static count => count.Split('.'))
                .Select(count => connection.Column($"SELECT COALESCE(MAX({count[1]}), 0) FROM {schema}.{count[0]}").Single()),
            connection.Column($"PRAGMA {schema}.user_version").Single(),
        ]);
        return 1 + greatest.Max(number => long.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var revision)
            && revision < int.MaxValue
            ? revision
            : throw CopyFaults.OfBackup(StoreFault.NotADatabase, named, cause: null)); // two thousand million changes of one rig: nobody's
    }

    private static List<string> Columns(SqliteConnection connection, string schema, string table) =>
        connection.Column($"SELECT name FROM pragma_table_info('{table.Replace("'", "''", StringComparison.Ordinal)}', '{schema}')");

    private static string Quoted(string name) => $"\"{name.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
