using System.Collections.Immutable;
using System.Data;
using System.Text;
using Loadmark.Storage.Entities;
using Loadmark.Storage.History;
using Loadmark.Storage.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Loadmark.Storage;

/// <summary>
/// The rigs that are kept, each with the edits that led to it, in the file <c>loadmark.db</c> of one folder. Safe to call from many
/// threads at once, and several programs may use one folder at the same time. A change that has returned is on the disk.
/// </summary>
/// <param name="folder">The folder; made by <see cref="OpenAsync"/> when it is not there.</param>
/// <param name="clock">Tells when a change was made.</param>
public sealed class RigStore(string folder, TimeProvider clock) : IDisposable
{
    /// <summary>How many edits of a rig can be undone; when there are more, the oldest are forgotten.</summary>
    public const int EditsKept = 1000;

    /// <summary>The longest text and the longest name of a rig, in bytes of UTF-8.</summary>
    public const int LongestText = 1024 * 1024;

    private readonly DatabaseFile _file = new(folder);

    /// <summary>Changes wait here for each other rather than in the database, which would look again every few milliseconds.</summary>
    private readonly SemaphoreSlim _turn = new(1);

    private volatile bool _isOpen;

    /// <summary>Why the last opening failed; null when it did not.</summary>
    private volatile StorageException? _fault;

    /// <summary>
    /// Opens the store: makes folder and database when they are not there, for the user's eyes only; checks that the database is whole;
    /// brings an older one forward, after making a copy of it. To be called before anything else, and again after a fault is mended.
    /// </summary>
    /// <param name="cancellationToken">Gives up waiting.</param>
    /// <returns>What was found. A fault of the medium is told here, never thrown.</returns>
    public async Task<StoreOpening> OpenAsync(CancellationToken cancellationToken = default)
    {
        await _turn.WaitAsync(cancellationToken);
        try
        {
            var opening = await Task.Run(() => new Opening(_file, clock).Run(), cancellationToken);
            (_isOpen, _fault) = (true, null);
            return opening;
        }
        catch (StorageException fault)
        {
            (_isOpen, _fault) = (false, fault);
            _file.Close();
            return new StoreOpening { Fault = fault.Fault, Trouble = fault.Message };
        }
        finally
        {
            _turn.Release();
        }
    }

    /// <summary>The rigs that are not removed, the last changed first.</summary>
    /// <param name="cancellationToken">Gives up.</param>
    /// <exception cref="StorageException">The medium failed.</exception>
    public Task<ImmutableArray<RigSummary>> ListAsync(CancellationToken cancellationToken = default) =>
        ReadAsync(
            async context =>
            {
                var rows = await context.Rigs
                    .Where(rig => rig.Removed == null)
                    .OrderByDescending(rig => rig.Changed).ThenBy(rig => rig.Id)
                    .Select(rig => new { rig.Id, rig.Name, rig.Changed, rig.Revision })
                    .ToListAsync(cancellationToken);
                return rows.Select(row => new RigSummary(row.Id, row.Name, KeptRig.Moment(row.Changed), row.Revision)).ToImmutableArray();
            },
            cancellationToken);

    /// <summary>One rig; null when it was removed or never was.</summary>
    /// <param name="id">The rig.</param>
    /// <param name="cancellationToken">Gives up.</param>
    /// <exception cref="StorageException">The medium failed.</exception>
    public Task<StoredRig?> FindAsync(Guid id, CancellationToken cancellationToken = default) =>
        ReadAsync(
            async context =>
            {
                // One statement, so that rig and edits are of one moment.
                var found = await context.Rigs
                    .Where(rig => rig.Id == id && rig.Removed == null)
                    .Select(rig => new
                    {
                        Row = rig,
                        Undo = context.Edits.Where(edit => edit.RigId == rig.Id && edit.Number == rig.Present).Select(edit => edit.What).FirstOrDefault(),
                        Redo = context.Edits.Where(edit => edit.RigId == rig.Id && edit.Number == rig.Present + 1).Select(edit => edit.What).FirstOrDefault(),
                    })
                    .AsNoTracking()
                    .FirstOrDefaultAsync(cancellationToken);
                return found is null ? null : KeptRig.Show(found.Row, found.Undo, found.Redo);
            },
            cancellationToken);

