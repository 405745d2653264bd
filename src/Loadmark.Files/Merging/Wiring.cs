using Loadmark.Core.Rigs;

namespace Loadmark.Files.Merging;

/// <summary>A rig's wiring taken apart: its feeds by their outlets, and what feeds each load.</summary>
internal sealed class Wiring
{
    private readonly Dictionary<string, List<string>> _places = new(StringComparer.Ordinal);

    public Wiring(Rig rig)
    {
        foreach (var feed in rig.Wired ?? [])
        {
            var name = string.Join(" + ", feed.From);
            var key = name;

            // The same outlet twice is a finding, not a file that cannot be read.
            for (var more = 2; Feeds.ContainsKey(key); more++)
                key = $"{name} #{more}";
            Keys.Add(key);
            Feeds.Add(key, feed);
            foreach (var load in feed.To)
            {
                if (!_places.TryGetValue(load, out var places))
                    _places[load] = places = [];
                places.Add(key);
            }
        }

        foreach (var places in _places.Values)
            places.Sort(StringComparer.Ordinal);
    }

    /// <summary>The feeds' names, in order.</summary>
    public List<string> Keys { get; } = [];

    /// <summary>The feeds by name.</summary>
    public Dictionary<string, Feed> Feeds { get; } = new(StringComparer.Ordinal);

    /// <summary>The feeds that a load is on, one as often as the load is on it.</summary>
    public ValueList<string> PlacesOf(string load) => _places.TryGetValue(load, out var places) ? [.. places] : [];

    /// <summary>The loads on a feed in their order; one that is there twice is counted.</summary>
    public List<string> PlugsOf(string key)
    {
        var plugs = new List<string>();
        foreach (var load in Feeds.TryGetValue(key, out var feed) ? feed.To : [])
        {
            var nth = 1;
            while (plugs.Contains(PlugOf(load, nth)))
                nth++;
            plugs.Add(PlugOf(load, nth));
        }

        return plugs;
    }

    /// <summary>A load's n-th plug on a feed.</summary>
    public static string PlugOf(string load, int nth) => nth == 1 ? load : $"{load}\n{nth}";

    /// <summary>The load of a plug.</summary>
    public static string LoadOf(string plug) => plug.Split('\n')[0];
}
