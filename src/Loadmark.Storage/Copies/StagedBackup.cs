using Loadmark.Storage.Faults;
using Loadmark.Storage.Sqlite;
using Microsoft.Data.Sqlite;

namespace Loadmark.Storage.Copies;

/// <summary>
/// A copy of the file that is to be restored, in a folder of its own: checked, and brought forward when an older version wrote it. The file
/// itself is only read.
/// </summary>
internal sealed class StagedBackup : IDisposable
{
    private static readonly byte[] Beginning = [.. "SQLite format 3\0"u8];

    private readonly string _folder;
    private readonly string _named;

    private StagedBackup(string folder, string named) => (_folder, _named) = (folder, named);

    /// <summary>The copy's path.</summary>
    public string Path => System.IO.Path.Combine(_folder, DatabaseFile.FileName);

    /// <summary>Whether the backup was of an older schema and had to be brought forward.</summary>
    public bool WasOlder { get; private set; }

    /// <summary>Copies and checks.</summary>
    /// <param name="path">The file to be restored.</param>
    /// <param name="like">The database that it is to be restored to; knows the migrations.</param>
    /// <param name="clock">Tells the time.</param>
    /// <param name="named">What the user calls the file.</param>
    /// <exception cref="StorageException">It cannot be restored.</exception>
    public static StagedBackup Of(string path, DatabaseFile like, TimeProvider clock, string named)
    {
        if (!File.Exists(path))
            throw CopyFaults.NoSuchBackup(named);
        var staged = new StagedBackup(NewFolder(named), named);
        try
        {
            staged.Fill(path, like, clock);
            return staged;
        }
        catch (Exception fault) when (MediumFaults.KindOf(fault) is { } kind)
        {
            staged.Dispose();
            throw CopyFaults.OfBackup(kind, named, fault);
        }
        catch
        {
            staged.Dispose();
            throw;
        }
    }

    /// <summary>Whether a file can be restored.</summary>
    public static bool IsWhole(string path, DatabaseFile like, TimeProvider clock)
    {
        try
        {
            using var staged = Of(path, like, clock, path);
            return true;
        }
        catch (StorageException fault) when (fault.Fault is not (StoreFault.DiskFull or StoreFault.Disk))
        {
            return false;
        }
    }

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(_folder, recursive: true);

    /// <summary>A fault of the place for temporary files is none of the backup, which nothing is wrong with.</summary>
    private static string NewFolder(string named)
    {
        try
        {
            return Directory.CreateTempSubdirectory("loadmark-restore-").FullName;
        }
        catch (Exception fault) when (MediumFaults.KindOf(fault) is { } kind)
        {
            throw kind == StoreFault.DiskFull ? CopyFaults.OfBackup(kind, named, fault) : CopyFaults.NoTemporaryFolder(named, fault);
        }
    }

    private void Fill(string path, DatabaseFile like, TimeProvider clock)
    {
        // Looked at before it is copied: somebody may name a film.
        if (!BeginsLikeOne(path))
            throw CopyFaults.OfBackup(StoreFault.NotADatabase, _named, cause: null);
        Copy(path);

        var file = like.In(_folder);
        using (var connection = file.NewPlainConnection())
        {
            // An empty database would be filled with empty tables, and restoring those would be a loss.
            if (Schema.AppliedTo(connection) is null or [])
                throw CopyFaults.OfBackup(StoreFault.NotADatabase, _named, cause: null);
        }

        WasOlder = new Opening(file, clock).Run().Backup is not null;
    }

    private static bool BeginsLikeOne(string path)
    {
        var bytes = new byte[Beginning.Length];
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        return stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false) == bytes.Length && bytes.SequenceEqual(Beginning);
    }

    private void Copy(string path)
    {
        if (!DatabaseFiles.MayBeInUse(path))
        {
            DatabaseFiles.Copy(path, Path);
            return;
        }

        using var source = Open(path, SqliteOpenMode.ReadOnly);
        using var copy = Open(Path, SqliteOpenMode.ReadWriteCreate);
        source.BackupDatabase(copy);
    }

    private static SqliteConnection Open(string path, SqliteOpenMode mode)
    {
        var connection = new SqliteConnection(
            new SqliteConnectionStringBuilder { DataSource = path, Mode = mode, Pooling = false }.ToString());
        connection.Open();
        return connection;
    }
}
