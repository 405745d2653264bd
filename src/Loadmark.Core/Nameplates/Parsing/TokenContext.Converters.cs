namespace Loadmark.Core.Nameplates.Parsing;

/// <content>What a thing makes of one voltage: converters, and voltages inside.</content>
internal static partial class TokenContext
{
    /// <summary>
    /// "5 V to 9 V step-up": beside a word for a converter the voltages are no range, but what goes in and what comes out.
    /// </summary>
    private static void ResolveConverters(Span<Token> tokens, ReadOnlySpan<char> lower)
    {
        if (!HasConverter(tokens, lower))
            return;
        for (var i = 2; i + 2 < tokens.Length; i++)
        {
            if (tokens[i].Sign != Sign.To || !IsFigure(tokens, i + 1, Sign.Volt))
                continue;
            var volts = tokens[i - 1].Sign is Sign.Direct or Sign.Alternating ? i - 3 : i - 2;
            if (IsFigure(tokens, volts, Sign.Volt) && tokens[volts].Value < FigureCollector.LowestMains)
                tokens[i].Sign = Sign.Arrow;
        }
    }

    private static bool HasConverter(ReadOnlySpan<Token> tokens, ReadOnlySpan<char> lower)
    {
        foreach (var token in tokens)
        {
            if (token.Sign is Sign.Word or Sign.Adaptor or Sign.Identifier
                && lower[token.Start..token.End] is "step" or "stepup" or "stepdown" or "boost" or "booster" or "boosts"
                or "buck" or "converter" or "converts" or "doubler" or "upconverter")
                return true;
        }

        return false;
    }

    /// <summary>"runs at 24 V internally", "internal 18 V", "5 V inside": a voltage beside the word is inside the thing.</summary>
    private static void ResolveInside(Span<Token> tokens, ReadOnlySpan<char> lower)
    {
        for (var i = 0; i < tokens.Length; i++)
        {
            if (!IsInside(tokens, i, lower))
                continue;
            if (EndsClause(tokens, i + 1) || tokens[i + 1].Sign == Sign.Point)
            {
                var start = Math.Max(0, FigureEnd(tokens, Math.Max(0, i - 4)) == i ? i - 4 : i - 2);
                if (start < i && FigureEnd(tokens, start) == i && tokens[i - 1].Sign == Sign.Volt)
                    Identify(tokens[start..i]);
                continue;
            }

            var after = i + 1;
            while (after < tokens.Length && after < i + ForeignReach
                && tokens[after].Sign is Sign.Word or Sign.Quiet or Sign.Filler or Sign.To or Sign.Regulated or Sign.At)
                after++;
            var end = FigureEnd(tokens, after);
            if (end > after && tokens[end - 1].Sign == Sign.Volt
                && !(end < tokens.Length && tokens[end].Sign is Sign.Direct or Sign.Alternating or Sign.Equal))
                Identify(tokens[after..end]);
        }
    }

    private static bool IsInside(ReadOnlySpan<Token> tokens, int i, ReadOnlySpan<char> lower)
    {
        var word = lower[tokens[i].Start..tokens[i].End];
        return tokens[i].Sign switch
        {
            Sign.Foreign => word is "internal" or "internally",
            Sign.Centre => word is "inside" && i > 0 && tokens[i - 1].Sign == Sign.Volt
                && !(
                    i + 1 < tokens.Length
                        && tokens[i + 1].Sign is Sign.Positive or Sign.Negative or Sign.Plus or Sign.Dash or Sign.Colon or Sign.Equal),
            _ => false,
        };
    }
}
