using System.Globalization;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Sqlite;

namespace Loadmark.Storage.Copies;

/// <summary>Gives a database that cannot be used another name, with what lies beside it. Nothing of it is written or deleted.</summary>
internal static class SetAside
{
    /// <summary>Where each connection holds a lock in the memory that programs share (SQLite's os_unix.c, UNIX_SHM_DMS).</summary>
    private const int LockAt = 128;

    /// <summary>Renames it.</summary>
    /// <param name="file">The database.</param>
    /// <param name="now">When; the name says so.</param>
    /// <returns>Its path now.</returns>
    /// <exception cref="StorageException">Some program has it open: what it saved would go where nobody looks for it.</exception>
    public static string Run(DatabaseFile file, DateTimeOffset now)
    {
        CheckNotInUse(file);
        var stem = Path.Combine(file.Folder, string.Create(CultureInfo.InvariantCulture, $"loadmark-damaged-{now:yyyyMMdd'T'HHmmss}"));
        var path = $"{stem}.db";
        for (var more = 2; File.Exists(path); more++)
            path = $"{stem}-{more}.db";

        // The database last: without it what lies beside it would be taken for a new one's.
        foreach (var beside in (IEnumerable<string>)[.. DatabaseFile.Beside, ""])
        {
            if (File.Exists(file.Path + beside))
                File.Move(file.Path + beside, path + beside);
        }

        return path;
    }

    /// <summary>Checks that no program has it open.</summary>
    /// <exception cref="StorageException">One has.</exception>
    public static void CheckNotInUse(DatabaseFile file)
    {
        if (file.IsOpenHere || (DatabaseFiles.MayBeInUse(file.Path) && IsLocked(file.Path + DatabaseFile.Shared)))
        {
            throw new StorageException(
                StoreFault.Busy, $"A program has {file.Path} open, which is damaged. Nothing was changed. Close it, then try again.");
        }
    }

    private static bool IsLocked(string shared)
    {
        // Elsewhere a file that is open cannot be renamed, or there is no asking.
        if (!OperatingSystem.IsLinux())
            return false;
        try
        {
            using var file = new FileStream(shared, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite | FileShare.Delete);
            file.Lock(LockAt, 1);
            return false;
        }
        catch (IOException)
        {
            return true;
        }
    }
}
