using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning;

/// <summary>A load that a plan feeds in another way than the present wiring does.</summary>
/// <param name="Load">The load's tag.</param>
/// <param name="Before">The feeds it is on now; none when it is not fed.</param>
/// <param name="After">The feed it is to be on; null when it is not fed.</param>
public sealed record LoadMove(string Load, ValueList<Feed> Before, Feed? After)
{
    /// <summary>Where a load on a feed is plugged in, for people: "brick/2 + brick/3 in series at 9 V over flip".</summary>
    /// <param name="feed">The feed.</param>
    public static string PlaceOf(Feed feed)
    {
        ArgumentNullException.ThrowIfNull(feed);

        var joined = feed.Joined == Joint.None ? "" : $" in {feed.Joined.ToString().ToLowerInvariant()}";
        var at = feed.At.Count == 0 ? "" : $" at {string.Join(" and ", feed.At)}";
        return $"{string.Join(" + ", feed.From)}{joined}{at}{(feed.Lead is { } lead ? $" over {lead}" : "")}";
    }

    /// <summary>
    /// Compares two wirings, load by load, in the order of the file, then supplies that are fed by others. What else is on a feed does not
    /// count as a move.
    /// </summary>
    /// <param name="before">The rig as it is wired.</param>
    /// <param name="after">The same rig as it is to be wired.</param>
    public static ValueList<LoadMove> Between(Rig before, Rig after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);

        var moves = new List<LoadMove>();
        var present = WiredRig.Of(before).Loads.Items
            .ToDictionary(static load => load.Id, static load => load.Feeds, StringComparer.Ordinal);
        foreach (var load in WiredRig.Of(after).Loads)
        {
            var now = present.GetValueOrDefault(load.Id) ?? [];
            var then = load.Feeds.Count > 0 ? load.Feeds[0] : null;
            if (now.Count == 0 && then is null)
                continue;
            if (now is not [var one] || then is null || !PresentWiring.IsSame(one, then))
                moves.Add(new LoadMove(load.Id, [.. now.Select(static feed => feed.Feed)], then?.Feed));
        }

        return [.. moves];
    }
}
