using System.Collections.Immutable;

namespace Loadmark.Codes.Packing;

/// <summary>Codes as they are found, from one picture or several, in any order, some of them twice.</summary>
public sealed class GatheredCodes
{
    /// <summary>How many different codes are kept, so that pictures full of them do not fill the memory.</summary>
    private const int Most = 1024;

    private Dictionary<string, CodeKind> _seen = new(StringComparer.Ordinal);
    private List<CodePart> _parts = [];

    /// <summary>How many different codes of a kind were found.</summary>
    public int CountOf(CodeKind kind) => _seen.Values.Count(one => one == kind);

    /// <summary>Whether parts were found, and none is missing of any text.</summary>
    public bool IsWhole => _parts.Count > 0
        && _parts.GroupBy(static part => (part.Text, part.Count))
            .All(static text => text.Select(static part => part.Number).Distinct().Count() == text.Key.Count);

    /// <summary>Adds what a code holds.</summary>
    /// <param name="bytes">Its bytes.</param>
    public CodeKind Add(ReadOnlySpan<byte> bytes)
    {
        var kind = CodePart.Read(bytes, out var part);
        if (_seen.Count < Most && _seen.TryAdd(Convert.ToHexString(bytes), kind) && part is not null)
            _parts.Add(part);
        return kind;
    }

    /// <summary>The same codes, to which others can be added without adding them here.</summary>
    public GatheredCodes Copy()
    {
        var copy = new GatheredCodes();
        copy.Take(this);
        return copy;
    }

    /// <summary>Puts others' codes in the place of these.</summary>
    /// <param name="others">The others, to which nothing is added any more.</param>
    public void Take(GatheredCodes others)
    {
        ArgumentNullException.ThrowIfNull(others);
        (_seen, _parts) = (new(others._seen, StringComparer.Ordinal), [.. others._parts]);
    }

    /// <summary>The texts that were found, whole or in part, in the order in which the first code of each was found.</summary>
    public ImmutableArray<GatheredText> Texts() =>
    [
        .. _parts.GroupBy(static part => (part.Text, part.Count)).Select(static text =>
        {
            var parts = text.OrderBy(static part => part.Number).ToList();
            var numbers = parts.Select(static part => part.Number).Distinct().ToImmutableArray();
            // Two parts of one number and one text are of somebody who made them so: they do not fit together.
            var isWhole = numbers.Length == text.Key.Count && parts.Count == numbers.Length;
            return new GatheredText(text.Key.Text, text.Key.Count, numbers, isWhole ? TextCodes.Unpack(parts) : null);
        }),
    ];
}
