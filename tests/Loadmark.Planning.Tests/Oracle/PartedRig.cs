using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Tests.Oracle;

/// <summary>
/// Puts rigs together as one whose parts have little to do with one another, all plugs or all polarities of them known: each but the
/// first has plugs of its own, or the other polarity and no lead that reverses. All leads are on hand for all of them, so that they may vie for those.
/// </summary>
internal static class PartedRig
{
    /// <summary>Puts together; the first rig's mains and headroom count.</summary>
    public static Rig Of(IReadOnlyList<Rig> parts, bool byPolarity)
    {
        var rigs = parts.Select((part, place) => Rename(part, $"{(char)('A' + place)}")).ToList();
        if (byPolarity)
            rigs = [WithPolarities(rigs[0], static polarity => polarity), .. rigs.Skip(1).Select(static rig => WithPolarities(rig, Turn))];
        else
            rigs = [WithPlugs(rigs[0], static plug => plug ?? Plug.Common), .. rigs.Skip(1).Select(static (rig, place) => WithPlugs(rig, _ => new Plug($"{place + 3}.0x1.0")))];
        return rigs[0] with
        {
            Name = "Parts",
            Loads = [.. rigs.SelectMany(static rig => rig.Loads.Items)],
            Supplies = [.. rigs.SelectMany(static rig => rig.Supplies.Items)],
            Leads = [.. rigs.SelectMany(static rig => rig.Leads.Items).Where(lead => !byPolarity || lead.Type != LeadType.Reversing)],
            Signal = [.. rigs.SelectMany(static rig => rig.Signal.Items)],
            Wired = null,
        };
    }

    private static Rig Rename(Rig rig, string tag) => rig with
    {
        Loads = [.. rig.Loads.Items.Select(load => load with { Id = tag + load.Id })],
        Supplies = [.. rig.Supplies.Items.Select(supply => supply with { Id = tag + supply.Id })],
        Leads = [.. rig.Leads.Items.Select(lead => lead with { Id = $"{tag} {lead.Id}" })],
        Signal = [.. rig.Signal.Items.Select(word => rig.Loads.Items.Any(load => load.Id == word) ? tag + word : word)],
    };

    private static Rig WithPlugs(Rig rig, Func<Plug?, Plug> plugOf) => rig with
    {
        Loads = [.. rig.Loads.Items.Select(load => load with { Plug = plugOf(load.Plug ?? load.Label?.Plug.Value) })],
        Supplies = [.. rig.Supplies.Items.Select(supply => supply with { Outlets = [.. supply.Outlets.Items.Select(outlet => outlet with { Plug = plugOf(outlet.Plug ?? outlet.Label.Plug.Value) })] })],
    };

    private static Rig WithPolarities(Rig rig, Func<Polarity, Polarity> turn) => rig with
    {
        Loads = [.. rig.Loads.Items.Select(load => load with { Polarity = turn(load.Polarity ?? load.Label?.Polarity.Value ?? Polarity.CentreNegative) })],
        Supplies = [.. rig.Supplies.Items.Select(supply => supply with { Outlets = [.. supply.Outlets.Items.Select(outlet => outlet with { Polarity = turn(outlet.Polarity ?? outlet.Label.Polarity.Value ?? Polarity.CentreNegative) })] })],
    };

    private static Polarity Turn(Polarity polarity) =>
        polarity == Polarity.CentrePositive ? Polarity.CentreNegative : Polarity.CentrePositive;
}
