using Loadmark.Storage.Seals;
using Microsoft.Data.Sqlite;

namespace Loadmark.Storage.Tests;

/// <summary>The database seen by SQLite alone, over a plain connection: none of the store's own code says what is in it.</summary>
internal static class Outside
{
    public static string? Ask(string path, string sql)
    {
        using var connection = Open(path);
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return Convert.ToString(command.ExecuteScalar(), System.Globalization.CultureInfo.InvariantCulture);
    }

    /// <summary>A change with its seals, as a program makes it: what is not damage.</summary>
    public static void Change(string path, string sql)
    {
        using var connection = Open(path);
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
        DatabaseSeals.SealAll(connection);
    }

    public static SqliteConnection Open(string path)
    {
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Pooling = false }.ToString());
        connection.Open();
        return connection;
    }
}
