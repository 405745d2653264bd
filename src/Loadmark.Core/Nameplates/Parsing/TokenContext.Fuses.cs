namespace Loadmark.Core.Nameplates.Parsing;

/// <content>Figures that are not the thing's own: ratings of fuses. Signs before a figure.</content>
internal static partial class TokenContext
{
    /// <summary>The usual rated voltage of a miniature fuse (IEC 60127-2).</summary>
    private const decimal FuseVolts = 250m;

    /// <summary>The rating of a fuse is neither what the thing draws nor its mains.</summary>
    private static void ResolveFuses(Span<Token> tokens, ReadOnlySpan<char> text)
    {
        for (var i = 0; i < tokens.Length; i++)
        {
            if (tokens[i].Sign == Sign.Fuse)
            {
                // "250 V 1 A fuse" and "1 A 250 V fuse" as well: with its current, a voltage beside the word is the fuse's.
                var last = i >= 2 && IsFigure(tokens, i - 2, Sign.Ampere) ? i - 2 : i;
                if (i >= 4 && IsFigure(tokens, i - 2, Sign.Volt) && IsFigure(tokens, i - 4, Sign.Ampere))
                    last = i - 4;
                else if (last < i && IsFigure(tokens, i - 4, Sign.Volt) && tokens[i - 4].Value == FuseVolts)
                    last = i - 4;
                Identify(tokens[last..i]);
                ResolveFuseAfter(tokens, i + 1, text);
            }
            else if (tokens[i].Sign == Sign.Identifier && IsFuseCode(text[tokens[i].Start..tokens[i].End]))
            {
                // "T0.5A 250V" without the word.
                var next = i + 1 < tokens.Length && tokens[i + 1].Sign == Sign.Slash ? i + 2 : i + 1;
                if (IsFigure(tokens, next, Sign.Volt))
                    Identify(tokens.Slice(next, 2));
            }
        }
    }

    /// <summary>"T500mA 250V": how it blows, at what current, up to what voltage.</summary>
    private static void ResolveFuseAfter(Span<Token> tokens, int next, ReadOnlySpan<char> text)
    {
        for (var parts = 0; parts < 5 && next < tokens.Length; parts++)
        {
            if (tokens[next].Sign == Sign.Identifier || tokens[next].Sign is Sign.Colon or Sign.Slash
                || (tokens[next].Sign is Sign.Word && tokens[next].Length <= 2))
            {
                next++;
            }
            else if (IsFigure(tokens, next, Sign.Ampere) || IsFigure(tokens, next, Sign.Volt))
            {
                Identify(tokens.Slice(next, 2));
                next += 2;
                if (text[tokens[next - 1].Start] is 'v' or 'V')
                    return;
            }
            else
            {
                return;
            }
        }
    }

    private static bool IsFigure(ReadOnlySpan<Token> tokens, int i, char unit) =>
        i >= 0 && i + 1 < tokens.Length && tokens[i].Sign == Sign.Number && tokens[i + 1].Sign == unit;

    private static void Identify(Span<Token> tokens)
    {
        foreach (ref var token in tokens)
            token.Sign = Sign.Identifier;
    }

    /// <summary>F, T, M, FF or TT (IEC 60127-1: how fast it blows) and a current.</summary>
    private static bool IsFuseCode(ReadOnlySpan<char> code)
    {
        var letters = 0;
        while (letters < code.Length && code[letters] is 'F' or 'T' or 'M')
            letters++;
        if (letters is < 1 or > 2 || letters >= code.Length || code[letters] is < '0' or > '9')
            return false;
        return code.TrimEnd("LHE") is [.., 'A'];
    }

    /// <summary>
    /// A minus before a voltage is no dash between two pieces: it comes back unread rather than vanish. "+/-15V" and
    /// "+12V / -12V" are split supplies, which no single voltage describes.
    /// </summary>
    private static void ResolveSigns(Span<Token> tokens)
    {
        for (var i = 0; i + 2 < tokens.Length; i++)
        {
            if (IsSum(tokens, i, out var second))
            {
                // "9 V + 18 V": two outlets, two rails or one voltage over both.
                Identify(tokens[i..(second + 2)]);
                i = second + 1;
                continue;
            }

            if (tokens[i].Sign is not (Sign.Plus or Sign.Dash))
                continue;

            var number = i + 1;
            while (number < i + 3 && number < tokens.Length && tokens[number].Sign is Sign.Slash or Sign.Dash or Sign.Plus)
                number++;
            var both = number > i + 1 && tokens[number - 1].Sign != tokens[i].Sign && tokens[number - 1].Sign != Sign.Slash
                && tokens[number - 1].Start <= tokens[i].End + 1;
            if (both && number + 1 < tokens.Length && tokens[number].Sign == Sign.Number && Sign.IsUnit(tokens[number + 1].Sign))
            {
                Identify(tokens[i..(number + 2)]);
                i = number + 1;
            }
            else if (IsSigned(tokens, i))
            {
                if (IsSplit(tokens, i, out var other))
                    Identify(tokens[i..(other + 3)]);
                else if (tokens[i].Sign == Sign.Dash)
                    tokens[i].Sign = Sign.Word;
            }
        }
    }

