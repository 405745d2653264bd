using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Core.Trials;

namespace Loadmark.Simulation.Checks;

/// <summary>A rig with one of its feeds changed as a remedy says, so that the whole of it can be checked.</summary>
internal static class FeedChange
{
    private const string NewLead = "new lead";

    /// <summary>The rig with the feed's lead made of another wire.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="feed">The feed.</param>
    /// <param name="area">The cross-section of each conductor.</param>
    public static Rig WithWire(WiredRig rig, WiredFeed feed, SquareMetres area) =>
        WithLead(rig, feed, LeadOf(feed) with { Wire = Wire.OfArea(area) });

    /// <summary>The rig with the feed's lead cut to another length; of a chain tail and pitch alike.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="feed">The feed.</param>
    /// <param name="factor">The new length as a multiple of the present one, over 0.</param>
    public static Rig WithLength(WiredRig rig, WiredFeed feed, decimal factor)
    {
        var lead = LeadOf(feed);
        return WithLead(rig, feed, lead.Type == LeadType.DaisyChain
            ? lead with
            {
                Tail = (lead.Tail ?? new Metres((decimal)Figures.CircuitDefaults.TailMetres.Value)) * factor,
                Pitch = (lead.Pitch ?? new Metres((decimal)Figures.CircuitDefaults.PitchMetres.Value)) * factor,
            }
            : lead with { Length = (lead.Length ?? Lead.CommonLength) * factor });
    }

    /// <summary>The rig with a load on an outlet of its own.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="load">The load.</param>
    /// <param name="outlet">A free outlet.</param>
    /// <param name="volts">What it is set to.</param>
    public static Rig WithOwnOutlet(WiredRig rig, WiredLoad load, WiredOutlet outlet, Volts volts) =>
        rig.Rig.Unplug(load.Id).Plug(new Feed { From = [outlet.Rating.Reference], At = [volts], To = [load.Id] });

    /// <summary>
    /// The rig with another outlet of the same voltage in the place of one: an adaptor with one outlet is another adaptor, whose total is
    /// what that outlet gives. Of a surge the other outlet promises nothing.
    /// </summary>
    /// <param name="rig">The rig.</param>
    /// <param name="outlet">The outlet, of known voltage.</param>
    /// <param name="amps">The limit of the other outlet.</param>
    public static Rig WithLimit(WiredRig rig, WiredOutlet outlet, Amps amps)
    {
        var (rating, supply) = (outlet.Rating, outlet.Rating.Supply);
        var form = rating.Form is { IsKnown: true, IsAssumed: false } known ? known.Value == SupplyForm.Alternating ? " AC" : " DC" : "";
        var other = rating.Outlet with
        {
            Label = NameplateReader.Read($"{outlet.Volts}{form} {amps}"),
            Polarity = Stated(rating.Polarity) ?? rating.Outlet.Polarity,
            Plug = Stated(rating.Plug) ?? rating.Outlet.Plug,
            Isolated = Stated(rating.Isolated) ?? rating.Outlet.Isolated,
            Surge = null,
        };
        var index = Enumerable.Range(0, rig.Rig.Supplies.Count).First(place => rig.Rig.Supplies[place].Id == supply.Id);
        return rig.Rig.PutSupply(index, supply with
        {
            Outlets = [.. supply.Outlets.Items.Select(one => one.Id == rating.Outlet.Id ? other : one)],
            Total = supply.Outlets.Count == 1 ? null : supply.Total,
            Regulated = outlet.Supply.Regulated,
        });
    }

    private static T? Stated<T>(Figure<T> figure)
        where T : struct => figure is { IsKnown: true, IsAssumed: false } ? figure.Value : null;

    private static Lead LeadOf(WiredFeed feed) => feed.Lead ?? new Lead
    {
        Id = NewLead,
        Type = feed.Joined switch { Joint.Series => LeadType.Series, Joint.Parallel => LeadType.Parallel, _ => LeadType.Straight },
    };

    /// <summary>
    /// The rig with a lead made for the feed: in the place of its own, or beside those that other feeds use or that are not listed.
    /// </summary>
    private static Rig WithLead(WiredRig rig, WiredFeed feed, Lead lead)
    {
        var isShared = feed.Lead is not null && rig.Feeds.Items.Any(other => other != feed && other.Lead?.Id == feed.Lead.Id);
        if (feed.Lead is not null && !isShared)
            return rig.Rig with { Leads = [.. rig.Rig.Leads.Items.Select(one => one.Id == lead.Id ? lead : one)] };

        var id = lead.Id;
        while (rig.Rig.Leads.Items.Any(one => one.Id == id))
            id += ", new";
        var changed = rig.Rig with { Leads = [.. rig.Rig.Leads, lead with { Id = id, Count = null }] };
        return changed.Replace(feed.Index, feed.Feed with { Lead = id });
    }
}
