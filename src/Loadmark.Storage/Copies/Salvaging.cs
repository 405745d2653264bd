using System.Globalization;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Sqlite;
using Microsoft.Data.Sqlite;

namespace Loadmark.Storage.Copies;

/// <summary>
/// Makes a new database of what can still be read of a damaged one. The damaged file is only read, and keeps all that it has.
/// </summary>
internal sealed class Salvaging(DatabaseFile file, TimeProvider clock)
{
    /// <summary>Salvages.</summary>
    /// <param name="target">The file to write, like a backup; null to put it in the damaged one's place, which is then set aside.</param>
    /// <exception cref="StorageException">Nothing was salvaged; everything is as it was.</exception>
    public SalvageReport Run(string? target)
    {
        if (!File.Exists(file.Path))
            throw CopyFaults.NothingToSalvage($"There is no file {file.Path}.");
        if (target is not null && (File.Exists(target) || Directory.Exists(target)))
            throw CopyFaults.TargetExists(target);
        SetAside.CheckNotInUse(file);
        CheckDamaged();
        var folder = Directory.CreateTempSubdirectory("loadmark-salvage-").FullName;
        try
        {
            return Salvage(folder, target);
        }
        catch (Exception fault) when (MediumFaults.KindOf(fault) is { } kind)
        {
            throw CopyFaults.WhileSalvaging(kind, file.Path, target ?? file.Path, fault);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private void CheckDamaged()
    {
        try
        {
            new Opening(file, clock).Run();
        }
        catch (StorageException fault) when (fault.Fault is StoreFault.Damaged or StoreFault.NotADatabase)
        {
            return;
        }
        finally
        {
            file.Close();
        }

        throw CopyFaults.NothingToSalvage($"{file.Path} is whole.");
    }

    private SalvageReport Salvage(string folder, string? target)
    {
        var damaged = Path.Combine(folder, "damaged.db");
        File.Copy(file.Path, damaged);
        SchemaPages.Lengthen(damaged);

        // Its own log may hold what was saved last; another's may be why it is damaged. A journal is another's.
        if (File.Exists(file.Path + DatabaseFile.WriteAhead) && (BesideDatabase.HasOwnLog(file.Path) || !IsWhole(damaged)))
            File.Copy(file.Path + DatabaseFile.WriteAhead, damaged + DatabaseFile.WriteAhead);
        var made = file.In(Path.Combine(folder, "made"));
        new Opening(made, clock).Run();
        var (backup, when) = LastGoodCopy();
        using var staged = backup;
        using var connection = made.NewPlainConnection();
        var rows = new SalvagedRows(connection);
        var template = Path.Combine(folder, "template.db");
        CopyWriter.Write(connection, template, overwrite: false);
        if (staged is not null)
            rows.Attach(staged.Path);
        using (var transaction = connection.BeginTransaction())
        {
            if (!rows.TakeFrom(damaged) && !TakeWithNewSchema(rows, damaged, template))
                throw CopyFaults.NothingReadable(file.Path);
            if (staged is not null)
                rows.FillFromAttached(when);
            rows.MakeConsistent();
            transaction.Commit();
        }

        return Keep(rows, connection, target);
    }

    private static bool IsWhole(string copy)
    {
        try
        {
            using var connection = new SqliteConnection(
                new SqliteConnectionStringBuilder { DataSource = copy, Pooling = false }.ToString());
            connection.Open();
            connection.Look("SELECT name FROM sqlite_master");
            CopyCheck.CheckPages(connection);
            CopyCheck.CheckSeals(connection);
            return true;
        }
        catch (Exception fault) when (MediumFaults.KindOf(fault) is not null)
        {
            return false;
        }
        finally
        {
            DatabaseFiles.DeleteBeside(copy);
        }
    }

    private static bool TakeWithNewSchema(SalvagedRows rows, string damaged, string template)
    {
        DatabaseFiles.DeleteBeside(damaged);
        SchemaPages.Graft(template, damaged);
        return rows.TakeFrom(damaged);
    }

    /// <summary>Writes what was salvaged before the damaged file gets another name: a full disk then leaves everything as it was.</summary>
    private SalvageReport Keep(SalvagedRows rows, SqliteConnection connection, string? target)
    {
        var written = target ?? Path.Combine(file.Folder, $"loadmark-salvaged-{Guid.NewGuid():N}.db");
        var contents = CopyWriter.Write(connection, written, overwrite: false, CopyCheck.CheckSeals);
        if (target is not null)
            return new SalvageReport(target, null, contents, [.. rows.Lost], [.. rows.Filled]);
        try
        {
            var aside = SetAside.Run(file, clock.GetUtcNow());
            File.Move(written, file.Path);
            return new SalvageReport(file.Path, aside, contents, [.. rows.Lost], [.. rows.Filled]);
        }
        catch
        {
            File.Delete(written);
            throw;
        }
    }

    /// <summary>
    /// Rigs and gear are never deleted. One that the last good copy has and the damaged file not is lost, and taken from there.
    /// </summary>
    private (StagedBackup? Backup, string When) LastGoodCopy()
    {
        foreach (var copy in new KeptCopies(file, clock).List())
        {
            try
            {
                return (
                    StagedBackup.Of(copy.File, file, clock, copy.File),
                    copy.Made.ToLocalTime().ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture));
            }
            catch (StorageException)
            {
                // Not a whole one: the one before it.
            }
        }

        return (null, "");
    }
}
