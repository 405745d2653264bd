using System.Collections.Immutable;
using Loadmark.Core.Gear;
using Loadmark.Storage.Entities;
using Loadmark.Storage.Faults;
using Loadmark.Storage.History;
using Loadmark.Storage.Rigs;
using Loadmark.Storage.Sessions;
using Microsoft.EntityFrameworkCore;

namespace Loadmark.Storage.Gear;

/// <summary>Which rig has which gear. Rigs that an older program saved are read before an answer.</summary>
public sealed class GearUses
{
    /// <summary>How many rigs are read at a time, so that saving need not wait long.</summary>
    private const int AtATime = 100;

    private readonly Access _access;
    private readonly TimeProvider _clock;
    private readonly RigUses _uses;

    internal GearUses(Access access, TimeProvider clock, RigUses uses) => (_access, _clock, _uses) = (access, clock, uses);

    /// <summary>The rigs that have a piece of gear, with their texts, the last changed first. Removed rigs are not among them.</summary>
    /// <param name="kind">What sort of thing it is.</param>
    /// <param name="tag">Its tag, capitals aside.</param>
    /// <param name="cancellationToken">Gives up.</param>
    /// <exception cref="StorageException">The medium failed.</exception>
    public async Task<ImmutableArray<RigText>> RigsWithAsync(GearKind kind, string tag, CancellationToken cancellationToken = default)
    {
        var key = GearTag.KeyOf(tag);
        await CatchUpAsync(cancellationToken);
        return await _access.ReadAsync(
            async context =>
            {
                var rows = await context.GearUses
                    .Where(use => use.Kind == kind && use.TagKey == key)
                    .Join(context.Rigs, use => use.RigId, rig => rig.Id, (_, rig) => rig)
                    .Where(rig => rig.Removed == null)
                    .OrderByDescending(rig => rig.Changed).ThenBy(rig => rig.Id)
                    .AsNoTracking()
                    .ToListAsync(cancellationToken);
                return rows.Select(
                    row => new RigText(
                        new RigSummary(row.Id, row.Name, StoredRigEdits.Moment(row.Changed), row.Revision),
                        TextPacking.Unpack(row.Text))).ToImmutableArray();
            },
            cancellationToken);
    }

    /// <summary>
    /// How many rigs have each piece of gear that any has, by kind and <see cref="GearTag.KeyOf"/>. Removed rigs are not counted.
    /// </summary>
    /// <param name="cancellationToken">Gives up.</param>
    /// <exception cref="StorageException">The medium failed.</exception>
    public async Task<IReadOnlyDictionary<(GearKind Kind, string TagKey), int>> CountAsync(CancellationToken cancellationToken = default)
    {
        await CatchUpAsync(cancellationToken);
        return await _access.ReadAsync(
            async context =>
            {
                var counts = await context.GearUses
                    .Where(use => context.Rigs.Any(rig => rig.Id == use.RigId && rig.Removed == null))
                    .GroupBy(use => new { use.Kind, use.TagKey })
                    .Select(group => new { group.Key.Kind, group.Key.TagKey, Count = group.Count() })
                    .ToListAsync(cancellationToken);
                return (IReadOnlyDictionary<(GearKind, string), int>)counts.ToDictionary(
                    count => (count.Kind, count.TagKey), count => count.Count);
            },
            cancellationToken);
    }

    /// <summary>The rigs for which somebody has decided already what a piece's change means for them.</summary>
    /// <param name="gear">Which piece.</param>
    /// <param name="revision">Its revision.</param>
    /// <param name="cancellationToken">Gives up.</param>
    /// <returns>The rigs, and whether each takes what is new; else it keeps what it had.</returns>
    /// <exception cref="StorageException">The medium failed.</exception>
    public Task<IReadOnlyDictionary<Guid, bool>> DecisionsAsync(Guid gear, long revision, CancellationToken cancellationToken = default) =>
        _access.ReadAsync<IReadOnlyDictionary<Guid, bool>>(
            async context => await context.GearDecisions.AsNoTracking()
                .Where(decision => decision.GearId == gear && decision.Revision == revision)
                .ToDictionaryAsync(decision => decision.RigId, decision => decision.TakesNew, cancellationToken),
            cancellationToken);

    /// <summary>Remembers what somebody decided for a rig when a piece was changed. A later change of the piece asks again.</summary>
    /// <param name="rig">Which rig.</param>
    /// <param name="gear">Which piece.</param>
    /// <param name="revision">The revision of the piece that it is about.</param>
    /// <param name="takesNew">Whether the rig takes what is new; else it keeps what it had.</param>
    /// <param name="cancellationToken">Gives up, with nothing changed.</param>
    /// <returns>Whether there are such a rig and such a piece.</returns>
    /// <exception cref="StorageException">The medium failed; nothing is changed.</exception>
    public Task<bool> DecideAsync(Guid rig, Guid gear, long revision, bool takesNew, CancellationToken cancellationToken = default) =>
        _access.WriteAsync(
            async context =>
            {
                if (await context.Rigs.FindAsync([rig], cancellationToken) is null
                    || await context.Gear.FindAsync([gear], cancellationToken) is null)
                    return false;
                if (await context.GearDecisions.FindAsync([gear, rig], cancellationToken) is not { } decision)
                    context.GearDecisions.Add(decision = new GearDecisionRow { GearId = gear, RigId = rig });
                (decision.Revision, decision.TakesNew, decision.Made) = (revision, takesNew, _clock.GetUtcNow().UtcTicks);
                await context.SaveChangesAsync(cancellationToken);
                return true;
            },
            cancellationToken);

    /// <summary>Reads the rigs whose text is of another revision than their uses were found from.</summary>
    private async Task CatchUpAsync(CancellationToken cancellationToken)
    {
        while (_uses.IsKnown && await _access.ReadAsync(context => Behind(context).AnyAsync(cancellationToken), cancellationToken))
        {
            await _access.WriteAsync(
                async context =>
                {
                    foreach (var rig in await Behind(context).OrderBy(rig => rig.Id).Take(AtATime).ToListAsync(cancellationToken))
                        await _uses.FindAgainAsync(context, rig, TextOf(rig), cancellationToken);
                    return await context.SaveChangesAsync(cancellationToken);
                },
                cancellationToken);
        }
    }

    private static IQueryable<RigRow> Behind(StorageContext context) =>
        context.Rigs.Where(rig => rig.Removed == null && rig.UsesRevision != rig.Revision);

    /// <summary>One rig whose text is damaged is no reason to say nothing of the others; opening it tells.</summary>
    private static string TextOf(RigRow rig)
    {
        try
        {
            return TextPacking.Unpack(rig.Text);
        }
        catch (InvalidDataException)
        {
            return "";
        }
    }
}
