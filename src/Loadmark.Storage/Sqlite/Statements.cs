using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace Loadmark.Storage.Sqlite;

/// <summary>Statements that a plain connection runs. None of them holds anything from outside.</summary>
internal static class Statements
{
    /// <summary>SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE (sqlite.org, Database Connection Configuration Options).</summary>
    private const int NoCheckpointOnClose = 1006;

    public static void Run(this SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // Fixed text and the text of migrations.
        command.CommandText = sql;
#pragma warning restore CA2100
        command.ExecuteNonQuery();
    }

    /// <summary>Whether the log stays as it is when the last connection is closed; else it is then written into the database.</summary>
    public static void KeepsLog(this SqliteConnection connection, bool keeps) =>
        raw.sqlite3_db_config(connection.Handle, NoCheckpointOnClose, keeps ? 1 : 0, out _);

    /// <summary>The first column of every row.</summary>
    /// <exception cref="InvalidDataException">A row has no value there.</exception>
    public static List<string> Column(this SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // As above.
        command.CommandText = sql;
#pragma warning restore CA2100
        using var reader = command.ExecuteReader();
        var rows = new List<string>();
        while (reader.Read())
        {
            // What a table says that it never lacks can be missing in a damaged file.
            rows.Add(reader.IsDBNull(0)
                ? throw new InvalidDataException($"{connection.DataSource} has a row without what every row has.")
                : reader.GetString(0));
        }

        return rows;
    }

    /// <summary>
    /// The same of a file that may be damaged in what it says of itself. Of that SQLite may say no more than that there was an error in a
    /// statement, and the statement is right.
    /// </summary>
    /// <exception cref="InvalidDataException">The file is not what the statement takes it for.</exception>
    public static List<string> Look(this SqliteConnection connection, string sql)
    {
        try
        {
            return connection.Column(sql);
        }
        catch (SqliteException fault) when (fault.SqliteErrorCode == raw.SQLITE_ERROR)
        {
            throw new InvalidDataException($"{connection.DataSource} is not described as this program made it: {fault.Message}", fault);
        }
    }
}