    /// <summary>
    /// "plus/minus 15 V", "dual rail 15 V", "bipolar 15 V": split supplies in words. The voltage beside the words is none that one setting
    /// has.
    /// </summary>
    private static void ResolveRails(Span<Token> tokens, ReadOnlySpan<char> lower)
    {
        for (var i = 0; i < tokens.Length; i++)
        {
            if (tokens[i].Sign == Sign.Positive && IsPlusMinus(tokens[i..], lower))
            {
                Identify(tokens.Slice(i, 5));
            }
            else if (tokens[i].Sign == Sign.Word
                && lower[tokens[i].Start..tokens[i].End] is "rail" or "rails" or "bipolar" or "symmetric" or "symmetrical")
            {
                var volts = RailVolts(tokens, i);
                if (volts >= 0)
                    Identify(tokens.Slice(volts, 2));
            }
        }
    }

    private static bool IsPlusMinus(ReadOnlySpan<Token> tokens, ReadOnlySpan<char> lower) =>
        tokens.Length >= 5 && lower[tokens[0].Start..tokens[0].End] is "plus" && lower[tokens[2].Start..tokens[2].End] is "minus"
        && tokens[1].Sign is Sign.Slash or Sign.Or or Sign.And or Sign.Dash && IsFigure(tokens, 3, Sign.Volt);

    /// <summary>Where the voltage is that goes with a word for rails: the next, else the last before it; −1 where none is near.</summary>
    private static int RailVolts(ReadOnlySpan<Token> tokens, int word)
    {
        const int reach = 5;
        for (var i = word + 1; i < tokens.Length && i < word + reach && tokens[i].Sign is not (Sign.NewLine or Sign.Semicolon); i++)
        {
            if (IsFigure(tokens, i, Sign.Volt))
                return i;
        }

        for (var i = word - 1; i >= 0 && i > word - reach && tokens[i].Sign is not (Sign.NewLine or Sign.Semicolon or Sign.Identifier); i--)
        {
            if (IsFigure(tokens, i, Sign.Volt))
                return i;
        }

        return -1;
    }

    /// <summary>Whether the sign at <paramref name="i"/> is glued to a voltage and to nothing before it.</summary>
    private static bool IsSigned(ReadOnlySpan<Token> tokens, int i)
    {
        if (!IsFigure(tokens, i + 1, Sign.Volt) || tokens[i].Length != 1 || tokens[i + 1].Spaced)
            return false;
        if (i == 0)
            return true;
        var before = tokens[i - 1].Sign;
        if (before is Sign.Open or Sign.NewLine or Sign.Slash or Sign.Comma or Sign.Semicolon or Sign.Colon)
            return true;

        // "9 V -18 V" is a range, "centre -9V" the sign of the contact.
        var range = Sign.IsUnit(before) || before is Sign.Number
            || (before is Sign.Direct or Sign.Alternating && i >= 2 && Sign.IsUnit(tokens[i - 2].Sign));
        return tokens[i].Spaced && !range && before is not (Sign.Centre or Sign.Pin or Sign.Sleeve or Sign.Barrel);
    }

    /// <summary>"+12V / -12V": the same voltage again, soon after, with the other sign.</summary>
    private static bool IsSplit(ReadOnlySpan<Token> tokens, int i, out int other)
    {
        for (other = i + 3; other < i + 8 && other < tokens.Length; other++)
        {
            if (tokens[other].Sign != tokens[i].Sign && tokens[other].Sign is Sign.Plus or Sign.Dash
                && IsFigure(tokens, other + 1, Sign.Volt) && tokens[other + 1].Value == tokens[i + 1].Value)
                return true;
        }

        return false;
    }
}
