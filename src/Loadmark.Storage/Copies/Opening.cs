using Loadmark.Storage.Disk;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Seals;
using Loadmark.Storage.Sqlite;
using Microsoft.Data.Sqlite;

namespace Loadmark.Storage.Copies;

/// <summary>The steps from a folder's name to a database that is whole and of today's schema.</summary>
internal sealed class Opening(DatabaseFile file, TimeProvider clock)
{
    /// <summary>Takes all steps in their order, and says what was done.</summary>
    /// <exception cref="StorageException">The fault, in words that say what to do.</exception>
    public StoreOpening Run()
    {
        try
        {
            if (StoreFolder.TroubleWith(file.Folder) is { } trouble)
                throw trouble;
            PrivateFile.MakeFolder(file.Folder);
            if (!File.Exists(file.Path))
                PrivateFile.Make(file.Path, FileMode.OpenOrCreate);
            else if (!file.IsOpenHere)
                BesideDatabase.Check(file.Path);
            using var connection = file.NewPlainConnection();
            using var context = file.NewContext();
            return BringForward(connection, new Schema(context));
        }
        catch (Exception fault) when (MediumFaults.KindOf(fault) is { } kind)
        {
            throw OpeningFaults.Of(kind, file, fault);
        }
    }

    private StoreOpening BringForward(SqliteConnection connection, Schema schema)
    {
        // Before anything is written: a file that is not ours stays as it is.
        CopyCheck.CheckPages(connection);
        if (schema.IsNewest(Applied(connection, schema)))
            schema.CheckColumns(connection);
        CopyCheck.CheckSeals(connection);
        connection.KeepsLog(false);
        connection.Run("PRAGMA journal_mode = WAL");

        // Takes the turn at once: of two programs that start together, one finds the work done.
        using var transaction = connection.BeginTransaction(deferred: false);
        var applied = Applied(connection, schema);
        if (schema.IsNewest(applied))
            return new StoreOpening();

        // Made by a second connection while the turn is held, so that nothing comes between.
        var backup = applied.Count == 0 ? null : new KeptCopies(file, clock).Write(CopyReason.BeforeUpgrade);
        schema.BringForward(connection, applied);
        DatabaseSeals.SealAll(connection);
        transaction.Commit();
        return applied.Count == 0
            ? new StoreOpening { WasCreated = true, Remark = OpeningFaults.OfNothing(file) }
            : new StoreOpening { Backup = backup };
    }

    private List<string> Applied(SqliteConnection connection, Schema schema)
    {
        var applied = Schema.AppliedTo(connection) ?? throw OpeningFaults.Of(StoreFault.NotADatabase, file, cause: null);
        return schema.IsNewerThanProgram(applied)
            ? throw OpeningFaults.Of(StoreFault.NewerSchema, file, cause: null)
            : applied;
    }
}
