using Loadmark.Storage.Sqlite;

namespace Loadmark.Storage.Copies;

/// <summary>A database's file with those that SQLite puts beside it while it is in use.</summary>
internal static class DatabaseFiles
{
    /// <summary>Whether some program may have the database open.</summary>
    public static bool MayBeInUse(string path) => File.Exists(path + DatabaseFile.Shared);

    /// <summary>
    /// Copies the file, with what of it is still in the files beside it, byte by byte. For databases that nobody has open.
    /// </summary>
    public static void Copy(string from, string to)
    {
        File.Copy(from, to);
        foreach (var beside in (ReadOnlySpan<string>)[DatabaseFile.WriteAhead, DatabaseFile.Rollback])
        {
            if (File.Exists(from + beside))
                File.Copy(from + beside, to + beside);
        }
    }

    /// <summary>Deletes the database's file and those beside it.</summary>
    public static void Delete(string path)
    {
        File.Delete(path);
        DeleteBeside(path);
    }

    /// <summary>Deletes what lies beside a database's file.</summary>
    public static void DeleteBeside(string path)
    {
        foreach (var beside in DatabaseFile.Beside)
            File.Delete(path + beside);
    }
}
