using Loadmark.Core.Rigs;

namespace Loadmark.Files.Merging;

/// <summary>Brings two edits together that began from the same rig: by what each changed, field by field.</summary>
public static class RigMerge
{
    /// <summary>The rig after both edits.</summary>
    /// <param name="before">The rig that both began from.</param>
    /// <param name="ours">The rig after our edit.</param>
    /// <param name="theirs">The rig after the other edit.</param>
    /// <param name="choices">Which side counts where both changed the same; ours where nothing is said, or for null.</param>
    /// <returns>
    /// The rig, and where both changed the same to something else. What one side changed and the other left is in it without a question. It
    /// refers only to what it has; whether every setting fits what the labels then say is for the reader of rig files to tell.
    /// </returns>
    public static MergeResult Merge(Rig before, Rig ours, Rig theirs, IReadOnlyDictionary<MergePlace, MergeSide>? choices = null)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(ours);
        ArgumentNullException.ThrowIfNull(theirs);
        var fields = new FieldMerge(choices ?? new Dictionary<MergePlace, MergeSide>());
        var gear = new GearMerge(fields);
        var wiring = new WiringMerge(fields, before, ours, theirs);

        var rig = new Rig
        {
            Name = fields.Pick(Whole("rig"), before.Name, ours.Name, theirs.Name),
            Mains = fields.Pick(Whole("mains"), before.Mains, ours.Mains, theirs.Mains),
            Headroom = fields.Pick(Whole("headroom"), before.Headroom, ours.Headroom, theirs.Headroom),
            Loads = ListMerge.Of(
                fields, before.Loads, ours.Loads, theirs.Loads, static load => load.Id,
                static id =>
                    new MergePlace(MergePart.Load, id, ""), new MergePlace(MergePart.Load, "", "order"), gear.Of, wiring.IsRewired),
            Supplies = ListMerge.Of(
                fields, before.Supplies, ours.Supplies, theirs.Supplies, static supply => supply.Id,
                static id => new MergePlace(MergePart.Supply, id, ""), new MergePlace(MergePart.Supply, "", "order"), gear.Of),
            Leads = ListMerge.Of(
                fields, before.Leads, ours.Leads, theirs.Leads, static lead => lead.Id,
                static id => new MergePlace(MergePart.Lead, id, ""), new MergePlace(MergePart.Lead, "", "order"), gear.Of),
            Signal = SignalMerge.Of(fields, before.Signal, ours.Signal, theirs.Signal),
        };
        rig = new WholenessMerge(fields, before, ours, theirs).Of(rig with { Wired = wiring.Of(rig.Loads) });
        return new MergeResult(rig, [.. fields.Conflicts], [.. fields.Ours], [.. fields.Theirs]);
    }

    private static MergePlace Whole(string field) => new(MergePart.Rig, "", field);
}
