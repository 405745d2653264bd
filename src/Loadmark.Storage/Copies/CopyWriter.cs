using Loadmark.Storage.Disk;
using Loadmark.Storage.Sqlite;
using Microsoft.Data.Sqlite;

namespace Loadmark.Storage.Copies;

/// <summary>Writes a copy of a database to a file of its own: whole and checked, or not at all.</summary>
internal static class CopyWriter
{
    /// <summary>What the name of a copy ends with until it is whole.</summary>
    public const string Unfinished = ".part";

    /// <summary>Copies over a connection, as the database is at one moment; who writes meanwhile does not wait.</summary>
    /// <param name="source">The database.</param>
    /// <param name="target">The file; its folder is there.</param>
    /// <param name="overwrite">Whether one of that name is replaced.</param>
    /// <param name="check">Looks at the copy, besides SQLite's own check and the texts, and throws where it is not to be; null for no
    /// more.</param>
    /// <param name="allowed">Looks at the unfinished file's path, before anything is written to it, and throws where it must not be
    /// there.</param>
    /// <returns>What is in it.</returns>
    public static CopyContents Write(
        SqliteConnection source,
        string target,
        bool overwrite,
        Action<SqliteConnection>? check = null,
        Action<string>? allowed = null)
    {
        var part = PrivateFile.MakeNumbered(target, Unfinished);
        try
        {
            allowed?.Invoke(part);
            CopyContents contents;
            using (var copy = Open(part))
            {
                source.BackupDatabase(copy);

                // One file, with nothing beside it that would have to be carried along.
                copy.Run("PRAGMA journal_mode = DELETE");
                CopyCheck.CheckPages(copy);
                check?.Invoke(copy);
                contents = CopyCheck.Count(copy);
            }

            File.Move(part, target, overwrite);
            return contents;
        }
        finally
        {
            DatabaseFiles.Delete(part);
        }
    }

    private static SqliteConnection Open(string path)
    {
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Pooling = false }.ToString());
        connection.Open();
        connection.Run(ConnectionSettings.Text);
        return connection;
    }
}
