namespace Loadmark.Core.Texts;

/// <summary>The first letter and the end of sentences that are put together from pieces.</summary>
public static class SentenceCase
{
    /// <summary>The text with a capital letter at its beginning.</summary>
    /// <param name="text">The text; may be empty.</param>
    public static string Capital(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Length == 0 ? text : $"{char.ToUpperInvariant(text[0])}{text.AsSpan(1)}";
    }

    /// <summary>The text with a small letter at its beginning, as it goes on after a colon.</summary>
    /// <param name="text">The text; may be empty.</param>
    public static string Small(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Length == 0 ? text : $"{char.ToLowerInvariant(text[0])}{text.AsSpan(1)}";
    }

    /// <summary>
    /// The text as a sentence that stands alone: with a capital letter, and a full stop unless it ends in a mark of its own.
    /// </summary>
    /// <param name="text">The text, not empty.</param>
    public static string Whole(string text) => Ended(Capital(text));

    /// <summary>The text with a full stop unless it ends in a mark of its own.</summary>
    /// <param name="text">The text, not empty.</param>
    public static string Ended(string text)
    {
        ArgumentException.ThrowIfNullOrEmpty(text);
        return text[^1] is '?' or '.' ? text : $"{text}.";
    }
}
