using Loadmark.Core.Rigs;
using Loadmark.Planning.Improving;

namespace Loadmark.Planning.Decoding;

/// <summary>Has the loads, outlets and leads of a wiring named that was found load by load.</summary>
internal static class ShapeDecoder
{
    /// <summary>All feeds, the pinned ones too, in the order of the supplies and their outlets.</summary>
    public static ValueList<Feed> Decode(WiringSpace space, FoundWiring found)
    {
        var leads = space.Kinds.Select(static kind => new Queue<string>(kind.Ids ?? [])).ToArray();
        var places = space.Stands.Select(static (stand, place) => (stand, place)).ToDictionary(static pair => pair.stand, static pair => pair.place);
        var planned = new List<PlannedFeed>();
        foreach (var feed in found.Feeds.OrderBy(feed => places[feed.Stand]).ThenBy(static feed => feed.Loads.Min()))
        {
            var stand = feed.Stand;
            planned.Add(new PlannedFeed(
                stand.Joined,
                stand.Volts,
                stand.Joined == Joint.Parallel ? [stand.Legs[0].Part, stand.Legs[0].Part] : [.. stand.Legs.Select(static leg => leg.Part)],
                space.Kinds[feed.Kind].IsSpecial ? leads[feed.Kind].Dequeue() : null,
                [.. feed.Loads.Order().Select(load => space.Loads[load])]));
        }

        return new FeedNamer(space.Problem).Name(planned);
    }
}
