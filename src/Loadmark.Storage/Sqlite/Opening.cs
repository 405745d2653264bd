using System.Globalization;
using Microsoft.Data.Sqlite;

namespace Loadmark.Storage.Sqlite;

/// <summary>The steps from a folder's name to a database that is whole and of today's schema.</summary>
internal sealed class Opening(DatabaseFile file, TimeProvider clock)
{
    private const UnixFileMode UserOnlyFolder = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;
    private const UnixFileMode UserOnlyFile = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    /// <summary>Does all of it.</summary>
    /// <exception cref="StorageException">The fault, in words that say what to do.</exception>
    public StoreOpening Run()
    {
        try
        {
            MakeFolder();
            MakeFile(file.Path, FileMode.OpenOrCreate);
            using var connection = file.NewPlainConnection();
            using var context = file.NewContext();
            return BringForward(connection, new Schema(context));
        }
        catch (Exception fault) when (MediumFaults.KindOf(fault) is { } kind)
        {
            throw MediumFaults.WhileOpening(kind, file.Path, fault);
        }
    }

    private StoreOpening BringForward(SqliteConnection connection, Schema schema)
    {
        // Before anything is written: a file that is not ours stays as it is.
        CheckWhole(connection);
        Applied(connection, schema);
        connection.Run("PRAGMA journal_mode = WAL");

        // Takes the turn at once: of two programs that start together, one finds the work done.
        using var transaction = connection.BeginTransaction(deferred: false);
        var applied = Applied(connection, schema);
        if (schema.IsNewest(applied))
            return new StoreOpening();

        var backup = applied.Count == 0 ? null : BackUp();
        schema.BringForward(connection, applied);
        transaction.Commit();
        return new StoreOpening { WasCreated = applied.Count == 0, Backup = backup };
    }

    private List<string> Applied(SqliteConnection connection, Schema schema)
    {
        var applied = Schema.AppliedTo(connection) ?? throw MediumFaults.WhileOpening(StoreFault.NotADatabase, file.Path, cause: null);
        return schema.IsNewerThanProgram(applied) ? throw MediumFaults.WhileOpening(StoreFault.NewerSchema, file.Path, cause: null) : applied;
    }

    private void MakeFolder()
    {
        if (Directory.Exists(file.Folder))
            return;
        if (OperatingSystem.IsWindows())
            Directory.CreateDirectory(file.Folder);
        else
            Directory.CreateDirectory(file.Folder, UserOnlyFolder);
    }

    /// <summary>SQLite gives the files that it puts beside a database the rights of the database itself.</summary>
    private static void MakeFile(string path, FileMode mode)
    {
        var options = new FileStreamOptions { Mode = mode, Access = FileAccess.ReadWrite, Share = FileShare.ReadWrite | FileShare.Delete };
        if (!OperatingSystem.IsWindows())
            options.UnixCreateMode = UserOnlyFile;
        using var made = new FileStream(path, options);
    }

    private static void CheckWhole(SqliteConnection connection)
    {
        var said = connection.Column("PRAGMA integrity_check(10)");
        if (said is not ["ok"])
            throw new InvalidDataException(string.Join('\n', said));
    }

    /// <summary>A copy of the database as it was before, made while its turn is held, by a second connection.</summary>
    private string BackUp()
    {
        var stem = Path.Combine(file.Folder, string.Create(CultureInfo.InvariantCulture, $"loadmark-before-upgrade-{clock.GetUtcNow():yyyyMMdd'T'HHmmss}"));
        var path = $"{stem}.db";
        for (var more = 2; File.Exists(path); more++)
            path = $"{stem}-{more}.db";
        MakeFile(path, FileMode.CreateNew);

        using var source = file.NewPlainConnection();
        using var copy = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Pooling = false }.ToString());
        copy.Open();
        source.BackupDatabase(copy);
        CheckWhole(copy);
        return path;
    }
}
