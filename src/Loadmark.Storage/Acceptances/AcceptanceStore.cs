using System.Collections.Immutable;
using Loadmark.Storage.Entities;
using Loadmark.Storage.Faults;
using Loadmark.Storage.History;
using Loadmark.Storage.Rigs;
using Loadmark.Storage.Sessions;
using Microsoft.EntityFrameworkCore;

namespace Loadmark.Storage.Acceptances;

/// <summary>
/// What was measured on finished rigs: records that grow while somebody measures, and stay as they are once they are signed.
/// </summary>
public sealed class AcceptanceStore
{
    private readonly Access _access;
    private readonly TimeProvider _clock;

    internal AcceptanceStore(Access access, TimeProvider clock) => (_access, _clock) = (access, clock);

    /// <summary>The records of a rig, the last begun first.</summary>
    /// <param name="rig">Which rig.</param>
    /// <param name="cancellationToken">Gives up.</param>
    /// <exception cref="StorageException">The medium failed.</exception>
    public Task<ImmutableArray<StoredAcceptance>> ListAsync(Guid rig, CancellationToken cancellationToken = default) =>
        _access.ReadAsync(
            async context =>
            {
                var rows = await context.Acceptances.AsNoTracking().Where(row => row.RigId == rig)
                    .OrderByDescending(row => row.Begun).ThenByDescending(row => row.Id).ToListAsync(cancellationToken);
                return rows.Select(Show).ToImmutableArray();
            },
            cancellationToken);

    /// <summary>Begins a record.</summary>
    /// <param name="rig">Of which rig.</param>
    /// <param name="content">What is kept.</param>
    /// <param name="cancellationToken">Gives up, with nothing kept.</param>
    /// <returns>The record; null when there is no such rig, or it is removed.</returns>
    /// <exception cref="ArgumentException">A text is too long or not Unicode text.</exception>
    /// <exception cref="StorageException">The medium failed; nothing is kept.</exception>
    public Task<StoredAcceptance?> BeginAsync(Guid rig, AcceptanceContent content, CancellationToken cancellationToken = default)
    {
        Check(content);
        return _access.WriteAsync(
            async context =>
            {
                if (await context.Rigs.FindAsync([rig], cancellationToken) is null or { Removed: not null })
                    return null;
                var now = _clock.GetUtcNow();
                var row = new AcceptanceRow { Id = Guid.CreateVersion7(now), RigId = rig, Revision = 1, Begun = now.UtcTicks };
                Put(row, content);
                context.Acceptances.Add(row);
                await context.SaveChangesAsync(cancellationToken);
                return Show(row);
            },
            cancellationToken);
    }

    /// <summary>Changes a record that is not signed.</summary>
    /// <param name="id">Which record.</param>
    /// <param name="revision">The revision that the change started from.</param>
    /// <param name="content">What is kept from now on.</param>
    /// <param name="signs">Whether it is signed with it, and then stays as it is.</param>
    /// <param name="cancellationToken">Gives up, with nothing changed.</param>
    /// <exception cref="ArgumentException">A text is too long or not Unicode text.</exception>
    /// <exception cref="StorageException">The medium failed; nothing is changed.</exception>
    public Task<AcceptanceOutcome> SaveAsync(
        Guid id, long revision, AcceptanceContent content, bool signs, CancellationToken cancellationToken = default)
    {
        Check(content);
        return ChangeAsync(id, revision, row =>
        {
            Put(row, content);
            row.Revision++;
            row.Signed = signs ? row.Changed : null;
        }, cancellationToken);
    }

    /// <summary>Throws a record away that is not signed.</summary>
    /// <param name="id">Which record.</param>
    /// <param name="revision">The revision that the user sees.</param>
    /// <param name="cancellationToken">Gives up, with nothing changed.</param>
    /// <exception cref="StorageException">The medium failed; nothing is changed.</exception>
    public Task<AcceptanceOutcome> ThrowAwayAsync(Guid id, long revision, CancellationToken cancellationToken = default) =>
        ChangeAsync(id, revision, change: null, cancellationToken);

    private static void Check(AcceptanceContent content)
    {
        ArgumentNullException.ThrowIfNull(content);
        TextLimits.CheckWords(content.Version, nameof(content));
        TextLimits.CheckWords(content.Verdict, nameof(content));
        TextLimits.CheckText(content.RigText, nameof(content));
        TextLimits.CheckText(content.Readings, nameof(content));
    }

    private static StoredAcceptance Show(AcceptanceRow row) => new()
    {
        Id = row.Id,
        Rig = row.RigId,
        Revision = row.Revision,
        Begun = StoredRigEdits.Moment(row.Begun),
        Changed = StoredRigEdits.Moment(row.Changed),
        Signed = row.Signed is { } signed ? StoredRigEdits.Moment(signed) : null,
        Content = new AcceptanceContent(row.Version, TextPacking.Unpack(row.RigText), TextPacking.Unpack(row.Readings), row.Verdict),
    };

    /// <summary>Changes a row that is not signed and that nobody else has changed; without a change, deletes it.</summary>
    private Task<AcceptanceOutcome> ChangeAsync(
        Guid id, long revision, Action<AcceptanceRow>? change, CancellationToken cancellationToken) =>
        _access.WriteAsync(
            async context =>
            {
                if (await context.Acceptances.FindAsync([id], cancellationToken) is not { } row)
                    return new AcceptanceOutcome(SaveState.Gone, null);
                if (row.Signed is not null || row.Revision != revision)
                    return new AcceptanceOutcome(SaveState.Conflict, Show(row));
                if (change is null)
                    context.Acceptances.Remove(row);
                else
                    change(row);
                await context.SaveChangesAsync(cancellationToken);
                return new AcceptanceOutcome(SaveState.Saved, Show(row));
            },
            cancellationToken);

    private void Put(AcceptanceRow row, AcceptanceContent content)
    {
        row.Changed = _clock.GetUtcNow().UtcTicks;
        row.Version = content.Version;
        row.Verdict = content.Verdict;
        row.Readings = TextPacking.Pack(content.Readings);
        row.RigText = TextPacking.Pack(content.RigText);
    }
}
