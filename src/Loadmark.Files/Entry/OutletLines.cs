using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using Loadmark.Files.Errors;
using Loadmark.Files.Parsing;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Entry;

/// <summary>Reads the outlets of one supply, one or a range of them a line; an instance serves once.</summary>
/// <param name="existing">The ids of the outlets that are there already.</param>
internal sealed class OutletLines(IReadOnlyCollection<string> existing)
{
    private const string Form = "an id or a range and what is printed, such as 1-4: 9 V 150 mA";

    private readonly HashSet<string> _existing = existing.ToHashSet(StringComparer.Ordinal);
    private readonly Dictionary<string, Spot> _places = new(StringComparer.Ordinal);
    private readonly OutletAllowance _allowance = new();

    /// <summary>A row for each line.</summary>
    public List<EntryRow> Read(List<SourceLine> lines)
    {
        var parts = lines.ConvertAll(line => LineParts.Of(line.Content));
        var stated = parts.Select(part => part.Id).OfType<string>()
            .SelectMany(id => OutletRange.Looks(id) ? OutletRange.Expand(id, out _) ?? [] : [id]);
        var free = new IdSequence("", 1, [.. existing, .. stated]);
        return [.. lines.Zip(parts, (line, part) => ReadLine(line, part, free))];
    }

    private EntryRow ReadLine(SourceLine line, LineParts part, IdSequence free)
    {
        if (SourceLine.RefuseCharacters(line.Text) is { } odd)
            return line.Refuse(odd);
        if (part.Label.Length > NameplateReader.Longest)
            return line.Refuse($"it is longer than {NameplateReader.Longest} characters, which no label is", Form);

        // An outlet with nothing after its colon gives what its supply's label says.
        if (part.Label.Length > 0 && !LineParts.HasFigures(NameplateReader.Read(part.Label)))
            return line.Refuse("it says no voltage, current or power", Form);
        var spot = new Spot(line.Number, 1, 0);
        var errors = new ErrorList("");
        var outlets = new List<Outlet>();
        var id = part.Id ?? free.Next();
        OutletReader.Read(
            new ScalarNode(spot, id, isPlain: false),
            new ScalarNode(spot, part.Label, isPlain: false),
            _places,
            outlets,
            _allowance,
            errors);
        if (errors.Any)
            return line.Refuse(errors.ToArray()[0].Message, Form);
        return new EntryRow
        {
            Line = line.Number,
            Text = line.Text,
            Outlets = [.. outlets],
            IsIdProposed = part.Id is null,
            Replaces = [.. outlets.Select(outlet => outlet.Id).Where(_existing.Contains)],
        };
    }
}
