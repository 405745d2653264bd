namespace Loadmark.Core.Nameplates.Parsing;

/// <summary>
/// Whether a label with a low-voltage input tells that the thing holds a charge of its own, so that the input is for charging: a power
/// bank, a battery pack. Where the word is denied ("not for batteries") or names what works on batteries or stands in for them ("battery
/// charger", "battery eliminator"), nothing is told. Source: common practice, no source; IEC 61960 prints what lithium cells hold in Ah or
/// Wh.
/// </summary>
internal static class ChargeWords
{
    /// <summary>Looks through the tokens and marks those that say so as understood.</summary>
    /// <param name="tokens">The label's tokens.</param>
    /// <param name="text">The label.</param>
    public static bool Mark(Span<Token> tokens, ReadOnlySpan<char> text)
    {
        var found = false;
        for (var i = 0; i < tokens.Length; i++)
        {
            ref var token = ref tokens[i];
            if (token.Sign is not (Sign.Word or Sign.Foreign or Sign.Identifier) || !Tells(text[token.Start..token.End])
                || IsDenied(tokens, i, text) || NamesAnother(tokens, i, text))
            {
                continue;
            }

            found = token.Understood = true;

            // "POWER BANK": the word before is a part of it.
            if (i > 0 && text[token.Start..token.End].Equals("bank", StringComparison.OrdinalIgnoreCase))
                tokens[i - 1].Understood = true;
        }

        return found;
    }

    /// <summary>"not for use with batteries", "no battery": up to four words before, in one line, something denies it.</summary>
    private static bool IsDenied(ReadOnlySpan<Token> tokens, int index, ReadOnlySpan<char> text)
    {
        for (var i = index - 1; i >= 0 && i >= index - Reach; i--)
        {
            var token = tokens[i];
            if (token.Sign is Sign.NewLine or Sign.Point or Sign.Semicolon)
                return false;
            if (token.Sign == Sign.Not || IsOneOf(text[token.Start..token.End], Denials))
                return true;
        }

        return false;
    }

    /// <summary>"battery charger", "charger for batteries", "battery eliminator": another thing than what holds a charge.</summary>
    private static bool NamesAnother(ReadOnlySpan<Token> tokens, int index, ReadOnlySpan<char> text)
    {
        if (index + 1 < tokens.Length && IsOneOf(text[tokens[index + 1].Start..tokens[index + 1].End], Others))
            return true;
        return index > 1 && IsOneOf(text[tokens[index - 1].Start..tokens[index - 1].End], ["for", "für", "pour", "para", "per", "voor"])
            && IsOneOf(text[tokens[index - 2].Start..tokens[index - 2].End], Others);
    }

    private static bool IsOneOf(ReadOnlySpan<char> word, ReadOnlySpan<string> words)
    {
        foreach (var other in words)
        {
            if (word.Equals(other, StringComparison.OrdinalIgnoreCase))
                return true;
        }

        return false;
    }

    private static bool Tells(ReadOnlySpan<char> word)
    {
        Span<char> lower = stackalloc char[Math.Min(word.Length, Longest)];
        if (word.Length > Longest || word.ToLowerInvariant(lower) != word.Length)
            return false;
        return lower is "bank" or "powerbank" or "battery" or "batteries" or "batterie" or "batería" or "bateria" or "akku" or "accu"
            or "accumulator" or "mah" or "wh" or "lipo" or "lithium" or "li-ion" or "バッテリー" or "電池"
            || (char.IsAsciiDigit(lower[0]) && (lower.EndsWith("mah") || lower.EndsWith("wh")));
    }

    private static readonly string[] Denials =
        ["no", "without", "nor", "nicht", "kein", "keine", "ohne", "sans", "pas", "sin", "senza", "non", "sem", "geen", "zonder"];

    private static readonly string[] Others =
        [
            "charger", "chargers", "eliminator", "replacement", "replacer", "substitute", "saver", "clip", "snap", "connector", "operated",
            "powered", "ladegerät", "chargeur", "cargador",
        ];

    private const int Longest = 16;

    private const int Reach = 4;
}
