using Loadmark.Core.Fits;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.LeadLists;

/// <summary>The leads that a rig's wiring takes, numbered in the order of the wiring.</summary>
public static class LeadList
{
    /// <summary>Lists the leads: one for each feed.</summary>
    /// <param name="rig">The rig, looked up.</param>
    public static ValueList<ListedLead> Of(WiredRig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        var leads = new List<ListedLead>();
        foreach (var feed in rig.Feeds)
            leads.Add(Of(feed, leads.Count + 1));
        return [.. leads];
    }

    private static ListedLead Of(WiredFeed feed, int number)
    {
        var lead = feed.Lead;
        var isMeasured = lead?.Ohms is not null && lead.Length is null && lead.Tail is null && lead.Pitch is null;
        var (stretches, isAssumed) = isMeasured ? ([], false) : StretchesOf(feed);
        return new ListedLead
        {
            Number = number,
            Feed = feed,
            Type = lead?.Type ?? LeadType.Straight,
            Stretches = stretches,
            LengthIsAssumed = isAssumed,
            Wire = isMeasured && lead!.Wire is null ? null : lead?.Wire ?? Lead.CommonWire,
            WireIsAssumed = !isMeasured && lead?.Wire is null,
            Point = FeedPoint.Of(feed),
        };
    }

    /// <summary>
    /// A chain is a tail and a pitch from plug to plug, free plugs too; joined outlets have a stretch each; any other lead is one stretch.
    /// </summary>
    private static (ValueList<Metres> Stretches, bool IsAssumed) StretchesOf(WiredFeed feed)
    {
        var lead = feed.Lead;
        if (lead?.Type == LeadType.DaisyChain)
        {
            var plugs = Math.Max(lead.Plugs ?? 0, feed.Loads.Length);
            var pitch = lead.Pitch ?? Lead.CommonPitch;
            return (
                [lead.Tail ?? Lead.CommonLength, .. Enumerable.Repeat(pitch, plugs - 1)],
                lead.Tail is null || (lead.Pitch is null && plugs > 1));
        }

        return ([.. Enumerable.Repeat(lead?.Length ?? Lead.CommonLength, feed.Outlets.Length)], lead?.Length is null);
    }
}
