using Loadmark.Core.Gear;

namespace Loadmark.Core.Nameplates.Reading;

/// <summary>
/// Reads which contact has which sign, in words and signs and in either order: "centre negative", "neg. tip",
/// "outer +", "(-) center", "-ve centre".
/// </summary>
internal static class PolarityScanner
{
    /// <summary>Reads the phrase that starts at <paramref name="at"/>.</summary>
    /// <param name="tokens">The label.</param>
    /// <param name="at">Index of a contact, a sign or a word for one.</param>
    /// <param name="to">Index after the phrase when there is one.</param>
    /// <returns>The polarity of the centre; null when there is no such phrase.</returns>
    public static Polarity? TryRead(TokenList tokens, int at, out int to)
    {
        to = at;
        var start = at;
        while (tokens.Kind(start) == TokenKind.Open)
            start++;

        if (Contact(tokens, start) is { } contact)
        {
            var after = SkipBetween(tokens, start + 1);
            return Sign(tokens, after, out to) is { } sign ? Join(contact, sign) : null;
        }

        if (Sign(tokens, start, out var behind) is { } first)
        {
            var next = SkipBetween(tokens, behind);
            if (Contact(tokens, next) is not { } second)
                return null;

            // "- centre positive": the dash separated two phrases and was no sign.
            var bare = tokens.Kind(start) is TokenKind.Dash or TokenKind.Plus;
            if (bare && Sign(tokens, SkipBetween(tokens, next + 1), out _) is not null)
                return null;

            to = next + 1;
            return Join(second, first);
        }

        return null;
    }

    /// <summary>True for the centre, false for the sleeve, null for anything else.</summary>
    private static bool? Contact(TokenList tokens, int index) => tokens.Meaning(index) switch
    {
        WordMeaning.Centre => true,
        WordMeaning.Sleeve or WordMeaning.Barrel => false,
        WordMeaning.LetterC when IsJoinedToSign(tokens, index) => true,
        _ => null,
    };

    private static bool IsJoinedToSign(TokenList tokens, int index) =>
        tokens.Kind(index + 1) is TokenKind.Dash or TokenKind.Plus && !tokens[index + 1].SpaceBefore
        && (index + 2 >= tokens.Count || tokens[index + 2].SpaceBefore || tokens.Kind(index + 2) is not (TokenKind.Number or TokenKind.Word));

    /// <summary>True for positive, false for negative.</summary>
    private static bool? Sign(TokenList tokens, int index, out int to)
    {
        to = index;
        while (tokens.Kind(to) == TokenKind.Open)
            to++;

        bool? sign = tokens.Kind(to) switch
        {
            TokenKind.Plus => true,
            TokenKind.Dash => tokens.Meaning(to + 1) switch
            {
                // "center-negative": here the dash only joins two words.
                WordMeaning.Negative => false,
                WordMeaning.Positive => true,
                _ => false,
            },
            TokenKind.Word when tokens.Meaning(to) == WordMeaning.Positive => true,
            TokenKind.Word when tokens.Meaning(to) == WordMeaning.Negative => false,
            _ => null,
        };
        if (sign is null)
        {
            to = index;
            return null;
        }

        if (tokens.Kind(to) == TokenKind.Dash && tokens.Meaning(to + 1) is WordMeaning.Negative or WordMeaning.Positive)
            to++;
        to++;
        while (tokens.Meaning(to) == WordMeaning.Ve || tokens.Kind(to) is TokenKind.Close)
            to++;
        return sign;
    }

    private static int SkipBetween(TokenList tokens, int index)
    {
        while (tokens.Kind(index) is TokenKind.Colon or TokenKind.Punctuation or TokenKind.DirectSign or TokenKind.Close
            || tokens.Meaning(index) is WordMeaning.Filler or WordMeaning.Plug or WordMeaning.Jack
            || (tokens.Meaning(index) == WordMeaning.Centre && tokens.Meaning(index - 1) == WordMeaning.Centre)
            || (tokens.Kind(index) == TokenKind.Dash && tokens.Meaning(index + 1) is WordMeaning.Centre or WordMeaning.Sleeve))
        {
            index++;
        }

        return index;
    }

    private static Polarity Join(bool isCentre, bool isPositive) =>
        isCentre == isPositive ? Polarity.CentrePositive : Polarity.CentreNegative;
}
