namespace Loadmark.Core.Nameplates.Parsing;

/// <content>The voltage with nothing drawn, which an adaptor without regulation prints beside its own.</content>
internal static partial class TokenContext
{
    /// <summary>How far the words reach for their voltage; keeps reading linear.</summary>
    private const int UnloadedReach = 4;

    /// <summary>
    /// "9 V 300 mA, 14 V no load", "open circuit: 14 V": the voltage beside the words is none that the outlet can be set to. Where one
    /// stands on either side it is the higher, since no adaptor stands lower with nothing drawn.
    /// </summary>
    private static void ResolveUnloaded(Span<Token> tokens, ReadOnlySpan<char> lower)
    {
        for (var i = 0; i < tokens.Length; i++)
        {
            var end = UnloadedEnd(tokens, i, lower);
            if (end == i)
                continue;
            var (before, after) = (VoltsBefore(tokens, i), VoltsAfter(tokens, end));
            var at = before < 0 || (after >= 0 && tokens[after].Value > tokens[before].Value) ? after : before;
            if (at >= 0 && HasOtherVolts(tokens, at))
            {
                tokens[at].IsUnloaded = true;
                foreach (ref var token in tokens.Slice(at, 2))
                    (token.Sign, token.Understood) = (Sign.Identifier, true);
                foreach (ref var token in tokens[i..end])
                    (token.Sign, token.Understood) = (Sign.Identifier, true);
            }

            i = end - 1;
        }
    }

    /// <summary>Index just past words for "with nothing drawn" that begin at a token; the same index where none do.</summary>
    private static int UnloadedEnd(ReadOnlySpan<Token> tokens, int i, ReadOnlySpan<char> lower)
    {
        var word = WordAt(tokens, i, lower);
        if (word is "unloaded" or "noload" or "leerlauf" or "leerlaufspannung")
            return PastVoltage(tokens, i + 1, lower);
        var next = i + 1 < tokens.Length && tokens[i + 1].Sign == Sign.Dash ? i + 2 : i + 1;
        var then = WordAt(tokens, next, lower);
        var isUnloaded = word switch
        {
            "no" or "off" or "zero" or "without" => then is "load",
            "open" => then is "circuit",
            "ohne" => then is "last",
            "sans" => then is "charge",
            "sin" => then is "carga",
            "senza" => then is "carico",
            _ => false,
        };
        return isUnloaded ? PastVoltage(tokens, next + 1, lower) : i;
    }

    /// <summary>"no-load voltage" is one thing.</summary>
    private static int PastVoltage(ReadOnlySpan<Token> tokens, int i, ReadOnlySpan<char> lower) =>
        WordAt(tokens, i, lower) is "voltage" or "volts" or "output" ? i + 1 : i;

    /// <summary>Whether the label prints the voltage under load as well: the only voltage of a label is what it is made for.</summary>
    private static bool HasOtherVolts(ReadOnlySpan<Token> tokens, int at)
    {
        for (var j = 0; j + 1 < tokens.Length; j++)
        {
            if (j != at && IsFigure(tokens, j, Sign.Volt) && tokens[j].Value < FigureCollector.LowestMains)
                return true;
        }

        return false;
    }

    private static ReadOnlySpan<char> WordAt(ReadOnlySpan<Token> tokens, int i, ReadOnlySpan<char> lower) =>
        i >= 0 && i < tokens.Length ? lower[tokens[i].Start..tokens[i].End] : [];

    private static int VoltsBefore(ReadOnlySpan<Token> tokens, int i)
    {
        var end = i;
        while (end > 0 && end > i - UnloadedReach
            && tokens[end - 1].Sign is Sign.Open or Sign.Filler or Sign.Direct or Sign.Qualifier or Sign.At)
            end--;
        return IsFigure(tokens, end - 2, Sign.Volt) && !tokens[end - 2].Broken ? end - 2 : -1;
    }

    private static int VoltsAfter(ReadOnlySpan<Token> tokens, int i)
    {
        var start = i;
        while (start < tokens.Length && start < i + UnloadedReach
            && tokens[start].Sign is Sign.Colon or Sign.Equal or Sign.Open or Sign.Filler or Sign.Qualifier or Sign.At)
            start++;
        return IsFigure(tokens, start, Sign.Volt) && !tokens[start].Broken ? start : -1;
    }
}
