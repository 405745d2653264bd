using Loadmark.Core.Nameplates;

namespace Loadmark.Files.Entry;

/// <summary>
/// What somebody says of one thing, "my delay says 9V DC 300mA", taken apart into a name and what is printed. A name stands before a colon,
/// or it is the one piece of words that no label has; words round it that name nothing ("my", "says") are left out.
/// </summary>
/// <param name="Name">The name; null where none is told.</param>
/// <param name="Label">What is printed.</param>
public sealed record NamedLabel(string? Name, string Label)
{
    private const int ShortestName = 3;
    private const int LongestName = 40;
    private const int MostWords = 4;

    private static readonly HashSet<string> Fillers = new(StringComparer.OrdinalIgnoreCase)
    {
        "a", "an", "and", "at", "back", "for", "gives", "got", "had", "has", "have", "here", "i", "i've", "in", "is", "it", "it's", "its",
        "label", "labelled", "marked", "my", "needs", "of", "on", "our", "printed", "reads", "s", "said", "says", "sticker", "takes",
        "that", "the", "there", "this", "underneath", "using", "wants", "which", "with", "your",
    };

    /// <summary>Words for a thing that gives; on labels they are read and mean no figure, so that they can be a name.</summary>
    private static readonly HashSet<string> Devices = new(StringComparer.OrdinalIgnoreCase)
    {
        "adapter", "adaptor", "battery", "block", "box", "brick", "charger", "mains", "pack", "plug", "power", "psu", "supply", "unit",
        "wall", "wart",
    };

    /// <summary>Takes a text apart. What it says of figures is the same before and after.</summary>
    /// <param name="text">One line, as typed.</param>
    public static NamedLabel Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var trimmed = text.Trim();
        if (trimmed.Length > NameplateReader.Longest)
            return new NamedLabel(null, trimmed);
        var colon = trimmed.IndexOf(':', StringComparison.Ordinal);
        if (colon > 0 && DeviceIn(trimmed[..colon]) is { } device)
            return new NamedLabel(device, trimmed[(colon + 1)..].Trim());
        var parts = LineParts.Of(trimmed);
        if (parts.Id is not { } id)
            return OfSpeech(trimmed);

        // What the words before the colon say of the thing ("isolated", "not regulated") is not lost with them.
        return new NamedLabel(NameIn(id) ?? id, SaysMoreThanAName(id) ? $"{id} {parts.Label}" : parts.Label);
    }

    private static bool SaysMoreThanAName(string words) =>
        NameplateWriter.Write(NameplateReader.Read($"9 V {words}")) != NameplateWriter.Write(NameplateReader.Read("9 V"));

    private static NamedLabel OfSpeech(string text)
    {
        var reading = NameplateReader.Read(text);
        var named = reading.Unread.Select(static piece => (piece.Place, Name: NameIn(piece.Text))).ToList();
        var names = named.Where(static piece => piece.Name is not null).ToList();
        var rest = reading.Unread.Where(piece => Words(piece.Text).All(Fillers.Contains)).Select(static piece => piece.Place)
            .Concat(names.Take(names.Count == 1 ? 1 : 0).Select(static piece => piece.Place));
        var label = LabelTrim.Without(text, rest);

        // Words can also say what a figure is of: where the rest says something else without them, they stay.
        if (names.Count > 1 || NameplateWriter.Write(NameplateReader.Read(label)) != NameplateWriter.Write(reading))
            return new NamedLabel(null, text);
        return new NamedLabel(names.Count == 1 ? names[0].Name : DeviceIn(FirstWords(label)), label);
    }

    /// <summary>The words before the first figure.</summary>
    private static string FirstWords(string label)
    {
        var digit = label.AsSpan().IndexOfAnyInRange('0', '9');
        return digit < 0 ? label : label[..digit];
    }

    /// <summary>
    /// A name in a piece that was not read; null where it names nothing, or is too long for a name, or holds a figure alone.
    /// </summary>
    private static string? NameIn(string piece)
    {
        var words = Words(piece).SkipWhile(Fillers.Contains).Reverse().SkipWhile(Fillers.Contains).Reverse().ToList();
        var name = string.Join(' ', words);
        return words.Count is > 0 and <= MostWords && name.Length is >= ShortestName and <= LongestName && char.IsLetter(name[0])
            ? name
            : null;
    }

    /// <summary>The words for a thing that gives, where a text is only those and fillers.</summary>
    private static string? DeviceIn(string text)
    {
        var words = Words(text).Where(static word => !Fillers.Contains(word)).ToList();
        return words.Count is > 0 and <= MostWords && words.TrueForAll(Devices.Contains)
            ? string.Join(' ', words).ToLowerInvariant()
            : null;
    }

    private static string[] Words(string text) =>
        text.Split([' ', '\t', ',', ';', '(', ')', '[', ']', '"', '“', '”', '.', ':', '='], StringSplitOptions.RemoveEmptyEntries);
}
