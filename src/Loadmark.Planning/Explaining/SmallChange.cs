using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Explaining;

/// <summary>One thing that could be added to a rig: a lead, or an outlet.</summary>
/// <param name="Name">What it is called, such as "reversing lead" or, of an outlet, "9 V 300 mA".</param>
/// <param name="Lead">The lead; null for an outlet.</param>
/// <param name="Outlet">The outlet, with a return of its own; null for a lead.</param>
internal sealed record SmallChange(string Name, Lead? Lead, Outlet? Outlet)
{
    private const int ShortChain = 2;

    /// <summary>Leads that could be added, the simpler first.</summary>
    public static IEnumerable<SmallChange> Leads { get; } =
    [
        new("reversing lead", new Lead { Id = "reversing lead", Type = LeadType.Reversing }, null),
        .. new[] { ShortChain, 3, 5 }.Select(static plugs => Chain(plugs)),
        new("series lead", new Lead { Id = "series lead", Type = LeadType.Series }, null),
        new("parallel lead", new Lead { Id = "parallel lead", Type = LeadType.Parallel }, null),
    ];

    /// <summary>
    /// How many dark loads one such thing more can feed at the most. Without it the loads that were on it go dark again: on an outlet as
    /// many as the longest lead has plugs for; on a chain all but one, which keeps the outlet over a plain lead.
    /// </summary>
    /// <param name="mostPlugs">The most loads that any lead of the rig, or of what is added, has plugs for.</param>
    public int MostFed(int mostPlugs) => Lead is null ? mostPlugs : Math.Max(1, Plugs - 1);

    /// <summary>How many loads the lead has plugs for; one for an outlet.</summary>
    public int Plugs => Lead?.LoadPlugs ?? 1;

    /// <summary>The outlet that a load lacks.</summary>
    /// <param name="load">The load.</param>
    /// <param name="headroom">The share of its limit that is to stay free, 0 to below 1.</param>
    public static SmallChange OutletFor(Load load, decimal headroom)
    {
        var (text, outlet) = MissingOutlet.For(load, headroom);
        return new SmallChange(text, null, outlet);
    }

    /// <summary>Several changes in words: "2 more reversing leads and one more outlet of 9 V 300 mA".</summary>
    public static string Words(IReadOnlyList<SmallChange> changes)
    {
        var leads = changes.Where(static change => change.Lead is not null).CountBy(static change => change.Name)
            .Select(static alike => alike.Value == 1 ? $"one more {alike.Key}" : $"{alike.Value} more {Plural(alike.Key)}");
        var outlets = changes.Where(static change => change.Outlet is not null).Select(static change => change.Name).ToList();
        List<string> parts = [.. leads, .. OutletWords(outlets)];
        return parts.Count == 1 ? parts[0] : $"{string.Join(", ", parts.Take(parts.Count - 1))} and {parts[^1]}";
    }

    /// <summary>A rig with changes made: leads on hand, and the outlets on a supply of their own.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="changes">What is added.</param>
    public static Rig Make(Rig rig, IReadOnlyList<SmallChange> changes)
    {
        var leads = rig.Leads.Items.ToList();
        foreach (var (lead, count) in changes.Select(static change => change.Lead).OfType<Lead>().CountBy(static lead => lead))
        {
            var id = Free(lead.Id, leads.Select(static other => other.Id));
            leads.Add(lead with { Id = id, Count = count == 1 ? null : count, ToBuy = true });
        }

        var outlets = changes.Select(static change => change.Outlet).OfType<Outlet>()
            .Select(static (outlet, index) => outlet with { Id = $"{index + 1}" }).ToList();
        var supplies = rig.Supplies.Items.ToList();
        if (outlets.Count > 0)
        {
            var id = Free("more", supplies.Select(static other => other.Id));
            supplies.Add(new Supply { Id = id, Isolated = true, ToBuy = true, Outlets = [.. outlets] });
        }

        return rig with { Leads = [.. leads], Supplies = [.. supplies] };
    }

    private static SmallChange Chain(int plugs) =>
        new($"daisy chain with {plugs} plugs", new Lead { Id = "chain", Type = LeadType.DaisyChain, Plugs = plugs }, null);

    private static string Plural(string name) =>
        name.StartsWith("daisy chain", StringComparison.Ordinal) ? name.Replace("chain", "chains", StringComparison.Ordinal) : $"{name}s";

    private static IEnumerable<string> OutletWords(List<string> outlets)
    {
        if (outlets.Count == 1)
            yield return $"one more outlet of {outlets[0]}";
        else if (outlets.Count > 1)
            yield return $"{outlets.Count} more outlets: {string.Join("; ", outlets.CountBy(static text => text).Select(Times))}";
    }

    private static string Times(KeyValuePair<string, int> alike) => alike.Value == 1 ? alike.Key : $"{alike.Value} × {alike.Key}";

    private static string Free(string name, IEnumerable<string> taken)
    {
        while (taken.Contains(name, StringComparer.Ordinal))
            name += "+";
        return name;
    }
}
