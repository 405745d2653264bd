using Loadmark.Core.Rigs;
using Loadmark.Files.Keys;

namespace Loadmark.Files.Merging;

/// <summary>Brings two edits of one load, supply, outlet or lead together, field by field.</summary>
internal sealed class GearMerge(FieldMerge fields)
{
    public Load Of(Load before, Load ours, Load theirs)
    {
        var place = new MergePlace(MergePart.Load, ours.Id, "from");
        var given = fields.Pick(place, before.FromLibrary, ours.FromLibrary, theirs.FromLibrary);
        return Fields(LoadKeys.Table, MergePart.Load, ours.Id, before, ours, theirs) with { FromLibrary = given };
    }

    public Supply Of(Supply before, Supply ours, Supply theirs)
    {
        var outlets = ListMerge.Of(
            fields, before.Outlets, ours.Outlets, theirs.Outlets, static outlet => outlet.Id,
            id => new MergePlace(MergePart.Outlet, $"{ours.Id}/{id}", ""), new MergePlace(MergePart.Supply, ours.Id, "order"),
            (b, o, t) => Fields(OutletKeys.Table, MergePart.Outlet, $"{ours.Id}/{o.Id}", b, o, t));
        var banks = ListMerge.Of(
            fields, before.Banks, ours.Banks, theirs.Banks, static bank => bank.Name,
            name => new MergePlace(MergePart.Bank, $"{ours.Id}, {name}", ""), new MergePlace(MergePart.Bank, ours.Id, "order"),
            (b, o, t) => o with
            {
                Total = fields.Pick(new MergePlace(MergePart.Bank, $"{ours.Id}, {o.Name}", "total"), b.Total, o.Total, t.Total),
            });
        var place = new MergePlace(MergePart.Supply, ours.Id, "from");
        var given = fields.Pick(place, before.FromLibrary, ours.FromLibrary, theirs.FromLibrary);
        return Fields(SupplyKeys.Table, MergePart.Supply, ours.Id, before, ours, theirs) with
        {
            FromLibrary = given,
            Outlets = outlets,

            // One took its last outlet away: a file with such a bank is refused.
            Banks = [.. banks.Items.Where(bank => outlets.Items.Any(outlet => outlet.Bank == bank.Name))],
        };
    }

    public Lead Of(Lead before, Lead ours, Lead theirs) => Fields(LeadKeys.Table, MergePart.Lead, ours.Id, before, ours, theirs);

    private T Fields<T>(FieldTable<T> table, MergePart part, string subject, T before, T ours, T theirs)
    {
        foreach (var field in table.Fields)
        {
            var place = new MergePlace(part, subject, field.Name);
            var value = fields.Pick(place, field.ValueOf(before), field.ValueOf(ours), field.ValueOf(theirs));
            ours = field.With(ours, value);
        }

        return ours;
    }
}
