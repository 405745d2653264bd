using Loadmark.Core.Offers;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Workshop.Shopping;

/// <summary>
/// Finds what is to be bought on a price list. Only what surely is that thing is taken: a line of the same tag or name of which nothing
/// speaks against it. What merely would do is no price of it.
/// </summary>
/// <param name="offers">The price list.</param>
internal sealed class PriceBook(IReadOnlyList<Offer> offers)
{
    private readonly Dictionary<string, Offer> _byId = offers.ToDictionary(static offer => offer.Id, StringComparer.Ordinal);
    private readonly Dictionary<string, int> _left = new(StringComparer.Ordinal);

    /// <summary>Finds a supply.</summary>
    /// <param name="supply">The supply as the rig has it.</param>
    /// <param name="remark">Why there is no price; null where there is one.</param>
    public PricedOffer? Find(Supply supply, out string? remark) =>
        Find(
            supply.Id,
            supply.Name,
            offer => offer is SupplyOffer { Supply: var offered } ? Against(supply, offered) : "a lead",
            out remark);

    /// <summary>Finds a lead.</summary>
    /// <param name="lead">The lead as the rig has it.</param>
    /// <param name="remark">Why there is no price; null where there is one.</param>
    public PricedOffer? Find(Lead lead, out string? remark) =>
        Find(lead.Id, null, offer => offer is LeadOffer { Lead: var offered } ? Against(lead, offered) : "a supply", out remark);

    /// <summary>Takes so many of an offer off what the list has of it.</summary>
    /// <param name="offer">The offer.</param>
    /// <param name="count">How many are wanted.</param>
    /// <returns>How many there were.</returns>
    public int Take(Offer offer, int count)
    {
        if (offer is not LeadOffer { Available: { } available })
            return count;
        var left = _left.GetValueOrDefault(offer.Id, available);
        var taken = Math.Min(left, count);
        _left[offer.Id] = left - taken;
        return taken;
    }

    private PricedOffer? Find(string id, string? name, Func<Offer, string?> against, out string? remark)
    {
        remark = null;
        var (line, how) = Named(id) is { } tagged ? (tagged, "same tag")
            : name is not null && Named(name) is { } named ? (named, "same name")
            : (null, "");
        if (line is null)
            return null;
        if (against(line) is not { } difference)
            return new PricedOffer(line, how);
        remark = $"the list's {line.Id} is another: {difference}";
        return null;
    }

    /// <summary>
    /// The line of a name, or of the name that a plan to buy was made from: it numbers what it takes several of (<c>brick-4#2</c>), and
    /// adds a <c>+</c> where the rig has the name already.
    /// </summary>
    private Offer? Named(string name)
    {
        if (_byId.TryGetValue(name, out var exact))
            return exact;
        var plain = name.TrimEnd('+');
        if (_byId.TryGetValue(plain, out var renamed))
            return renamed;
        var mark = plain.LastIndexOf('#');
        return mark > 0 && mark < plain.Length - 1 && plain.AsSpan(mark + 1).ContainsAnyExceptInRange('0', '9') is false
            ? _byId.GetValueOrDefault(plain[..mark])
            : null;
    }

    /// <summary>What speaks against a supply and a line being the same thing, of the line; null where nothing does.</summary>
    private static string? Against(Supply supply, Supply offered)
    {
        if (supply.Outlets.Count != offered.Outlets.Count)
            return offered.Outlets.Count == 1 ? "1 outlet" : $"{offered.Outlets.Count} outlets";
        for (var place = 0; place < supply.Outlets.Count; place++)
        {
            var (one, other) = (OutletRating.Of(supply, supply.Outlets[place]), OutletRating.Of(offered, offered.Outlets[place]));
            var (gives, offers) = (ThingFacts.ModesOf(one), ThingFacts.ModesOf(other));
            if (gives != offers)
                return $"outlet {other.Outlet.Id} gives {offers}";
            if (Differ(one.Form, other.Form))
                return $"outlet {other.Outlet.Id} gives another kind of current";
            if (Differ(one.Polarity, other.Polarity))
                return $"outlet {other.Outlet.Id} has the other polarity";
            if (Differ(one.Plug, other.Plug))
                return $"outlet {other.Outlet.Id} has a plug {other.Plug.Value.Name}";
        }

        if (Differ(supply.IsolatedAsStated, offered.IsolatedAsStated))
            return offered.IsolatedAsStated is true ? "isolated outlets" : "outlets that are not isolated";
        var (mine, listed) = (SupplyRating.Of(supply), SupplyRating.Of(offered));
        if (mine.Total is { } total && listed.Total is { } said && (Differ(total.Amps, said.Amps) || Differ(total.Watts, said.Watts)))
            return $"{said} in all";
        return Differ(mine.Mains?.Volts, listed.Mains?.Volts) ? $"for mains of {listed.Mains!.Volts}" : null;
    }

    private static string? Against(Lead lead, Lead offered) =>
        lead.Type != offered.Type ? ThingFacts.TypeOf(offered)
        : Differ(lead.LoadPlugs, offered.LoadPlugs) ? $"{offered.LoadPlugs} plugs"
        : Differ(lead.Plug, offered.Plug) ? $"a plug {offered.Plug!.Value.Name}"
        : Differ(lead.Length, offered.Length) ? $"{offered.Length} long"
        : Differ(lead.Tail, offered.Tail) ? $"a tail of {offered.Tail}"
        : Differ(lead.Pitch, offered.Pitch) ? $"{offered.Pitch} from plug to plug"
        : Differ(lead.Wire, offered.Wire) ? $"wire of {offered.Wire}"
        : Differ(lead.Ohms, offered.Ohms) ? $"{offered.Ohms} a conductor"
        : null;

    /// <summary>Whether both say something and not the same.</summary>
    private static bool Differ<T>(T? one, T? other)
        where T : struct => one is { } mine && other is { } theirs && !EqualityComparer<T>.Default.Equals(mine, theirs);

    /// <summary>Whether both tell something that is more than an assumption, and not the same.</summary>
    private static bool Differ<T>(Figure<T> one, Figure<T> other)
        where T : struct =>
        one is { IsKnown: true, IsAssumed: false } && other is { IsKnown: true, IsAssumed: false }
        && !EqualityComparer<T>.Default.Equals(one.Value, other.Value);
}
