using Loadmark.Storage.Entities;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace Loadmark.Storage.Sqlite;

/// <summary>
/// Brings the schema forward in one transaction, so that a failure in the middle leaves the database as it was. EF's own way commits
/// each migration alone and marks its turn with a row, which stays behind when the program is killed and then blocks every later start.
/// </summary>
internal sealed class Schema(StorageContext context)
{
    private readonly string[] _known = [.. context.Database.GetMigrations()];

    /// <summary>The migrations that a database has been through, oldest first; null when its tables are not this program's.</summary>
    /// <exception cref="InvalidDataException">Its tables have the names of this program's and are described as others.</exception>
    public static List<string>? AppliedTo(SqliteConnection connection)
    {
        var tables = connection.Look("SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'");
        if (tables.Count == 0)
            return [];

        return tables.Contains(HistoryRepository.DefaultTableName) && tables.Contains("Rigs")
            ? connection.Look($"SELECT one.MigrationId FROM \"{HistoryRepository.DefaultTableName}\" AS one ORDER BY one.MigrationId")
            : null;
    }

    public bool IsNewest(List<string> applied) => applied.SequenceEqual(_known);

    public bool IsNewerThanProgram(List<string> applied) => applied.Except(_known).Any();

    /// <summary>
    /// Checks that every column is there that the program reads. A name in the description of a table can be damaged: SQLite's own check
    /// finds no fault in that.
    /// </summary>
    /// <exception cref="InvalidDataException">One is missing.</exception>
    public void CheckColumns(SqliteConnection connection)
    {
        foreach (var type in context.Model.GetEntityTypes())
        {
            // With the table before each name: a name alone that is not there would be taken for a text.
            var columns = string.Join(", ", type.GetProperties().Select(static property => $"one.\"{property.GetColumnName()}\""));
            connection.Look($"SELECT {columns} FROM \"{type.GetTableName()}\" AS one LIMIT 0");
        }
    }

    /// <summary>Runs what is missing. To be called within a transaction, with foreign keys off.</summary>
    /// <exception cref="InvalidDataException">A row afterwards refers to one that is not there.</exception>
    public void BringForward(SqliteConnection connection, List<string> applied)
    {
        var from = applied.Count == 0 ? Migration.InitialDatabase : applied[^1];
        connection.Run(context.GetService<IMigrator>().GenerateScript(from, options: MigrationsSqlGenerationOptions.NoTransactions));
        if (connection.Column("PRAGMA foreign_key_check").Count > 0)
            throw new InvalidDataException("After the migration, rows refer to others that are not there.");
    }
}
