using System.Collections.Immutable;
using Loadmark.Core.Gear;
using Loadmark.Storage.Entities;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Sessions;
using Microsoft.EntityFrameworkCore;

namespace Loadmark.Storage.Gear;

/// <summary>
/// The gear that a workshop knows, each piece with every change that was made of it. Nothing is ever lost: removing is a change too. Safe
/// to call from many threads at once. A change that has returned is on the disk.
/// </summary>
public sealed class GearLibrary
{
    private readonly Access _access;
    private readonly TimeProvider _clock;

    internal GearLibrary(Access access, TimeProvider clock, RigUses uses)
    {
        (_access, _clock) = (access, clock);
        Readings = new GearReadings(access, clock);
        Uses = new GearUses(access, clock, uses);
    }

    /// <summary>What was measured of loads.</summary>
    public GearReadings Readings { get; }

    /// <summary>Which rig has which gear.</summary>
    public GearUses Uses { get; }

    /// <summary>The library's count of changes: as long as it is the same, nothing has changed in any program.</summary>
    /// <param name="cancellationToken">Gives up.</param>
    /// <exception cref="StorageException">The medium failed.</exception>
    public Task<long> StampAsync(CancellationToken cancellationToken = default) =>
        _access.ReadAsync(context => ReadStampAsync(context, cancellationToken), cancellationToken);

    /// <summary>What has changed since a count of changes.</summary>
    /// <param name="stamp">The count; 0 for all there is.</param>
    /// <param name="cancellationToken">Gives up.</param>
    /// <exception cref="StorageException">The medium failed.</exception>
    public Task<GearNews> NewsAsync(long stamp, CancellationToken cancellationToken = default) =>
        _access.ReadAsync(
            async context =>
            {
                // The count first: what comes in between is then told once more the next time, and never missed.
                var now = await ReadStampAsync(context, cancellationToken);
                var isAll = stamp < await ReadAsync(context, CountRow.Restored, cancellationToken);
                var rows = await context.Gear.AsNoTracking().Where(gear => isAll || gear.Stamp > stamp).ToListAsync(cancellationToken);
                return new GearNews(now, [.. rows.Select(StoredGearChanges.Show)], isAll);
            },
            cancellationToken);

    /// <summary>One piece, removed or not; null when it never was.</summary>
    /// <param name="id">Which one.</param>
    /// <param name="cancellationToken">Gives up.</param>
    /// <exception cref="StorageException">The medium failed.</exception>
    public Task<StoredGear?> FindAsync(Guid id, CancellationToken cancellationToken = default) =>
        _access.ReadAsync(
            async context => await context.Gear.FindAsync([id], cancellationToken) is { } row ? StoredGearChanges.Show(row) : null,
            cancellationToken);

    /// <summary>The piece that has a tag, capitals aside; null when none has, or it was removed.</summary>
    /// <param name="kind">What sort of thing it is.</param>
    /// <param name="tag">The tag.</param>
    /// <param name="cancellationToken">Gives up.</param>
    /// <exception cref="StorageException">The medium failed.</exception>
    public Task<StoredGear?> FindAsync(GearKind kind, string tag, CancellationToken cancellationToken = default) =>
        _access.ReadAsync(
            async context => await FindRowAsync(context, kind, GearTag.KeyOf(tag), cancellationToken) is { } row
                ? StoredGearChanges.Show(row)
                : null,
            cancellationToken);

    /// <summary>Every change of a piece, the oldest first; empty when it never was.</summary>
    /// <param name="id">Which one.</param>
    /// <param name="cancellationToken">Gives up.</param>
    /// <exception cref="StorageException">The medium failed.</exception>
    public Task<ImmutableArray<GearChange>> HistoryAsync(Guid id, CancellationToken cancellationToken = default) =>
        _access.ReadAsync(
            async context =>
            {
                if (await context.Gear.FindAsync([id], cancellationToken) is not { } row)
                    return [];
                var changes = new List<GearChange>();
                GearContent? before = null;
                foreach (var change in await context.GearChanges.AsNoTracking()
                    .Where(change => change.GearId == id)
                    .OrderBy(change => change.Number)
                    .ToListAsync(cancellationToken))
                {
                    var after = StoredGearChanges.Show(row.Kind, change);
                    changes.Add(new GearChange(change.Number, change.What, History.StoredRigEdits.Moment(change.Made), before, after));
                    before = after;
                }

                return changes.ToImmutableArray();
            },
            cancellationToken);

    /// <summary>Adds a piece.</summary>
    /// <param name="content">What is said of it.</param>
    /// <param name="what">What the change does, for people: "from the rig Pit board".</param>
    /// <param name="cancellationToken">Gives up, with nothing added.</param>
    /// <exception cref="ArgumentException">A text is too long, or what stands in a list is not Unicode text.</exception>
    /// <exception cref="StorageException">The medium failed; nothing is added.</exception>
    public async Task<GearOutcome> AddAsync(GearContent content, string what, CancellationToken cancellationToken = default) =>
        (await ApplyAsync([new GearStep(null, 0, content, what)], cancellationToken))[0];

    /// <summary>Says something else of a piece. When that is what is said of it already, nothing is changed.</summary>
    /// <param name="id">Which one.</param>
    /// <param name="revision">The revision that the change started from.</param>
    /// <param name="content">What is to be said of it.</param>
    /// <param name="what">What the change does, for people.</param>
    /// <param name="cancellationToken">Gives up, with nothing changed.</param>
    /// <exception cref="ArgumentException">A text is too long, what stands in a list is not Unicode text, or it is of another
    /// kind.</exception>
    /// <exception cref="StorageException">The medium failed; nothing is changed.</exception>
    public async Task<GearOutcome> SaveAsync(
        Guid id, long revision, GearContent content, string what, CancellationToken cancellationToken = default) =>
        (await ApplyAsync([new GearStep(id, revision, content, what)], cancellationToken))[0];

