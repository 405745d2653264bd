using Loadmark.Core.Rigs;

namespace Loadmark.Files.Merging;

/// <summary>Brings two edits of one load, supply, outlet or lead together, field by field.</summary>
internal sealed class GearMerge(FieldMerge fields)
{
    public Load Of(Load before, Load ours, Load theirs)
    {
        return ours with
        {
            FromLibrary = Pick("from", static load => load.FromLibrary),
            Name = Pick("name", static load => load.Name),
            Kind = Pick("kind", static load => load.Kind),
            Label = Pick("label", static load => load.Label),
            Voltage = Pick("voltage", static load => load.Voltage),
            Current = Pick("current", static load => load.Current),
            Watts = Pick("watts", static load => load.Watts),
            Run = Pick("run", static load => load.Run),
            Start = Pick("start", static load => load.Start),
            Polarity = Pick("polarity", static load => load.Polarity),
            Plug = Pick("plug", static load => load.Plug),
            Ground = Pick("ground", static load => load.Ground),
            Isolate = Pick("isolate", static load => load.Isolate),
            Draws = Pick("draws", static load => load.Draws),
            StartsBelow = Pick("starts_below", static load => load.StartsBelow),
            StopsBelow = Pick("stops_below", static load => load.StopsBelow),
            InputCapacitance = Pick("input_capacitance", static load => load.InputCapacitance),
            Priority = Pick("priority", static load => load.Priority),
        };

        T Pick<T>(string field, Func<Load, T> of) => fields.Pick(new MergePlace(MergePart.Load, ours.Id, field), of(before), of(ours), of(theirs));
    }

    public Supply Of(Supply before, Supply ours, Supply theirs)
    {
        var outlets = ListMerge.Of(
            fields, before.Outlets, ours.Outlets, theirs.Outlets, static outlet => outlet.Id,
            id => new MergePlace(MergePart.Outlet, $"{ours.Id}/{id}", ""), new MergePlace(MergePart.Supply, ours.Id, "order"), (b, o, t) => Of(ours.Id, b, o, t));
        var banks = ListMerge.Of(
            fields, before.Banks, ours.Banks, theirs.Banks, static bank => bank.Name,
            name => new MergePlace(MergePart.Bank, $"{ours.Id}, {name}", ""), new MergePlace(MergePart.Bank, ours.Id, "order"),
            (b, o, t) => o with { Total = fields.Pick(new MergePlace(MergePart.Bank, $"{ours.Id}, {o.Name}", "total"), b.Total, o.Total, t.Total) });
        return ours with
        {
            FromLibrary = Pick("from", static supply => supply.FromLibrary),
            Name = Pick("name", static supply => supply.Name),
            Label = Pick("label", static supply => supply.Label),
            Isolated = Pick("isolated", static supply => supply.Isolated),
            Total = Pick("total", static supply => supply.Total),
            Outlets = outlets,

            // One took its last outlet away: a file with such a bank is refused.
            Banks = [.. banks.Items.Where(bank => outlets.Items.Any(outlet => outlet.Bank == bank.Name))],
            Overload = Pick("overload", static supply => supply.Overload),
            Regulated = Pick("regulated", static supply => supply.Regulated),
            Mains = Pick("mains", static supply => supply.Mains),
        };

        T Pick<T>(string field, Func<Supply, T> of) => fields.Pick(new MergePlace(MergePart.Supply, ours.Id, field), of(before), of(ours), of(theirs));
    }

    public Lead Of(Lead before, Lead ours, Lead theirs)
    {
        return ours with
        {
            Type = Pick("type", static lead => lead.Type),
            Length = Pick("length", static lead => lead.Length),
            Tail = Pick("tail", static lead => lead.Tail),
            Pitch = Pick("pitch", static lead => lead.Pitch),
            Plugs = Pick("plugs", static lead => lead.Plugs),
            Wire = Pick("wire", static lead => lead.Wire),
            Ohms = Pick("ohms", static lead => lead.Ohms),
            ContactOhms = Pick("contact_ohms", static lead => lead.ContactOhms),
            Plug = Pick("plug", static lead => lead.Plug),
            Count = Pick("count", static lead => lead.Count),
        };

        T Pick<T>(string field, Func<Lead, T> of) => fields.Pick(new MergePlace(MergePart.Lead, ours.Id, field), of(before), of(ours), of(theirs));
    }

    private Outlet Of(string supply, Outlet before, Outlet ours, Outlet theirs)
    {
        return ours with
        {
            Label = Pick("label", static outlet => outlet.Label),
            Isolated = Pick("isolated", static outlet => outlet.Isolated),
            Bank = Pick("bank", static outlet => outlet.Bank),
            Polarity = Pick("polarity", static outlet => outlet.Polarity),
            Plug = Pick("plug", static outlet => outlet.Plug),
            SourceOhms = Pick("source_ohms", static outlet => outlet.SourceOhms),
            Surge = Pick("surge", static outlet => outlet.Surge),
            NoLoad = Pick("no_load", static outlet => outlet.NoLoad),
        };

        T Pick<T>(string field, Func<Outlet, T> of) => fields.Pick(new MergePlace(MergePart.Outlet, $"{supply}/{ours.Id}", field), of(before), of(ours), of(theirs));
    }
}
