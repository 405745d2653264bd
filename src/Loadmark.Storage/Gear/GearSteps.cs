using System.Collections.Immutable;
using Loadmark.Core.Gear;
using Loadmark.Storage.Entities;
using Microsoft.EntityFrameworkCore;

namespace Loadmark.Storage.Gear;

/// <summary>Makes several changes of the library within one transaction; an instance serves once.</summary>
internal sealed class GearSteps(StorageContext context, TimeProvider clock)
{
    /// <summary>From so many on it is quicker to know all tags beforehand than to ask for each.</summary>
    private const int Many = 50;

    private readonly LibraryCount _count = new(context);
    private readonly Dictionary<(GearKind, string), Guid> _tags = [];
    private bool _knowsAllTags;

    public async Task<ImmutableArray<GearOutcome>> RunAsync(IReadOnlyList<GearStep> steps, CancellationToken cancellationToken)
    {
        if (steps.Count >= Many)
            await LearnTagsAsync(cancellationToken);
        var outcomes = ImmutableArray.CreateBuilder<GearOutcome>(steps.Count);
        foreach (var step in steps)
            outcomes.Add(await TakeAsync(step, cancellationToken));
        await context.SaveChangesAsync(cancellationToken);
        return outcomes.MoveToImmutable();
    }

    private async Task<GearOutcome> TakeAsync(GearStep step, CancellationToken cancellationToken)
    {
        var row = step.Id is { } id ? await context.Gear.FindAsync([id], cancellationToken) : null;
        if (step.Id is not null)
        {
            if (row is null)
                return new GearOutcome(GearState.Gone, null);
            if (row.Kind != step.Content.Kind)
                throw new ArgumentException("Gear stays of the kind that it is.", nameof(step));
            if (row.IsRemoved || row.Revision != step.Revision)
                return new GearOutcome(row.IsRemoved ? GearState.Gone : GearState.Conflict, StoredGearChanges.Show(row));
            if (StoredGearChanges.Show(row).Content == step.Content)
                return new GearOutcome(GearState.Saved, StoredGearChanges.Show(row));
        }

        var key = (step.Content.Kind, GearTag.KeyOf(step.Content.Tag));
        if (await OwnerOfAsync(key, cancellationToken) is { } owner && owner != step.Id)
            return new GearOutcome(GearState.TagTaken, StoredGearChanges.Show((await context.Gear.FindAsync([owner], cancellationToken))!));
        if (row is null)
            context.Gear.Add(row = new GearRow { Id = Guid.CreateVersion7(clock.GetUtcNow()), Kind = step.Content.Kind });
        else
            _tags.Remove((row.Kind, row.TagKey!));
        await new StoredGearChanges(context, row, clock, _count).BecomeAsync(step.Content, step.What, cancellationToken);
        _tags[key] = row.Id;
        return new GearOutcome(GearState.Saved, StoredGearChanges.Show(row));
    }

    private async Task<Guid?> OwnerOfAsync((GearKind Kind, string Tag) key, CancellationToken cancellationToken)
    {
        if (_tags.TryGetValue(key, out var owner))
            return owner;
        return _knowsAllTags ? null : (await GearLibrary.FindRowAsync(context, key.Kind, key.Tag, cancellationToken))?.Id;
    }

    private async Task LearnTagsAsync(CancellationToken cancellationToken)
    {
        foreach (var gear in await context.Gear.Where(gear => gear.TagKey != null)
            .Select(gear => new { gear.Kind, gear.TagKey, gear.Id })
            .ToListAsync(cancellationToken))
            _tags[(gear.Kind, gear.TagKey!)] = gear.Id;
        _knowsAllTags = true;
    }
}
