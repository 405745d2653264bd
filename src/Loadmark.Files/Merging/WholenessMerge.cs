using Loadmark.Core.Rigs;

namespace Loadmark.Files.Merging;

/// <summary>
/// Sees to it that a merged rig refers only to what it has: where one side took away a lead or an outlet that the other side now uses, the
/// two meet there.
/// </summary>
internal sealed class WholenessMerge(FieldMerge fields, Rig before, Rig ours, Rig theirs)
{
    /// <summary>The rig made whole.</summary>
    public Rig Of(Rig rig)
    {
        if (rig.Wired is not { } wired)
            return rig;
        var feeds = new List<Feed>();
        foreach (var feed in wired)
        {
            if (feed.From.Items.All(outlet => HasOutlet(ref rig, outlet)))
                feeds.Add(feed.Lead is not { } lead || HasLead(ref rig, lead) ? feed : feed with { Lead = null });
        }

        return rig with { Wired = [.. feeds] };
    }

    private bool HasLead(ref Rig rig, string id)
    {
        if (Find(rig) is not null)
            return true;
        var (mine, other) = (Find(ours), Find(theirs));
        var side = fields.Choose(new MergePlace(MergePart.Lead, id, ""), Find(before), mine, other);
        if ((side == MergeSide.Ours ? mine : other) is not { } kept)
            return false;
        rig = rig with { Leads = [.. rig.Leads, kept] };
        return true;

        Lead? Find(Rig from) => from.Leads.Items.FirstOrDefault(lead => lead.Id == id);
    }

    private bool HasOutlet(ref Rig rig, OutletRef outlet)
    {
        if (OutletIn(rig, outlet) is not null)
            return true;
        if (SupplyIn(rig, outlet) is { } supply)
        {
            var (mine, other) = (OutletIn(ours, outlet), OutletIn(theirs, outlet));
            var side = fields.Choose(new MergePlace(MergePart.Outlet, $"{outlet}", ""), OutletIn(before, outlet), mine, other);
            if ((side == MergeSide.Ours ? mine : other) is not { } kept)
                return false;
            rig = rig with
            {
                Supplies = new ValueList<Supply>(rig.Supplies.Items.Replace(supply, supply with { Outlets = [.. supply.Outlets, kept] })),
            };
        }
        else
        {
            var (mine, other) = (SupplyIn(ours, outlet), SupplyIn(theirs, outlet));
            var side = fields.Choose(new MergePlace(MergePart.Supply, outlet.Supply, ""), SupplyIn(before, outlet), mine, other);
            if ((side == MergeSide.Ours ? mine : other) is not { } kept)
                return false;
            rig = rig with { Supplies = [.. rig.Supplies, kept] };
        }

        return OutletIn(rig, outlet) is not null;
    }

    private static Supply? SupplyIn(Rig rig, OutletRef outlet) => rig.Supplies.Items.FirstOrDefault(supply => supply.Id == outlet.Supply);

    private static Outlet? OutletIn(Rig rig, OutletRef outlet) =>
        SupplyIn(rig, outlet)?.Outlets.Items.FirstOrDefault(one => one.Id == outlet.Outlet);
}
