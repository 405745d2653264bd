using System.Text;
using Loadmark.Drawing.Scenes;

namespace Loadmark.Drawing.Texts;

/// <summary>Shortens what is too long for its place.</summary>
internal static class FittedText
{
    private const string Ellipsis = "…";

    /// <summary>The text where it fits, else as much of it as does with … behind; empty where not even that fits.</summary>
    /// <param name="text">A text that went through <see cref="SafeText"/>.</param>
    /// <param name="role">What it is for, which decides its size.</param>
    /// <param name="isBold">Whether it is bold.</param>
    /// <param name="width">The room in px.</param>
    public static string Of(string text, TextRole role, bool isBold, double width)
    {
        var space = width * 1000 / TextWidth.SizeOf(role);
        var dots = (double)TextWidth.Of(new Rune(Ellipsis[0]), isBold);
        var (taken, kept, length) = (0.0, 0, 0);
        foreach (var rune in text.EnumerateRunes())
        {
            taken += TextWidth.Of(rune, isBold);
            if (taken > space)
                return dots > space ? "" : text[..kept].TrimEnd() + Ellipsis;
            length += rune.Utf16SequenceLength;
            if (taken + dots <= space)
                kept = length;
        }

        return text;
    }
}
