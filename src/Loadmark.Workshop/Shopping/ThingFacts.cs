using Loadmark.Core.Display;
using Loadmark.Core.Gear;
using Loadmark.Core.LeadLists;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Workshop.Shopping;

/// <summary>What is to be said of a thing to whoever sells it.</summary>
internal static class ThingFacts
{
    /// <summary>A supply: its name, what is printed on it, what its outlets give.</summary>
    public static IEnumerable<string> Of(Supply supply)
    {
        if (supply.Name is { } name)
            yield return name;
        if (supply.Label is { Text.Length: > 0 } label)
            yield return label.Text;
        yield return string.Join(" | ", OutletsOf(supply));
        List<string> more =
        [
            .. supply.Total is { } total ? [$"{total} in all"] : (string[])[],
            .. supply.Isolated is true ? ["isolated outlets"] : (string[])[],
            .. supply.Mains is { } mains ? [$"mains {mains.Text}"] : (string[])[],
        ];
        if (more.Count > 0)
            yield return string.Join(", ", more);
    }

    /// <summary>A lead that the rig lists: what it says of it.</summary>
    public static IEnumerable<string> Of(Lead lead)
    {
        var facts = new List<string> { TypeOf(lead) };
        if (lead.Plugs is { } plugs and > 1)
            facts.Add($"{plugs} plugs");
        if (lead.Length is { } length)
            facts.Add($"{length} long");
        if (lead.Tail is { } tail)
            facts.Add($"tail {tail}");
        if (lead.Pitch is { } pitch)
            facts.Add($"{pitch} from plug to plug");
        if (lead.Wire is { } wire)
            facts.Add($"{wire}");
        if (lead.Plug is { } plug)
            facts.Add($"plug at the load {plug.Name}");
        yield return string.Join(", ", facts);
    }

    /// <summary>Plain leads of the wiring that the rig does not list, all of one kind.</summary>
    public static IEnumerable<string> Of(IReadOnlyCollection<ListedLead> leads)
    {
        var lead = leads.First();
        var ends = string.Join(" and ", lead.Feed.Outlets.Select(static outlet => PlugOf(outlet.Rating.Plug)));
        yield return $"{ends} to {PlugOf(lead.Point.Plug)}, the same polarity at both ends";
        var numbers = string.Join(", ", leads.Select(static one => one.Number));
        yield return $"{(leads.Count == 1 ? "lead" : "leads")} {numbers} of the lead list";
    }

    /// <summary>What a lead is.</summary>
    public static string TypeOf(Lead lead) => LeadNames.Of(lead.Type);

    /// <summary>What an outlet gives, its settings parted by semicolons: equal for outlets that give the same.</summary>
    public static string ModesOf(OutletRating outlet) => string.Join("; ", outlet.Modes.Select(static mode => string.Join(
        ' ',
        ((string?[])[
            FigureDisplay.Printed(mode.Volts),
            mode.Limit is { } limit ? FigureDisplay.Printed<Core.Quantities.Ampere>(limit.Value) : null,
            mode.Power is { } power ? FigureDisplay.Printed<Core.Quantities.Watt>(power) : null,
        ]).OfType<string>())));

    /// <summary>The outlets with what they give, those in a row that give the same together.</summary>
    private static IEnumerable<string> OutletsOf(Supply supply)
    {
        var outlets = supply.Outlets.Items.Select(outlet => (outlet.Id, Gives: ModesOf(OutletRating.Of(supply, outlet)))).ToList();
        for (var first = 0; first < outlets.Count;)
        {
            var last = first;
            while (last + 1 < outlets.Count && outlets[last + 1].Gives == outlets[first].Gives)
                last++;
            var ids = first == last ? outlets[first].Id : $"{outlets[first].Id} to {outlets[last].Id}";
            yield return $"{ids}: {outlets[first].Gives}";
            first = last + 1;
        }
    }

    private static string PlugOf(Figure<Plug> plug) =>
        plug.IsKnown ? $"{(plug.IsAssumed ? "~ " : "")}{plug.Value.Name}" : "a plug that is not known";
}
