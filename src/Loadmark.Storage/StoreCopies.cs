using Loadmark.Storage.Copies;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Sqlite;

namespace Loadmark.Storage;

/// <summary>
/// Backups of everything that is kept, and restoring from one. Both work while this or another program is using the store, and need not
/// have it opened.
/// </summary>
public sealed class StoreCopies
{
    private readonly DatabaseFile _file;
    private readonly TimeProvider _clock;

    /// <summary>Names the store; does not touch it.</summary>
    /// <param name="folder">Its folder.</param>
    /// <param name="clock">Tells when what was kept before a restore was copied.</param>
    public StoreCopies(string folder, TimeProvider clock)
        : this(new DatabaseFile(folder), clock)
    {
    }

    internal StoreCopies(DatabaseFile file, TimeProvider clock) => (_file, _clock) = (file, clock);

    /// <summary>
    /// Copies everything, as it is at one moment, to a file, and checks the copy whole. It has another name until then. It is for the
    /// user's eyes only.
    /// </summary>
    /// <param name="path">The file; never one of the database's own. Its folder is there.</param>
    /// <param name="overwrite">Whether a file of that name is replaced.</param>
    /// <param name="cancellationToken">Gives up before it begins.</param>
    /// <exception cref="StorageException">There is no backup; a file of that name is as it was.</exception>
    public Task<BackupReport> BackUpAsync(string path, bool overwrite = false, CancellationToken cancellationToken = default)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        return Task.Run(() => new Backup(_file).Write(Path.GetFullPath(path), overwrite), cancellationToken);
    }

    /// <summary>
    /// Puts a backup in the place of everything that is kept, in one step. The backup is checked before, and brought forward when an older
    /// version wrote it; what was kept is copied to a file beside the database. Rigs get revisions that none had before, so that a page
    /// that is open on one is told at its next edit.
    /// </summary>
    /// <param name="path">The backup; only read.</param>
    /// <param name="cancellationToken">Gives up before it begins.</param>
    /// <exception cref="StorageException">Nothing is restored; what was kept is there still.</exception>
    public Task<RestoreReport> RestoreAsync(string path, CancellationToken cancellationToken = default)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        return Task.Run(() => new Restoring(_file, _clock).Run(Path.GetFullPath(path)), cancellationToken);
    }
}