    /// <summary>Keeps a new rig, with nothing to undo.</summary>
    /// <param name="name">Its name; need not be unlike others.</param>
    /// <param name="text">The rig file's text.</param>
    /// <param name="cancellationToken">Gives up, with nothing kept.</param>
    /// <exception cref="ArgumentException">A text is too long, or the name is not Unicode text.</exception>
    /// <exception cref="StorageException">The medium failed; the rig is not kept.</exception>
    public Task<StoredRig> AddAsync(string name, string text, CancellationToken cancellationToken = default)
    {
        CheckWords(name, nameof(name));
        CheckLength(text, nameof(text));
        return WriteAsync(
            async context =>
            {
                var now = clock.GetUtcNow();
                var row = new RigRow { Id = Guid.CreateVersion7(now), Name = name, Text = TextPacking.Pack(text), Revision = 1, Changed = now.UtcTicks };
                context.Rigs.Add(row);
                await context.SaveChangesAsync(cancellationToken);
                return KeptRig.Show(row, undo: null, redo: null);
            },
            cancellationToken);
    }

    /// <summary>
    /// Keeps an edit: appends it after the present one and forgets what could have been redone. When neither name nor text differ there is
    /// no edit, and the rig stays as it is.
    /// </summary>
    /// <param name="id">The rig.</param>
    /// <param name="revision">The revision that the edit started from.</param>
    /// <param name="name">The name after the edit.</param>
    /// <param name="text">The text after the edit.</param>
    /// <param name="what">What the edit did, for people.</param>
    /// <param name="cancellationToken">Gives up, with nothing kept.</param>
    /// <exception cref="ArgumentException">A text is too long, or name or <paramref name="what"/> are not Unicode text.</exception>
    /// <exception cref="StorageException">The medium failed; the edit is not kept.</exception>
    public Task<SaveOutcome> SaveAsync(Guid id, long revision, string name, string text, string what, CancellationToken cancellationToken = default)
    {
        CheckWords(name, nameof(name));
        CheckLength(text, nameof(text));
        CheckWords(what, nameof(what));
        return ChangeAsync(id, revision, (rig, token) => rig.EditAsync(name, text, what, token), cancellationToken);
    }

    /// <summary>Takes the last edit back. When there is none the rig stays as it is.</summary>
    /// <param name="id">The rig.</param>
    /// <param name="revision">The revision that the user sees.</param>
    /// <param name="cancellationToken">Gives up, with nothing changed.</param>
    /// <exception cref="StorageException">The medium failed; nothing is changed.</exception>
    public Task<SaveOutcome> UndoAsync(Guid id, long revision, CancellationToken cancellationToken = default) =>
        ChangeAsync(id, revision, (rig, token) => rig.UndoAsync(token), cancellationToken);

    /// <summary>Brings back the edit that was taken back last. When there is none the rig stays as it is.</summary>
    /// <param name="id">The rig.</param>
    /// <param name="revision">The revision that the user sees.</param>
    /// <param name="cancellationToken">Gives up, with nothing changed.</param>
    /// <exception cref="StorageException">The medium failed; nothing is changed.</exception>
    public Task<SaveOutcome> RedoAsync(Guid id, long revision, CancellationToken cancellationToken = default) =>
        ChangeAsync(id, revision, (rig, token) => rig.RedoAsync(token), cancellationToken);

    /// <summary>Removes a rig from the list. It is kept with its edits, for <see cref="RestoreAsync"/>.</summary>
    /// <param name="id">The rig.</param>
    /// <param name="revision">The revision that the user sees.</param>
    /// <param name="cancellationToken">Gives up, with nothing changed.</param>
    /// <exception cref="StorageException">The medium failed; nothing is changed.</exception>
    public Task<SaveOutcome> RemoveAsync(Guid id, long revision, CancellationToken cancellationToken = default) =>
        ChangeAsync(id, revision, static (rig, token) => rig.RemoveAsync(token), cancellationToken);

