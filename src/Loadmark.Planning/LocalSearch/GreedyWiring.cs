namespace Loadmark.Planning.LocalSearch;

/// <summary>
/// A wiring to begin with: the loads that draw the most first, each where it costs the least at that moment.
/// </summary>
internal static class GreedyWiring
{
    /// <summary>Makes the wiring that local search begins with.</summary>
    public static LiveWiring Of(WiringSpace space)
    {
        var wiring = new LiveWiring(space);
        if (wiring.HasHomes)
            LeaveAtHome(space, wiring);
        FeedDark(space, wiring);
        return wiring;
    }

    /// <summary>Leaves loads where they are plugged in now, as far as nothing forbids it.</summary>
    private static void LeaveAtHome(WiringSpace space, LiveWiring wiring)
    {
        for (var load = 0; load < wiring.Count; load++)
        {
            if (space.HomeOf(wiring.GroupOf(load)) is not { } home || wiring.Open(load, home.FeedSite, home.Ends))
                continue;
            if (wiring.Feeds.FirstOrDefault(feed => feed.FeedSite == home.FeedSite && feed.Ends == home.Ends) is { } beside)
                wiring.Add(load, beside);
        }
    }

    /// <summary>Feeds the loads that are dark, as far as they can be.</summary>
    public static void FeedDark(WiringSpace space, LiveWiring wiring)
    {
        var weights = new Weights(wiring.Count);
        foreach (var load in Enumerable.Range(0, wiring.Count)
            .Where(load => wiring.FeedOf(load) is null)
            .OrderByDescending(load => wiring.GroupOf(load).Darkness)
            .ThenBy(load => space.Placements[wiring.GroupOf(load).Index].Length == 0)
            .ThenByDescending(load => wiring.GroupOf(load).Rating.Running?.Value.Value ?? 0).ThenBy(load => wiring.GroupOf(load).Priority))
            Feed(space, wiring, weights, load);
    }

    private static void Feed(WiringSpace space, LiveWiring wiring, Weights weights, int load)
    {
        Placement? best = null;
        LiveFeed? beside = null;
        var least = double.PositiveInfinity;
        foreach (var placement in space.Placements[wiring.GroupOf(load).Index])
        {
            if (!wiring.Open(load, placement.FeedSite, placement.Ends))
                continue;
            if (weights.CostOf(wiring) is var cost && cost < least)
                (best, least) = (placement, cost);
            wiring.Remove(load);
        }

        foreach (var feed in wiring.Feeds.ToArray())
        {
            if (!wiring.Add(load, feed))
                continue;
            if (weights.CostOf(wiring) is var cost && cost < least)
                (beside, least) = (feed, cost);
            wiring.Remove(load);
        }

        if (beside is not null)
            wiring.Add(load, beside);
        else if (best is { } found)
            wiring.Open(load, found.FeedSite, found.Ends);
    }
}
