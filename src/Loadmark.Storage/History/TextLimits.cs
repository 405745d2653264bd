using System.Text;

namespace Loadmark.Storage.History;

/// <summary>What may be kept; anything else is the caller's mistake.</summary>
internal static class TextLimits
{
    /// <summary>The longest text, in bytes of UTF-8.</summary>
    public const int LongestText = 1024 * 1024;

    public static void CheckText(string text, string parameter)
    {
        ArgumentNullException.ThrowIfNull(text, parameter);
        if (Encoding.UTF8.GetByteCount(text) > LongestText)
            throw new ArgumentException($"The text is longer than {LongestText} bytes.", parameter);
    }

    /// <summary>
    /// Words stand in the database as text, which some databases end at a zero, and which holds no half of a surrogate pair.
    /// </summary>
    public static void CheckWords(string words, string parameter)
    {
        CheckText(words, parameter);
        if (words.Contains('\0') || !IsWellFormed(words))
            throw new ArgumentException("Not Unicode text, or with a zero in it.", parameter);
    }

    private static bool IsWellFormed(string words)
    {
        for (var at = 0; at < words.Length;)
        {
            if (!Rune.TryGetRuneAt(words, at, out var rune))
                return false;
            at += rune.Utf16SequenceLength;
        }

        return true;
    }
}
