using System.Collections.Immutable;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Problem;

/// <summary>Finds where the loads of a rig, or of a part of one, are plugged in now, as far as a plan could leave them there.</summary>
internal static class HomeFinder
{
    /// <summary>The homes of loads that no pinned feed feeds, by the places of the loads.</summary>
    /// <param name="present">The present wiring.</param>
    /// <param name="pinned">The rig with its pinned feeds only.</param>
    /// <param name="loads">The loads that are to be fed.</param>
    /// <param name="isNarrowed">
    /// Whether some are left out that could stay: a lead is in more feeds now than there are of it, and others like it are on hand.
    /// </param>
    public static ImmutableDictionary<int, LoadHome> Find(
        PresentWiring present, WiredRig pinned, IEnumerable<WiredLoad> loads, out bool isNarrowed)
    {
        var outlets = pinned.Outlets.Items.ToDictionary(static outlet => outlet.Rating.Reference, static outlet => outlet.Index);
        var left = pinned.Rig.Leads.Items.ToDictionary(
            static lead => lead.Id, lead => LeadsLeft.Of(lead, pinned, pinned.Loads.Count), StringComparer.Ordinal);
        var keepable = new Dictionary<int, bool>();
        var homes = ImmutableDictionary.CreateBuilder<int, LoadHome>();
        foreach (var load in loads)
        {
            if (!present.TryFeedOf(load.Id, out var feed) || feed.Outlets.Length > (feed.Joined == Joint.None ? 1 : 2))
                continue;
            if (!feed.Outlets.All(outlet => outlets.ContainsKey(outlet.Rating.Reference)))
                continue;

            if (!keepable.TryGetValue(feed.Index, out var isKeepable))
                keepable.Add(feed.Index, isKeepable = HasLead(feed));
            if (isKeepable)
                homes.Add(load.Index, HomeOf(feed, outlets));
        }

        isNarrowed = keepable.ContainsValue(false);
        return homes.ToImmutable();

        // No more feeds can keep a lead than there are of it. Where there is none like it, counting leads of its kind says so.
        bool HasLead(WiredFeed feed)
        {
            if (feed.Lead is not { } lead || (!IsPlain(lead) && !pinned.Rig.Leads.Items.Any(other => IsLike(other, lead))))
                return true;
            if (!left.TryGetValue(lead.Id, out var count) || count == 0)
                return false;
            left[lead.Id] = count - 1;
            return true;
        }

        bool IsLike(Lead one, Lead other) =>
            one.Id != other.Id && one.Type == other.Type && one.Plug == other.Plug && PlugsOf(one) == PlugsOf(other);

        int PlugsOf(Lead lead) => Math.Min(lead.LoadPlugs ?? int.MaxValue, pinned.Loads.Count);
    }

    private static LoadHome HomeOf(WiredFeed feed, Dictionary<OutletRef, int> outlets) => new(
        feed.Feed,
        feed.Index,
        [.. feed.Outlets.Select(outlet => (outlets[outlet.Rating.Reference], outlet.Volts))],
        IsPlain(feed.Lead) ? null : feed.Feed.Lead,
        feed.Loads.Length > 1 || feed.Lead is { LoadPlugs: not 1 } || feed.Outlets.Any(static outlet => outlet.Feeds.Count > 1));

    private static bool IsPlain(Lead? lead) => lead is null or { Type: LeadType.Straight, Plug: null, LoadPlugs: 1 };
}
