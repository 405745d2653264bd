using System.Text;
using Loadmark.Core.Texts;

namespace Loadmark.Processes;

/// <summary>Makes text from files fit for a terminal: nothing in it can drive the terminal or reorder the line.</summary>
internal static class TerminalText
{
    /// <summary>
    /// The text with every control and formatting character as <c>·</c> and every broken one as <c>�</c>; tabs and line
    /// ends become spaces.
    /// </summary>
    public static string Neutral(string text)
    {
        for (var index = 0; index < text.Length; index++)
        {
            if (text[index] is < ' ' or > '~')
                return Rewrite(text);
        }

        return text;
    }

    /// <summary>The text in ASCII alone: the trade's signs spelt out, any other character as <c>?</c>.</summary>
    public static string Ascii(string text)
    {
        for (var index = 0; index < text.Length; index++)
        {
            if (text[index] > '~')
                return Spell(text);
        }

        return text;
    }

    private static string Rewrite(string text)
    {
        var safe = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            if (rune.Value is '\t' or '\n' or '\r')
                safe.Append(' ');
            else if (UnseenCharacter.Is(rune))
                safe.Append(UnseenCharacter.Sign);
            else
                safe.Append(rune);
        }

        return safe.ToString();
    }

    private static string Spell(string text)
    {
        var ascii = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
            ascii.Append(rune.IsAscii ? rune.ToString() : Spelling(rune.Value));
        return ascii.ToString();
    }

    private static string Spelling(int character) => character switch
    {
        '×' => "x",
        '·' => ".",
        '−' or '–' or '—' or '‐' or '‑' => "-",
        '‘' or '’' or '′' => "'",
        '“' or '”' or '″' => "\"",
        '≥' => ">=",
        '≤' => "<=",
        '≠' => "!=",
        '≈' => "~",
        '±' => "+/-",
        '÷' => "/",
        '→' => "->",
        '⎓' => "DC",
        '∿' => "AC",
        'Ω' or '\u2126' => "ohm",
        'µ' or 'μ' => "u",
        '²' => "2",
        'ρ' => "rho",
        '√' => "sqrt",
        'Σ' or '∑' => "sum",
        '½' => "1/2",
        '°' => "deg",
        '…' => "...",
        '\u00A0' or '\u202F' or '\u2009' => " ",
        _ => "?",
    };
}
