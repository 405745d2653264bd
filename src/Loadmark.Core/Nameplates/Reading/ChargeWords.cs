namespace Loadmark.Core.Nameplates.Reading;

/// <summary>
/// Whether a label with a low-voltage input tells that the thing holds a charge of its own, so that the input is for charging: a power bank, a
/// battery pack. Source: common practice, no source; IEC 61960 prints what lithium cells hold in Ah or Wh.
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
            if (token.Sign is not (Sign.Word or Sign.Foreign or Sign.Identifier) || !Tells(text[token.Start..token.End]))
                continue;
            found = token.Understood = true;

            // "POWER BANK": the word before is a part of it.
            if (i > 0 && text[token.Start..token.End].Equals("bank", StringComparison.OrdinalIgnoreCase))
                tokens[i - 1].Understood = true;
        }

        return found;
    }

    private static bool Tells(ReadOnlySpan<char> word)
    {
        Span<char> lower = stackalloc char[Math.Min(word.Length, Longest)];
        if (word.Length > Longest || word.ToLowerInvariant(lower) != word.Length)
            return false;
        return lower is "bank" or "powerbank" or "battery" or "batteries" or "batterie" or "batería" or "bateria" or "akku" or "accu" or "accumulator"
                or "mah" or "wh" or "lipo" or "lithium" or "li-ion" or "バッテリー" or "電池"
            || (char.IsAsciiDigit(lower[0]) && (lower.EndsWith("mah") || lower.EndsWith("wh")));
    }

    private const int Longest = 16;
}
