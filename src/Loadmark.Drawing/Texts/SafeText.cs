using System.Globalization;
using System.Text;
using Loadmark.Core.Texts;

namespace Loadmark.Drawing.Texts;

/// <summary>
/// Makes text from files fit for a picture: nothing in it that XML does not allow, that turns the line around or that
/// piles up over its neighbours.
/// </summary>
public static class SafeText
{
    private const int MostMarks = 2;

    /// <summary>
    /// The text with every control and formatting character as <c>·</c>, so that it is seen that there is one, with line ends and tabs as
    /// spaces, with broken halves of characters as <c>�</c>, and with at most two combining marks in a row.
    /// </summary>
    public static string Clean(string text)
    {
        foreach (var character in text)
        {
            if (character is < ' ' or > '~')
                return Rewrite(text);
        }

        return text;
    }

    private static string Rewrite(string text)
    {
        var safe = new StringBuilder(text.Length);
        var marks = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            if (rune.Value is '\t' or '\n' or '\r' or 0x2028 or 0x2029)
            {
                safe.Append(' ');
                continue;
            }

            if (UnseenCharacter.Is(rune))
            {
                safe.Append(UnseenCharacter.Sign);
                continue;
            }

            switch (Rune.GetUnicodeCategory(rune))
            {
                case UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.SpacingCombiningMark:
                    if (++marks <= MostMarks && safe.Length > 0)
                        safe.Append(rune);
                    break;
                default:
                    marks = 0;
                    safe.Append(rune);
                    break;
            }
        }

        return safe.ToString();
    }
}
