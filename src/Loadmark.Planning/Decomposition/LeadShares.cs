using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Decomposition;

/// <summary>Deals the leads on hand to the parts of a rig, each lead once.</summary>
/// <param name="leads">The leads that pinned feeds leave, by kind.</param>
/// <param name="pinned">The rig with its pinned feeds only.</param>
internal sealed class LeadShares(List<LeadUse> leads, WiredRig pinned)
{
    private readonly Queue<string>[] _left = [.. leads.Select(static lead => new Queue<string>(lead.Ids))];

    /// <summary>The leads for one part: as many of each kind as it wants, and those that its pinned feeds use.</summary>
    /// <param name="wanted">How many of a kind it wants; no more than are left.</param>
    /// <param name="feeds">Its pinned feeds.</param>
    public IEnumerable<Lead> Take(Func<LeadUse, int> wanted, List<WiredFeed> feeds)
    {
        var counts = feeds.Select(static feed => feed.Lead?.Id).OfType<string>().CountBy(static id => id, StringComparer.Ordinal)
            .ToDictionary(static pair => pair.Key, static pair => pair.Value, StringComparer.Ordinal);
        for (var kind = 0; kind < leads.Count; kind++)
        {
            for (var count = Math.Min(wanted(leads[kind]), _left[kind].Count); count > 0; count--)
            {
                var id = _left[kind].Dequeue();
                counts[id] = counts.GetValueOrDefault(id) + 1;
            }
        }

        return pinned.Rig.Leads.Items.Where(lead => counts.ContainsKey(lead.Id)).Select(lead => lead with { Count = counts[lead.Id] });
    }
}
