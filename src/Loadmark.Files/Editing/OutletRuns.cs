using Loadmark.Files.Errors;
using Loadmark.Files.Parsing;
using Loadmark.Files.Trees;
using Loadmark.Files.Writing;

namespace Loadmark.Files.Editing;

/// <summary>Matches outlets, of which one entry of the file may name many: what is no longer alike is parted.</summary>
internal static class OutletRuns
{
    /// <summary>What a supply's outlets are to be.</summary>
    /// <param name="source">The entries in the file.</param>
    /// <param name="before">The old outlets, one by one.</param>
    /// <param name="after">The new outlets, one by one.</param>
    public static List<Wanted> Match(MappingNode source, MappingNode before, MappingNode after)
    {
        var places = PlacesOf(source);
        var runs = new List<Run>();
        foreach (var (key, value) in after.Entries)
        {
            var place = places.TryGetValue(key.Value, out var known) ? known : new Place(-1, 0, 0);
            if (runs.Count > 0 && runs[^1].Takes(place, value))
                runs[^1].Keys.Add(key);
            else
                runs.Add(new Run(place, value, before.Find(key.Value), [key]));
        }

        TakeRenamed(runs, places, before);
        var heirs = HeirsOf(runs);
        return [.. runs.Select(run => run.ToWanted(heirs.Contains(run)))];
    }

    private static Dictionary<string, Place> PlacesOf(MappingNode source)
    {
        var places = new Dictionary<string, Place>(StringComparer.Ordinal);
        for (var entry = 0; entry < source.Entries.Count; entry++)
        {
            var id = source.Entries[entry].Key.Value;
            var ids = OutletRange.Looks(id) ? OutletRange.Expand(id, out _) ?? [id] : [id];
            for (var index = 0; index < ids.Count; index++)
                places[ids[index]] = new Place(entry, index, ids.Count);
        }

        return places;
    }

    /// <summary>An outlet that kept all but its id has the place of the one that is gone.</summary>
    private static void TakeRenamed(List<Run> runs, Dictionary<string, Place> places, MappingNode before)
    {
        var gone = places.Keys.Except(runs.SelectMany(run => run.Keys).Select(key => key.Value)).Where(id => places[id].Of == 1).ToList();
        for (var index = 0; index < runs.Count && gone.Count > 0; index++)
        {
            var run = runs[index];
            if (run.Place.Entry < 0 && gone.Find(id => NodeText.Same(before.Find(id)!, run.Value)) is { } id && gone.Remove(id))
                runs[index] = run with { Place = places[id], Old = before.Find(id) };
        }
    }

    /// <summary>The run that goes on in the old entry's place: the first that has not changed, else the first.</summary>
    private static HashSet<Run> HeirsOf(List<Run> runs) =>
        [.. runs.Where(run => run.Place.Entry >= 0)
            .GroupBy(run => run.Place.Entry)
            .Select(group => group.FirstOrDefault(run => run.IsUnchanged) ?? group.First())];

    /// <summary>Where the file names an outlet.</summary>
    /// <param name="Entry">The entry; -1 when nowhere.</param>
    /// <param name="Index">Which of the entry's outlets it is.</param>
    /// <param name="Of">How many outlets the entry names.</param>
    private sealed record Place(int Entry, int Index, int Of);

    /// <summary>Outlets one after another that one entry can name.</summary>
    private sealed record Run(Place Place, Node Value, Node? Old, List<ScalarNode> Keys)
    {
        public bool IsUnchanged => Old is not null && NodeText.Same(Old, Value);

        public bool Takes(Place next, Node value) =>
            Place.Entry >= 0 && next.Entry == Place.Entry && next.Index == Place.Index + Keys.Count && NodeText.Same(Value, value);

        public Wanted ToWanted(bool isHeir)
        {
            var isWhole = isHeir && Keys.Count == Place.Of && Keys.Count > 1;
            var text = Keys.Count == 1 ? Keys[0].Value : $"{Keys[0].Value}-{Keys[^1].Value}";
            var key = new ScalarNode(Spot.Start, text, PlainText.Suits(text, numberIsFine: true));
            return new Wanted(isHeir ? Place.Entry : -1, isWhole ? null : key, Value, Old);
        }
    }
}