    /// <summary>Brings a removed rig back, with its edits. One that is not removed stays as it is.</summary>
    /// <param name="id">The rig.</param>
    /// <param name="cancellationToken">Gives up, with nothing changed.</param>
    /// <exception cref="StorageException">The medium failed; nothing is changed.</exception>
    public Task<SaveOutcome> RestoreAsync(Guid id, CancellationToken cancellationToken = default) =>
        ChangeAsync(id, revision: null, static (rig, token) => rig.RestoreAsync(token), cancellationToken);

    /// <summary>Lets go of the file.</summary>
    public void Dispose()
    {
        _file.Close();
        _turn.Dispose();
    }

    private static void CheckLength(string text, string parameter)
    {
        ArgumentNullException.ThrowIfNull(text, parameter);
        if (Encoding.UTF8.GetByteCount(text) > LongestText)
            throw new ArgumentException($"The text is longer than {LongestText} bytes.", parameter);
    }

    /// <summary>Names stand in the database as text, which some databases end at a zero, and which holds no half of a surrogate pair.</summary>
    private static void CheckWords(string words, string parameter)
    {
        CheckLength(words, parameter);
        if (words.Contains('\0') || !IsWellFormed(words))
            throw new ArgumentException("Not Unicode text, or with a zero in it.", parameter);
    }

    private static bool IsWellFormed(string words)
    {
        for (var at = 0; at < words.Length;)
        {
            if (!Rune.TryGetRuneAt(words, at, out var rune))
                return false;
            at += rune.Utf16SequenceLength;
        }

        return true;
    }

    private Task<SaveOutcome> ChangeAsync(Guid id, long? revision, Func<KeptRig, CancellationToken, Task> change, CancellationToken cancellationToken) =>
        WriteAsync(
            async context =>
            {
                var row = await context.Rigs.FindAsync([id], cancellationToken);
                if (row is null)
                    return new SaveOutcome(SaveState.Gone, null);

                var rig = new KeptRig(context, row, clock);
                if (revision is not null && row.Removed is not null)
                    return new SaveOutcome(SaveState.Gone, await rig.ShowAsync(cancellationToken));
                if (revision is not null && row.Revision != revision)
                    return new SaveOutcome(SaveState.Conflict, await rig.ShowAsync(cancellationToken));

                await change(rig, cancellationToken);
                await context.SaveChangesAsync(cancellationToken);
                return new SaveOutcome(SaveState.Saved, await rig.ShowAsync(cancellationToken));
            },
            cancellationToken);

    private async Task<T> ReadAsync<T>(Func<StorageContext, Task<T>> read, CancellationToken cancellationToken)
    {
        CheckOpen(MediumFaults.WhileReading);
        try
        {
            // SQLite waits without giving its thread back.
            return await Task.Run(
                async () =>
                {
                    await using var context = _file.NewContext();
                    return await read(context);
                },
                cancellationToken);
        }
        catch (Exception fault) when (MediumFaults.KindOf(fault) is { } kind)
        {
            throw MediumFaults.WhileReading(kind, fault);
        }
    }

    private async Task<T> WriteAsync<T>(Func<StorageContext, Task<T>> write, CancellationToken cancellationToken)
    {
        CheckOpen(MediumFaults.WhileChanging);
        await _turn.WaitAsync(cancellationToken);
        try
        {
            return await Task.Run(
                async () =>
                {
                    await using var context = _file.NewContext();

                    // Serializable takes the database's one turn to write at once, so that what is read next is what is changed.
                    await using var transaction = await context.Database.BeginTransactionAsync(IsolationLevel.Serializable, cancellationToken);
                    var answer = await write(context);
                    await transaction.CommitAsync(cancellationToken);
                    return answer;
                },
                cancellationToken);
        }
        catch (Exception fault) when (MediumFaults.KindOf(fault) is { } kind)
        {
            throw MediumFaults.WhileChanging(kind, fault);
        }
        finally
        {
            _turn.Release();
        }
    }

    private void CheckOpen(Func<StoreFault, Exception, StorageException> words)
    {
        if (_fault is { } fault)
            throw words(fault.Fault, fault);
        if (!_isOpen)
            throw new InvalidOperationException("The store is used before it is opened.");
    }
}
