using Microsoft.Data.Sqlite;

namespace Loadmark.Storage.Sqlite;

/// <summary>Statements that a plain connection runs. None of them holds anything from outside.</summary>
internal static class Statements
{
    public static void Run(this SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // Fixed text and the text of migrations.
        command.CommandText = sql;
#pragma warning restore CA2100
        command.ExecuteNonQuery();
    }

    /// <summary>The first column of every row.</summary>
    public static List<string> Column(this SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // As above.
        command.CommandText = sql;
#pragma warning restore CA2100
        using var reader = command.ExecuteReader();
        var rows = new List<string>();
        while (reader.Read())
            rows.Add(reader.GetString(0));
        return rows;
    }
}