    /// <summary>
    /// Makes several changes in one go. Those that cannot be made are told; the others are made, all of them or, when the medium fails,
    /// none.
    /// </summary>
    /// <param name="steps">The changes.</param>
    /// <param name="cancellationToken">Gives up, with nothing changed.</param>
    /// <returns>What became of each, in their order.</returns>
    /// <exception cref="ArgumentException">As for one change.</exception>
    /// <exception cref="StorageException">The medium failed; nothing is changed.</exception>
    public Task<ImmutableArray<GearOutcome>> ApplyAsync(IReadOnlyList<GearStep> steps, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(steps);
        foreach (var step in steps)
            ContentLimits.Check(step.Content, step.What);
        return _access.WriteAsync(context => new GearSteps(context, _clock).RunAsync(steps, cancellationToken), cancellationToken);
    }

    /// <summary>Removes a piece. It is kept with its changes, for <see cref="RestoreAsync"/>; its tag may go to another.</summary>
    /// <param name="id">Which one.</param>
    /// <param name="revision">The revision that the user sees.</param>
    /// <param name="cancellationToken">Gives up, with nothing changed.</param>
    /// <exception cref="StorageException">The medium failed; nothing is changed.</exception>
    public Task<GearOutcome> RemoveAsync(Guid id, long revision, CancellationToken cancellationToken = default) =>
        ChangeAsync(id, revision, static (gear, _, token) => gear.RemoveAsync("removed", token), cancellationToken);

    /// <summary>Brings a removed piece back. One that is not removed stays as it is.</summary>
    /// <param name="id">Which one.</param>
    /// <param name="cancellationToken">Gives up, with nothing changed.</param>
    /// <exception cref="StorageException">The medium failed; nothing is changed.</exception>
    public Task<GearOutcome> RestoreAsync(Guid id, CancellationToken cancellationToken = default) =>
        ChangeAsync(
            id,
            null,
            static (gear, _, token) =>
                gear.Row.IsRemoved ? gear.BecomeAsync(StoredGearChanges.Show(gear.Row).Content, "put back", token) : Task.CompletedTask,
            cancellationToken);

    /// <summary>
    /// Makes a piece as it was after one of its changes, which is a change again: nothing in between is lost. To take the last change
    /// back, put back the one before it.
    /// </summary>
    /// <param name="id">Which one.</param>
    /// <param name="revision">The revision that the user sees.</param>
    /// <param name="number">The number of the change. When there is none of that number, the piece stays as it is.</param>
    /// <param name="cancellationToken">Gives up, with nothing changed.</param>
    /// <exception cref="StorageException">The medium failed; nothing is changed.</exception>
    public Task<GearOutcome> PutBackAsync(Guid id, long revision, long number, CancellationToken cancellationToken = default) =>
        ChangeAsync(
            id,
            revision,
            async (gear, context, token) =>
            {
                if (await context.GearChanges.FindAsync([id, number], token) is not { } change)
                    return;
                if (StoredGearChanges.Show(gear.Row.Kind, change) is { } content)
                    await gear.BecomeAsync(content, $"as it was after change {number}", token);
                else if (!gear.Row.IsRemoved)
                    await gear.RemoveAsync($"removed, as it was after change {number}", token);
            },
            cancellationToken,
            whileRemoved: true);

    internal static Task<GearRow?> FindRowAsync(StorageContext context, GearKind kind, string key, CancellationToken cancellationToken) =>
        context.Gear.FirstOrDefaultAsync(gear => gear.Kind == kind && gear.TagKey == key, cancellationToken);

    private static Task<long> ReadStampAsync(StorageContext context, CancellationToken cancellationToken) =>
        ReadAsync(context, CountRow.Gear, cancellationToken);

    private static async Task<long> ReadAsync(StorageContext context, string name, CancellationToken cancellationToken) =>
        (await context.Counts.AsNoTracking().FirstOrDefaultAsync(count => count.Name == name, cancellationToken))?.Value ?? 0;

    private Task<GearOutcome> ChangeAsync(
        Guid id,
        long? revision,
        Func<StoredGearChanges, StorageContext, CancellationToken, Task> change,
        CancellationToken cancellationToken,
        bool whileRemoved = false) =>
        _access.WriteAsync(
            async context =>
            {
                if (await context.Gear.FindAsync([id], cancellationToken) is not { } row)
                    return new GearOutcome(GearState.Gone, null);
                if (revision is not null && row.IsRemoved && !whileRemoved)
                    return new GearOutcome(GearState.Gone, StoredGearChanges.Show(row));
                if (revision is not null && row.Revision != revision)
                    return new GearOutcome(GearState.Conflict, StoredGearChanges.Show(row));

                await change(new StoredGearChanges(context, row, _clock, new LibraryCount(context)), context, cancellationToken);
                if (row.TagKey is { } key
                    && await context.Gear.AsNoTracking()
                        .FirstOrDefaultAsync(
                            gear => gear.Kind == row.Kind && gear.TagKey == key && gear.Id != id, cancellationToken) is { } other)
                {
                    context.ChangeTracker.Clear();
                    return new GearOutcome(GearState.TagTaken, StoredGearChanges.Show(other));
                }

                await context.SaveChangesAsync(cancellationToken);
                return new GearOutcome(GearState.Saved, StoredGearChanges.Show(row));
            },
            cancellationToken);
}
