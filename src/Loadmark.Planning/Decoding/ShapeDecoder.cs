using Loadmark.Core.Rigs;
using Loadmark.Planning.LocalSearch;

namespace Loadmark.Planning.Decoding;

/// <summary>Has the loads, outlets and leads of a wiring named that was found load by load.</summary>
internal static class ShapeDecoder
{
    /// <summary>All feeds, the pinned ones too, in the order of the supplies and their outlets.</summary>
    public static ValueList<Feed> Decode(WiringSpace space, FoundWiring found)
    {
        var leads = space.Kinds.Select(static kind => new Queue<string>(kind.Ids ?? [])).ToArray();
        var places = space.Sites.Select(static (site, place) => (site, place))
            .ToDictionary(static pair => pair.site, static pair => pair.place);
        var planned = new List<PlannedFeed>();
        foreach (var feed in found.Feeds.OrderBy(feed => places[feed.FeedSite]).ThenBy(static feed => feed.Loads.Min()))
        {
            var site = feed.FeedSite;
            planned.Add(new PlannedFeed(
                site.Joined,
                site.Volts,
                site.Joined == Joint.Parallel ? [site.Legs[0].Part, site.Legs[0].Part] : [.. site.Legs.Select(static leg => leg.Part)],
                space.Kinds[feed.Kind].IsSpecial ? leads[feed.Kind].Dequeue() : null,
                [.. feed.Loads.Order().Select(load => space.Loads[load])]));
        }

        return new FeedNamer(space.Problem).Name(planned);
    }
}
