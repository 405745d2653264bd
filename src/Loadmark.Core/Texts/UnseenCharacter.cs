using System.Globalization;
using System.Text;

namespace Loadmark.Core.Texts;

/// <summary>
/// Which characters of a text from a file are not seen, or do something to what shows them instead of being seen; and what stands in their
/// place, so that it is seen that there is one.
/// </summary>
public static class UnseenCharacter
{
    /// <summary>What is shown in the place of such a character.</summary>
    public const char Sign = '·';

    /// <summary>
    /// Whether a character is a control or formatting character (it turns the line around, joins, or has no width), a line or paragraph
    /// separator, one without a meaning that all agree on, or half of one.
    /// </summary>
    /// <param name="rune">The character. Tabs and line ends count as well: whoever shows them otherwise asks about them first.</param>
    /// <remarks>Source: the general categories Cc, Cf, Zl, Zp, Co, Cn and Cs of the Unicode Standard, table 4-4.</remarks>
    public static bool Is(Rune rune) => Rune.GetUnicodeCategory(rune)
        is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
        or UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned or UnicodeCategory.Surrogate;
}
