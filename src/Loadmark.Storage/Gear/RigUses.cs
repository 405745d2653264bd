using Loadmark.Core.Gear;
using Loadmark.Storage.Entities;
using Microsoft.EntityFrameworkCore;

namespace Loadmark.Storage.Gear;

/// <summary>Keeps the list of which rig has which gear in step with the rigs' texts, within the transaction that changes them.</summary>
/// <param name="mentions">Names the gear of a text; null where nobody has said how, and then the list is left as it is.</param>
internal sealed class RigUses(GearMentions? mentions)
{
    /// <summary>Whether there is anything to be done with.</summary>
    public bool IsKnown => mentions is not null;

    /// <summary>Finds the uses of one rig again.</summary>
    /// <param name="context">The transaction's.</param>
    /// <param name="rig">The rig, at the revision that is to be saved.</param>
    /// <param name="text">Its text.</param>
    /// <param name="cancellationToken">Gives up.</param>
    public async Task FindAgainAsync(StorageContext context, RigRow rig, string text, CancellationToken cancellationToken)
    {
        if (mentions is null)
            return;
        rig.UsesRevision = rig.Revision;
        if (mentions(text) is not { } found)
            return;
        var wanted = found.Select(static mention => (mention.Kind, TagKey: GearTag.KeyOf(mention.Tag))).ToHashSet();
        foreach (var use in await context.GearUses.Where(use => use.RigId == rig.Id).ToListAsync(cancellationToken))
        {
            if (!wanted.Remove((use.Kind, use.TagKey)))
                context.GearUses.Remove(use);
        }

        context.GearUses.AddRange(wanted.Select(use => new GearUseRow { RigId = rig.Id, Kind = use.Kind, TagKey = use.TagKey }));
    }
}
