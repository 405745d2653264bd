using System.Globalization;
using Loadmark.Storage.Faults;
using Loadmark.Storage.History;
using Loadmark.Storage.Seals;
using Loadmark.Storage.Sqlite;
using Microsoft.Data.Sqlite;

namespace Loadmark.Storage.Copies;

/// <summary>Whether a database is ours and whole.</summary>
internal static class CopyCheck
{
    /// <summary>Checks that SQLite finds no fault.</summary>
    /// <exception cref="InvalidDataException">It is damaged.</exception>
    public static void CheckPages(SqliteConnection connection)
    {
        var said = connection.Column("PRAGMA integrity_check(10)");
        if (said is not ["ok"])
            throw new InvalidDataException(string.Join('\n', said));
    }

    /// <summary>Checks that every row is as it was saved, and there.</summary>
    /// <exception cref="DamageException">One is not.</exception>
    public static void CheckSeals(SqliteConnection connection)
    {
        // Rows and totals of one moment, while others write on.
        using var transaction = connection.BeginTransaction(deferred: true);
        if (DatabaseSeals.Broken(connection) is { Count: > 0 } broken)
            throw DamageException.At(broken);
    }

    /// <summary>Counts what is in it. A database of before there was a library has no gear.</summary>
    public static CopyContents Count(SqliteConnection connection) => new(
        CountWhere(connection, "Rigs", "Removed IS NULL"),
        connection.Column("SELECT name FROM sqlite_master WHERE type = 'table' AND name = 'Gear'").Count == 0
            ? 0
            : CountWhere(connection, "Gear", "IsRemoved = 0"),
        CountUnreadable(connection));

    /// <summary>
    /// How many rigs have a text that does not unpack. SQLite keeps no checksums, so its own check does not see such damage; it is no
    /// reason to leave all others without a backup.
    /// </summary>
    private static int CountUnreadable(SqliteConnection connection)
    {
        var count = 0;
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT Text FROM Rigs";
        using var reader = command.ExecuteReader();
        while (reader.Read())
            count += Unpacks(reader.GetValue(0)) ? 0 : 1;
        return count;
    }

    private static int CountWhere(SqliteConnection connection, string table, string kept) =>
        int.Parse(connection.Column($"SELECT CAST(COUNT(*) AS TEXT) FROM {table} WHERE {kept}").Single(), CultureInfo.InvariantCulture);

    private static bool Unpacks(object packed)
    {
        try
        {
            if (packed is not byte[] bytes)
                return false;
            TextPacking.Unpack(bytes);
            return true;
        }
        catch (InvalidDataException)
        {
            return false;
        }
    }
}
