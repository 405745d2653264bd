using Loadmark.Core.Rigs;

namespace Loadmark.Files.Merging;

/// <summary>
/// Brings two edits of the wiring together. What is asked is what feeds each load: two who plug one load into different outlets meet there,
/// though they changed different feeds.
/// </summary>
internal sealed class WiringMerge(FieldMerge fields, Rig before, Rig ours, Rig theirs)
{
    private readonly Wiring _before = new(before);
    private readonly Wiring _ours = new(ours);
    private readonly Wiring _theirs = new(theirs);

    /// <summary>Whether a side changed what feeds a load.</summary>
    public bool IsRewired(string load, MergeSide side) =>
        _before.PlacesOf(load) != (side == MergeSide.Ours ? _ours : _theirs).PlacesOf(load);

    /// <summary>The wiring after both edits, of loads that are there after them.</summary>
    public ValueList<Feed>? Of(ValueList<Load> loads)
    {
        var places = new Dictionary<string, ValueList<string>>(StringComparer.Ordinal);
        foreach (var load in loads.Items.Select(static load => load.Id))
            places[load] = PlacesOf(load);
        KeepChangedFeeds(places);

        var live = places.SelectMany(static load => load.Value).ToHashSet(StringComparer.Ordinal);
        var keys = OrderMerge.Of(
            fields, new MergePlace(MergePart.Feed, "", "order"), _before.Keys, _ours.Keys, _theirs.Keys, live.Contains);
        var feeds = keys.Select(key => FeedOf(key, places)).ToList();

        // Where nothing is wired: either because that is what it says, or because it is left to be planned.
        var isPlanned = fields.Pick(
            new MergePlace(MergePart.Rig, "", "planned"), before.Wired is null, ours.Wired is null, theirs.Wired is null);
        return feeds.Count == 0 && isPlanned ? null : [.. feeds];
    }

    private ValueList<string> PlacesOf(string load)
    {
        var place = new MergePlace(MergePart.Load, load, "wired");
        var (was, mine, other) = (_before.PlacesOf(load), _ours.PlacesOf(load), _theirs.PlacesOf(load));
        if (Has(before, load) && Has(ours, load) != Has(theirs, load))
        {
            // One side took the load away, and yet it stays: it is fed as the other has it.
            return Has(ours, load) ? mine : other;
        }

        return fields.Pick(place, was, mine, other);
    }

    /// <summary>
    /// One side changed a feed's setting or lead, and the other side took all loads off it: the change would go without a word.
    /// </summary>
    private void KeepChangedFeeds(Dictionary<string, ValueList<string>> places)
    {
        var live = places.SelectMany(static load => load.Value).ToHashSet(StringComparer.Ordinal);
        foreach (var key in _before.Keys.Where(key => !live.Contains(key)))
        {
            var (was, mine, other) = (_before.Feeds[key], _ours.Feeds.GetValueOrDefault(key), _theirs.Feeds.GetValueOrDefault(key));
            if (mine is null == other is null)
                continue;
            var kept = mine ?? other!;
            if (kept with { To = was.To } == was)
                continue;
            var side = fields.Choose(new MergePlace(MergePart.Feed, key, ""), was, mine, other);
            if (side == (mine is null ? MergeSide.Theirs : MergeSide.Ours))
            {
                foreach (var load in kept.To.Items.Where(places.ContainsKey))
                    places[load] = (mine is null ? _theirs : _ours).PlacesOf(load);
            }
        }
    }

    private Feed FeedOf(string key, Dictionary<string, ValueList<string>> places)
    {
        var (was, mine, other) = (
            _before.Feeds.GetValueOrDefault(key), _ours.Feeds.GetValueOrDefault(key), _theirs.Feeds.GetValueOrDefault(key));
        var plugs = OrderMerge.Of(
            fields, new MergePlace(MergePart.Feed, key, "to"), _before.PlugsOf(key), _ours.PlugsOf(key), _theirs.PlugsOf(key),
            plug => places.TryGetValue(Wiring.LoadOf(plug), out var on) && IsWithin(plug, on.Items.Count(place => place == key)));
        var feed = (mine ?? other)! with { To = [.. plugs.Select(Wiring.LoadOf)] };
        return mine is null || other is null ? feed : feed with
        {
            Joined = fields.Pick(Place("joined"), was?.Joined ?? Joint.None, mine.Joined, other.Joined),
            At = fields.Pick(Place("at"), was?.At ?? [], mine.At, other.At),
            Lead = fields.Pick(Place("lead"), was?.Lead, mine.Lead, other.Lead),
            Pinned = fields.Pick(Place("pinned"), was?.Pinned ?? false, mine.Pinned, other.Pinned),
        };

        MergePlace Place(string field) => new(MergePart.Feed, key, field);
    }

    private static bool IsWithin(string plug, int count) =>
        Enumerable.Range(1, count).Any(nth => Wiring.PlugOf(Wiring.LoadOf(plug), nth) == plug);

    private static bool Has(Rig rig, string load) => rig.Loads.Items.Any(one => one.Id == load);
}
