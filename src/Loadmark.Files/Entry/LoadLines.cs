using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using Loadmark.Files.Errors;
using Loadmark.Files.Parsing;

namespace Loadmark.Files.Entry;

/// <summary>Reads loads, one a line.</summary>
internal static class LoadLines
{
    private const string Form = "a tag and what is printed, such as drive-3: 9V DC 12mA";

    /// <summary>What proposed tags begin with.</summary>
    public const string Prefix = "L-";

    /// <summary>A row for each line.</summary>
    public static List<EntryRow> Read(List<SourceLine> lines, EntryTarget target)
    {
        var parts = lines.ConvertAll(line => LineParts.Of(line.Content));
        var existed = target.Existing.ToHashSet(StringComparer.Ordinal);
        var free = new IdSequence(Prefix, 2, [.. target.Existing, .. parts.Select(part => part.Id).OfType<string>()], target.Elsewhere);
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        return [.. lines.Zip(parts, (line, part) => ReadLine(line, part, existed, free, places))];
    }

    /// <summary>Why a tag cannot be taken; null when it can, and its line is noted.</summary>
    public static EntryRefusal? RefuseId(string id, string what, bool mayHaveSlash, int line, Dictionary<string, int> places)
    {
        if (Ids.Problem(id, mayHaveSlash) is { } problem)
            return new EntryRefusal($"'{ErrorList.Quote(id)}' cannot be the id of {what}: {problem}", null);
        return places.TryAdd(id, line)
            ? null
            : new EntryRefusal($"'{ErrorList.Quote(id)}' stands here a second time; the first is on line {places[id]}", null);
    }

    private static EntryRow ReadLine(
        SourceLine line, LineParts part, HashSet<string> existing, IdSequence free, Dictionary<string, int> places)
    {
        if (SourceLine.RefuseCharacters(line.Text) is { } odd)
            return line.Refuse(odd);
        if (part.Label.Length == 0)
            return line.Refuse("nothing stands after the tag", Form);
        if (part.Label.Length > NameplateReader.Longest)
            return line.Refuse($"it is longer than {NameplateReader.Longest} characters, which no label is", Form);
        var label = NameplateReader.Read(part.Label);
        if (!LineParts.HasFigures(label))
            return line.Refuse("it says no voltage, current or power", Form);
        if (part.Id is not null && RefuseId(part.Id, "a load", mayHaveSlash: true, line.Number, places) is { } refusal)
            return line.Refuse(refusal);
        var id = part.Id ?? free.Next();
        return new EntryRow
        {
            Line = line.Number,
            Text = line.Text,
            Load = new Load { Id = id, Label = label },
            IsIdProposed = part.Id is null,
            Replaces = existing.Contains(id) ? [id] : [],
        };
    }
}
