using System.Collections.Immutable;
using Loadmark.Storage.Entities;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Gear;
using Loadmark.Storage.History;
using Loadmark.Storage.Rigs;
using Loadmark.Storage.Sessions;
using Microsoft.EntityFrameworkCore;

namespace Loadmark.Storage;

/// <summary>
/// The rigs that are kept, each with the edits that led to it. Safe to call from many threads at once. A change that has returned is on
/// the disk.
/// </summary>
public sealed class RigStore
{
    /// <summary>How many edits of a rig can be undone; when there are more, the oldest are forgotten.</summary>
    public const int EditsKept = 1000;

    /// <summary>The longest text of a rig, and the longest name, in bytes of UTF-8.</summary>
    public const int LongestText = TextLimits.LongestText;

    private readonly Access _access;
    private readonly TimeProvider _clock;
    private readonly int _editsKept;
    private readonly RigUses _uses;

    internal RigStore(Access access, TimeProvider clock, int editsKept, RigUses uses) =>
        (_access, _clock, _editsKept, _uses) = (access, clock, editsKept, uses);

    /// <summary>The rigs that are not removed, the last changed first.</summary>
    /// <param name="cancellationToken">Gives up.</param>
    /// <exception cref="StorageException">The medium failed.</exception>
    public Task<ImmutableArray<RigSummary>> ListAsync(CancellationToken cancellationToken = default) =>
        _access.ReadAsync(
            async context =>
            {
                var rows = await context.Rigs
                    .Where(rig => rig.Removed == null)
                    .OrderByDescending(rig => rig.Changed).ThenBy(rig => rig.Id)
                    .Select(rig => new { rig.Id, rig.Name, rig.Changed, rig.Revision })
                    .ToListAsync(cancellationToken);
                return rows.Select(row => new RigSummary(row.Id, row.Name, StoredRigEdits.Moment(row.Changed), row.Revision))
                    .ToImmutableArray();
            },
            cancellationToken);

    /// <summary>One rig; null when it was removed or never was.</summary>
    /// <param name="id">The rig.</param>
    /// <param name="cancellationToken">Gives up.</param>
    /// <exception cref="StorageException">The medium failed.</exception>
    public Task<StoredRig?> FindAsync(Guid id, CancellationToken cancellationToken = default) =>
        _access.ReadAsync(
            async context =>
            {
                // One statement, so that rig and edits are of one moment.
                var found = await context.Rigs
                    .Where(rig => rig.Id == id && rig.Removed == null)
                    .LeftJoin(
                        context.Edits,
                        rig => new { RigId = rig.Id, Number = rig.Present },
                        edit => new { edit.RigId, edit.Number },
                        (rig, edit) => new { Row = rig, Undo = edit })
                    .LeftJoin(
                        context.Edits,
                        one => new { RigId = one.Row.Id, Number = one.Row.Present + 1 },
                        edit => new { edit.RigId, edit.Number },
                        (one, edit) => new { one.Row, one.Undo, Redo = edit })
                    .AsNoTracking()
                    .FirstOrDefaultAsync(cancellationToken);
                return found is null ? null : StoredRigEdits.Show(found.Row, found.Undo?.What, found.Redo?.What);
            },
            cancellationToken);

    /// <summary>The revision that a rig is at, without its text; null when it was removed or never was.</summary>
    /// <param name="id">The rig.</param>
    /// <param name="cancellationToken">Gives up.</param>
    /// <exception cref="StorageException">The medium failed.</exception>
    public Task<long?> RevisionAsync(Guid id, CancellationToken cancellationToken = default) =>
        _access.ReadAsync(
            context => context.Rigs.Where(rig => rig.Id == id && rig.Removed == null).Select(rig => (long?)rig.Revision)
                .FirstOrDefaultAsync(cancellationToken),
            cancellationToken);

    /// <summary>Keeps a new rig, with nothing to undo.</summary>
    /// <param name="name">Its name; need not be unlike others.</param>
    /// <param name="text">The rig file's text.</param>
    /// <param name="cancellationToken">Gives up, with nothing kept.</param>
    /// <exception cref="ArgumentException">A text is too long, or the name is not Unicode text.</exception>
    /// <exception cref="StorageException">The medium failed; the rig is not kept.</exception>
    public Task<StoredRig> AddAsync(string name, string text, CancellationToken cancellationToken = default)
    {
        TextLimits.CheckWords(name, nameof(name));
        TextLimits.CheckText(text, nameof(text));
        return _access.WriteAsync(
            async context =>
            {
                var now = _clock.GetUtcNow();
                var row = new RigRow
                {
                    Id = Guid.CreateVersion7(now),
                    Name = name,
                    Text = TextPacking.Pack(text),
                    Revision = 1,
                    Changed = now.UtcTicks,
                };
                context.Rigs.Add(row);
                await _uses.FindAgainAsync(context, row, text, cancellationToken);
                await context.SaveChangesAsync(cancellationToken);
                return StoredRigEdits.Show(row, undo: null, redo: null);
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
    public Task<SaveOutcome> SaveAsync(
        Guid id, long revision, string name, string text, string what, CancellationToken cancellationToken = default)
    {
        TextLimits.CheckWords(name, nameof(name));
        TextLimits.CheckText(text, nameof(text));
        TextLimits.CheckWords(what, nameof(what));
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

    private Task<SaveOutcome> ChangeAsync(
        Guid id, long? revision, Func<StoredRigEdits, CancellationToken, Task> change, CancellationToken cancellationToken) =>
        _access.WriteAsync(
            async context =>
            {
                var row = await context.Rigs.FindAsync([id], cancellationToken);
                if (row is null)
                    return new SaveOutcome(SaveState.Gone, null);

                var rig = new StoredRigEdits(context, row, _clock, _editsKept);
                if (revision is not null && row.Removed is not null)
                    return new SaveOutcome(SaveState.Gone, await rig.ShowAsync(cancellationToken));
                if (revision is not null && row.Revision != revision)
                    return new SaveOutcome(SaveState.Conflict, await rig.ShowAsync(cancellationToken));

                var (text, isInStep) = (row.Text, row.UsesRevision == row.Revision);
                await change(rig, cancellationToken);
                if (text != row.Text)
                    await _uses.FindAgainAsync(context, row, rig.Text, cancellationToken);
                else if (isInStep)
                    row.UsesRevision = row.Revision;
                await context.SaveChangesAsync(cancellationToken);
                return new SaveOutcome(SaveState.Saved, await rig.ShowAsync(cancellationToken));
            },
            cancellationToken);
}
