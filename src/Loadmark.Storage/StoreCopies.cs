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

    /// <summary>The copies that the program made by itself, the last one first.</summary>
    public IReadOnlyList<KeptCopy> Kept() => new KeptCopies(_file, _clock).List();

    /// <summary>
    /// Makes the copy of today, where there is none yet, and lets go of those that are too many or too old, and of what killed programs
    /// left.
    /// </summary>
    /// <returns>Why there is none, in words for the user; null when all is well.</returns>
    public Task<string?> KeepTodayAsync() => Task.Run(() =>
    {
        try
        {
            ReceivedBackup.Sweep(_file.Folder, _clock.GetUtcNow());
            new KeptCopies(_file, _clock).WriteToday();
            return null;
        }
        catch (Exception fault) when (MediumFaults.KindOf(fault) is { } kind)
        {
            var folder = Path.Combine(_file.Folder, KeptCopies.FolderName);
            return $"Today's automatic backup was not made. {CopyFaults.WhileBackingUp(kind, _file.Path, folder, fault).Message}";
        }
    });

    /// <summary>
    /// Puts the last of the program's own copies that is whole in the place of everything that is kept, as
    /// <see cref="RestoreAsync(string, CancellationToken)"/> does.
    /// </summary>
    /// <param name="cancellationToken">Gives up before it begins.</param>
    /// <exception cref="StorageException">Nothing is restored; what was kept is there still.</exception>
    public Task<RestoreReport> RestoreLastAsync(CancellationToken cancellationToken = default) => Task.Run(
        () =>
        {
            foreach (var copy in Kept())
            {
                if (StagedBackup.IsWhole(copy.File, _file, _clock))
                    return new Restoring(_file, _clock).Run(copy.File);
            }

            throw CopyFaults.NoGoodCopy(Path.Combine(_file.Folder, KeptCopies.FolderName));
        },
        cancellationToken);

    /// <summary>
    /// Makes a new database of all that can still be read of a damaged one and is as it was saved, row by row. The damaged file is set
    /// aside under another name, or left where it is, and never changed.
    /// </summary>
    /// <param name="path">The file to write it to; null for the damaged one's place.</param>
    /// <param name="cancellationToken">Gives up before it begins.</param>
    /// <exception cref="StorageException">Nothing was salvaged; everything is as it was.</exception>
    public Task<SalvageReport> SalvageAsync(string? path = null, CancellationToken cancellationToken = default) =>
        Task.Run(() => new Salvaging(_file, _clock).Run(path is null ? null : Path.GetFullPath(path)), cancellationToken);

    /// <summary>
    /// Puts a backup in the place of everything that is kept, in one step. The backup is checked before, and brought forward when an older
    /// version wrote it; what was kept is copied to a file in the folder of
    /// the program's own copies; one that is damaged is set aside. Rigs get revisions that none had before, so that a page
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

    /// <summary>
    /// Restores a backup that comes as a stream, as <see cref="RestoreAsync(string, CancellationToken)"/> does one that is a file here. It
    /// is written to a file in the store's folder first, which is gone at the end, whatever that is.
    /// </summary>
    /// <param name="content">What comes; is read to its end.</param>
    /// <param name="bytes">How many bytes are to come: neither more nor fewer are taken.</param>
    /// <param name="named">What the user calls it, for sentences and the report; is never used as a path.</param>
    /// <param name="progress">Is told how many bytes have come; null for nobody.</param>
    /// <param name="cancellationToken">Gives up before the restoring begins.</param>
    /// <exception cref="StorageException">Nothing is restored; what was kept is there still.</exception>
    /// <exception cref="OperationCanceledException">It was given up, and nothing is restored.</exception>
    public async Task<RestoreReport> RestoreAsync(
        Stream content, long bytes, string named, IProgress<long>? progress = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(content);
        ArgumentException.ThrowIfNullOrEmpty(named);
        using var received = await ReceivedBackup.OfAsync(content, bytes, named, _file.Folder, progress, cancellationToken);
        return await Task.Run(() => new Restoring(_file, _clock).Run(received.Path, named), cancellationToken);
    }
}
