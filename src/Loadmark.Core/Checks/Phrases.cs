using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Checks;

/// <summary>Builds the small phrases that findings are made of.</summary>
public static class Phrases
{
    private const int MostNamed = 12;

    /// <summary>"drive-3", "drive-3 and chorus-1", "drive-3, chorus-1 and delay-2"; a long list ends with "and 7 more".</summary>
    public static string List(IReadOnlyList<string> names) => names.Count switch
    {
        0 => "",
        1 => names[0],
        <= MostNamed => $"{string.Join(", ", names.Take(names.Count - 1))} and {names[^1]}",
        _ => $"{string.Join(", ", names.Take(MostNamed))} and {names.Count - MostNamed} more",
    };

    /// <summary>"is" or "are", by number.</summary>
    public static string Is(int count) => count == 1 ? "is" : "are";

    /// <summary>"takes" or "take", by number.</summary>
    public static string Verb(int count, string singular, string plural) => count == 1 ? singular : plural;

    /// <summary>The ids of loads.</summary>
    public static List<string> Ids(IEnumerable<WiredLoad> loads)
    {
        var ids = new List<string>();
        foreach (var load in loads)
            ids.Add(load.Id);
        return ids;
    }

    /// <summary>The load and the outlets of its feed, as subjects.</summary>
    public static ValueList<string> Subjects(WiredLoad load, WiredFeed feed)
    {
        if (feed.Outlets.Length == 1)
            return [load.Id, feed.Outlets[0].Name];

        var names = new List<string>(feed.Outlets.Length + 1) { load.Id };
        foreach (var outlet in feed.Outlets)
            names.Add(outlet.Name);
        return [.. names];
    }

    /// <summary>The outlets of a feed and its loads, as subjects.</summary>
    public static ValueList<string> Subjects(WiredFeed feed)
    {
        var names = new List<string>();
        foreach (var outlet in feed.Outlets)
            names.Add(outlet.Name);
        foreach (var load in feed.Loads)
            names.Add(load.Id);
        return [.. names];
    }

    /// <summary>The names of a return and its loads, as subjects.</summary>
    public static ValueList<string> Subjects(ReturnGroup group, IEnumerable<string> loads) => [.. loads, .. group.Names];
}
