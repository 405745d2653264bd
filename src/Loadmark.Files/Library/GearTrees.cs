using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using Loadmark.Core.Texts;
using Loadmark.Files.Entry;
using Loadmark.Files.Errors;
using Loadmark.Files.Keys;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Library;

/// <summary>Reads the sections of a file of gear.</summary>
internal static class GearTrees
{
    /// <summary>The key of the words that a piece is filed under, which a rig file does not have.</summary>
    public const string Words = "words";

    private static readonly (string Section, GearKind Kind)[] Sections =
        [("loads", GearKind.Load), ("supplies", GearKind.Supply), ("leads", GearKind.Lead)];

    /// <summary>The rows of a tree.</summary>
    public static GearFileResult Read(Node root, ErrorList errors)
    {
        if (root is not MappingNode file)
            errors.ExpectedForm(root.Start, root.Form, "the file", "the sections loads, supplies or leads");
        if (errors.Any)
            return new GearFileResult([], errors.ToArray(), []);

        var rows = new List<GearFileRow>();
        foreach (var (key, value) in ((MappingNode)root).Entries)
        {
            var kind = Array.Find(Sections, section => section.Section == key.Value);
            if (kind.Section is null && !RigKeys.Rig.Has(key.Value))
                rows.Add(RefuseSection(key));
            else if (kind.Section is not null && value is MappingNode section)
                rows.AddRange(section.Entries.Select(entry => ReadPiece(kind.Kind, entry.Key, entry.Value)));
            else if (kind.Section is not null && !value.IsNull)
                rows.Add(new GearFileRow
                {
                    Line = value.Start.Line,
                    Kind = kind.Kind,
                    Tag = "",
                    Refusal = new EntryRefusal($"{key.Value}: expected tags with what is said of each, found {value.Form}", null),
                });
        }

        return new GearFileResult([.. rows.OrderBy(static row => row.Line)], [], []);
    }

    /// <summary>Words that a piece is filed under, as they are typed in one text: with commas or semicolons between.</summary>
    public static ValueList<string> Split(string words) =>
        [.. words.Split([',', ';', '\n', '\r'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            .Distinct(StringComparer.OrdinalIgnoreCase)];

    private static GearFileRow RefuseSection(ScalarNode key)
    {
        var nearest = NearestWord.Find(key.Value, Sections.Select(static section => section.Section));
        var hint = nearest is null ? "the sections are loads, supplies and leads" : $"did you mean '{nearest}'?";
        return new GearFileRow
        {
            Line = key.Start.Line,
            Tag = "",
            Refusal = new EntryRefusal($"'{ErrorList.Quote(key.Value)}' is not a section of a file of gear; {hint}", nearest),
        };
    }

    private static GearFileRow ReadPiece(GearKind kind, ScalarNode id, Node value)
    {
        var row = new GearFileRow { Line = id.Start.Line, Kind = kind, Tag = id.Value };
        var keys = new MappingNode(value.Start, isFlow: true);
        ValueList<string>? words = null;
        foreach (var (key, inner) in (value as MappingNode)?.Entries ?? [])
        {
            if (key.Value == "from")
                return row with { Refusal = new EntryRefusal("it says 'from', so that its figures stand elsewhere and not here", null) };
            if (key.Value == Words)
                words = Split(
                    string.Join(
                        '\n',
                        (inner as SequenceNode)?.Items.OfType<ScalarNode>()
                            .Select(static one => one.Value) ?? [(inner as ScalarNode)?.Value ?? ""]));
            else
                keys.Entries.Add((key, inner));
        }

        var errors = new ErrorList("");
        var piece = GearText.ReadNode(kind, id, value is MappingNode || value.IsNull ? keys : value, errors);
        if (errors.Any)
        {
            var first = errors.ToArray()[0];
            return row with { Line = first.Line, Refusal = new EntryRefusal(first.Message, first.Expected) };
        }

        return row with { Piece = piece, Words = words };
    }
}
