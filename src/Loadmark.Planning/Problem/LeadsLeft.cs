using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Problem;

/// <summary>Counts the leads that pinned feeds leave.</summary>
internal static class LeadsLeft
{
    /// <summary>How many of a lead may still be used; as many as there are loads where nothing limits it.</summary>
    /// <param name="lead">The lead; a straight one that gives no count is there as often as it is wanted.</param>
    /// <param name="pinned">The rig with its pinned feeds only.</param>
    /// <param name="loads">How many loads there are to feed.</param>
    public static int Of(Lead lead, WiredRig pinned, int loads)
    {
        var have = lead.Count ?? (lead.Type == LeadType.Straight ? loads : 1);
        return Math.Clamp(have - pinned.Feeds.Items.Count(feed => feed.Lead?.Id == lead.Id), 0, loads);
    }
}
