using Loadmark.Storage.Disk;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Sqlite;
using Microsoft.Data.Sqlite;

namespace Loadmark.Storage.Copies;

/// <summary>Copies the database to a file that the user names, while others may be using it.</summary>
internal sealed class Backup(DatabaseFile file)
{
    /// <summary>Writes a backup of the store.</summary>
    /// <param name="target">The file's full path.</param>
    /// <param name="overwrite">Whether one of that name is replaced.</param>
    /// <exception cref="StorageException">No backup was written; a file of that name is as it was.</exception>
    public BackupReport Write(string target, bool overwrite)
    {
        if (Directory.Exists(target))
            throw CopyFaults.TargetIsFolder(target);
        if (StoreFolder.TroubleWith(file.Folder) is { } trouble)
            throw trouble;
        if (!File.Exists(file.Path))
            throw CopyFaults.NothingKept(file.Path);
        if (File.Exists(target) && !overwrite)
            throw CopyFaults.TargetExists(target);

        string? aside = null;
        try
        {
            using var source = Open(ref aside);
            CheckOurs(source);
            var contents = CopyWriter.Write(source, target, overwrite, allowed: part => CheckPlace(target, part));
            return new BackupReport(target, contents, new FileInfo(target).Length);
        }
        catch (IOException) when (!overwrite && File.Exists(target))
        {
            throw CopyFaults.TargetExists(target);
        }
        catch (Exception fault) when (MediumFaults.KindOf(fault) is { } kind)
        {
            throw CopyFaults.WhileBackingUp(kind, file.Path, target, fault);
        }
        finally
        {
            if (aside is not null)
                Directory.Delete(aside, recursive: true);
        }
    }

    /// <summary>
    /// Over a connection like any other. Where the disk has become read-only SQLite cannot open the database, as it needs to put files
    /// beside it: nobody can be writing then, and bytes that are copied are what was kept.
    /// </summary>
    private SqliteConnection Open(ref string? aside)
    {
        try
        {
            return file.NewPlainConnection();
        }
        catch (SqliteException fault) when (MediumFaults.KindOf(fault) == StoreFault.NotWritable)
        {
            aside = Directory.CreateTempSubdirectory("loadmark-backup-").FullName;
            DatabaseFiles.Copy(file.Path, Path.Combine(aside, DatabaseFile.FileName));
            return file.In(aside).NewPlainConnection();
        }
    }

    private void CheckOurs(SqliteConnection source)
    {
        using var context = file.NewContext();
        var fault = Schema.AppliedTo(source) switch
        {
            null or [] => StoreFault.NotADatabase,
            { } applied when new Schema(context).IsNewerThanProgram(applied) => StoreFault.NewerSchema,
            _ => (StoreFault?)null,
        };
        if (fault is { } kind)
            throw OpeningFaults.Of(kind, file, cause: null);
    }

    /// <summary>
    /// Never over the database itself, whatever links lead there: the unfinished file shows whether its folder is the database's.
    /// </summary>
    private void CheckPlace(string target, string part)
    {
        var isSameFolder = File.Exists(Path.Combine(file.Folder, Path.GetFileName(part)));
        if (isSameFolder && Path.GetFileName(target).StartsWith(DatabaseFile.FileName, StringComparison.OrdinalIgnoreCase))
            throw CopyFaults.TargetIsDatabase(target);
    }
}
