using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Decoding;

/// <summary>
/// Picks which loads of a group go where. Of loads that are alike the first of the file come first. Of loads that draw
/// differently the small ones go where several share an outlet, the tightest first, and the large ones where the supply has
/// the most left; whether every limit then holds is for the rules to say.
/// </summary>
internal sealed class LoadPicker
{
    private readonly PlanProblem _problem;
    private readonly Dictionary<LoadGroup, LinkedList<int>> _left;

    /// <summary>Begins with every load to be picked.</summary>
    public LoadPicker(PlanProblem problem)
    {
        _problem = problem;
        _left = problem.Loads.ToDictionary(
            static group => group,
            group => new LinkedList<int>(group.IsMerged ? group.Members.OrderBy(DrawOf).ThenBy(static index => index) : group.Members));
    }

    /// <summary>Fills in the loads of all feeds.</summary>
    public void Pick(List<PlannedFeed> feeds)
    {
        foreach (var feed in feeds.Where(static feed => feed.Groups.Count > 1).OrderBy(SpareOf))
        {
            foreach (var group in feed.Groups)
                feed.Loads.Add(Take(group, smallest: true));
            feed.Loads.Sort();
        }

        var spare = _problem.Totals.ToDictionary(static total => total, static total => (decimal)Math.Min(total.Usable, total.Start));
        foreach (var feed in feeds)
            Draw(feed, spare);
        foreach (var alone in feeds.Where(static feed => feed.Groups.Count == 1).GroupBy(static feed => feed.Groups[0]))
        {
            if (alone.Key.IsMerged)
                Spread(alone.Key, [.. alone], spare);
            else
                foreach (var feed in alone)
                    feed.Loads.Add(Take(alone.Key, smallest: true));
        }
    }

    /// <summary>The largest load first, each where the most is left.</summary>
    private void Spread(LoadGroup group, List<PlannedFeed> feeds, Dictionary<TotalLimit, decimal> spare)
    {
        var places = feeds.ConvertAll(
            feed => (Feed: feed, Totals: _problem.Totals.Where(total => total.Covers(feed.Parts[0].Group)).ToArray()));
        while (places.Count > 0)
        {
            var place = places.MaxBy(place => place.Totals.Length == 0 ? decimal.MaxValue : place.Totals.Min(total => spare[total]));
            var load = Take(group, smallest: false);
            place.Feed.Loads.Add(load);
            foreach (var total in place.Totals)
                spare[total] -= MicroUnits.Draw((DrawOf(load) - group.DrawAt(place.Feed.Volts).Start) * total.FactorAt(place.Feed.Volts));
            places.Remove(place);
        }
    }

    /// <summary>What each load would have on the tightest of the feed's limits if all took the same.</summary>
    private static decimal SpareOf(PlannedFeed feed) =>
        feed.Parts.Min(static part => part.Setting.Limit ?? 0) / feed.Groups.Count;

    private void Draw(PlannedFeed feed, Dictionary<TotalLimit, decimal> spare)
    {
        foreach (var part in feed.Parts)
        {
            foreach (var total in _problem.Totals.Where(total => total.Covers(part.Group)))
            {
                foreach (var group in feed.Groups)
                    spare[total] -= MicroUnits.Draw(group.DrawAt(feed.Volts).Start * total.FactorAt(part.Setting.Basis));
            }
        }
    }

    private int Take(LoadGroup group, bool smallest)
    {
        var left = _left[group];
        var node = smallest ? left.First! : left.Last!;
        left.Remove(node);
        return node.Value;
    }

    private decimal DrawOf(int index) => _problem.Pinned.Loads[index].Rating.Starting?.Value.Value ?? 0;
}
