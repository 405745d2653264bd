namespace Loadmark.Meters.Scpi;

/// <summary>One word of a header's pattern.</summary>
/// <param name="Short">Its short form: the letters that are written large in the pattern.</param>
/// <param name="Long">Its long form: all of them.</param>
/// <param name="IsNumbered">Whether a number may stand behind it.</param>
/// <param name="IsOptional">Whether it may be left out.</param>
internal sealed record HeaderNode(string Short, string Long, bool IsNumbered, bool IsOptional)
{
    /// <summary>Whether a word that was sent is this one; only its short and its long form are, in any case.</summary>
    public bool Matches(ReadOnlySpan<char> word)
    {
        var name = IsNumbered ? word.TrimEnd("0123456789") : word;
        return name.Equals(Short, StringComparison.OrdinalIgnoreCase) || name.Equals(Long, StringComparison.OrdinalIgnoreCase);
    }
}
