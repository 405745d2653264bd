using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using Loadmark.Files.Parsing;

namespace Loadmark.Files.Entry;

/// <summary>Reads supplies: a line for each, and below it, indented or numbered, the lines of its outlets.</summary>
/// <param name="target">What they are read for.</param>
internal sealed class SupplyLines(EntryTarget target)
{
    private const string Form =
        "an id and what is printed, such as brick: INPUT 100-240V~, and below it its outlets, such as 1-4: 9 V 150 mA";

    /// <summary>What proposed ids begin with.</summary>
    public const string Prefix = "S-";

    private readonly Dictionary<string, int> _places = new(StringComparer.Ordinal);

    /// <summary>A row for each supply and one for each line that is refused.</summary>
    public List<EntryRow> Read(List<SourceLine> lines)
    {
        var groups = new List<(SourceLine? Head, List<SourceLine> Outlets)>();
        foreach (var line in lines)
        {
            if (IsOutlet(line) && groups.Count > 0)
                groups[^1].Outlets.Add(line);
            else
                groups.Add(IsOutlet(line) ? (null, [line]) : (line, []));
        }

        var stated = groups.Select(group => group.Head is null ? null : LineParts.Of(group.Head.Content).Id).OfType<string>();
        var free = new IdSequence(Prefix, 2, [.. target.Existing, .. stated], target.Elsewhere);
        return [.. groups.SelectMany(group => ReadGroup(group.Head, group.Outlets, free))];
    }

    /// <summary>Whether a line is an outlet's: indented, or with a number or a range before its colon.</summary>
    private static bool IsOutlet(SourceLine line) =>
        line.IsIndented || (LineParts.Of(line.Content).Id is { } id && (OutletRange.Looks(id) || id.All(char.IsAsciiDigit)));

    private IEnumerable<EntryRow> ReadGroup(SourceLine? head, List<SourceLine> lines, IdSequence free)
    {
        if (head is null)
            return lines.Select(line => line.Refuse("this is an outlet, and no supply stands before it", Form));
        var part = LineParts.Of(head.Content);
        var outlets = new OutletLines([]).Read(lines);
        var label = part.Label.Length == 0 ? null : NameplateReader.Read(part.Label);
        ValueList<Outlet> listed = [.. outlets.Where(row => row.Refusal is null).SelectMany(row => row.Outlets)];
        var said = LabelledOutlets.Of(label, out var unsaid);
        var untold = listed.Count > 0 || (lines.Count == 0 && said is not null) ? null
            : lines.Count > 0 ? "none of its outlets can be read"
            : $"nothing tells what it gives: no outlets stand below it, and {unsaid}";
        if (Refuse(head, part, untold) is { } refusal)
            return [head.Refuse(refusal), .. lines.Select(line => line.Refuse($"its supply, on line {head.Number}, is refused", null))];
        var id = part.Id ?? free.Next();
        var row = new EntryRow
        {
            Line = head.Number,
            Text = string.Join('\n', outlets.Where(one => one.Refusal is null).Select(one => one.Text).Prepend(head.Text)),
            Supply = new Supply
            {
                Id = id,
                Label = label,
                Outlets = lines.Count == 0 ? said!.Value : listed,
            },
            Parts = [.. outlets.Where(static one => one.Refusal is null)],
            IsIdProposed = part.Id is null,
            Replaces = target.Existing.Contains(id) ? [id] : [],
        };
        return outlets.Where(one => one.Refusal is not null).Prepend(row);
    }

    /// <summary>Why the supply cannot be taken; null when it can, and its line is noted.</summary>
    /// <param name="head">Its line.</param>
    /// <param name="part">What stands there.</param>
    /// <param name="untold">Why it has no outlets; null where it has some.</param>
    private EntryRefusal? Refuse(SourceLine head, LineParts part, string? untold)
    {
        if (SourceLine.RefuseCharacters(head.Text) is { } odd)
            return odd;
        if (part.Label.Length > NameplateReader.Longest)
            return new EntryRefusal($"it is longer than {NameplateReader.Longest} characters, which no label is", Form);
        if (untold is not null)
            return new EntryRefusal(untold, Form);
        return part.Id is null ? null : LoadLines.RefuseId(part.Id, "a supply", mayHaveSlash: false, head.Number, _places);
    }
}
