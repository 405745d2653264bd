namespace Loadmark.Core.Nameplates.Parsing;

/// <content>Figures of something else than the low-voltage supply: signals, cells, what is inside.</content>
internal static partial class TokenContext
{
    /// <summary>A signal's voltage is below this: line level, control voltage. No supply here is as low.</summary>
    public const decimal HighestSignal = 6m;

    /// <summary>From this voltage up a warning is taken to speak of the inside of a thing; common practice, no source.</summary>
    public const decimal LowestDanger = 60m;

    /// <summary>How far a word reaches for its figure; keeps reading linear.</summary>
    private const int ForeignReach = 7;

    /// <summary>Takes the figures of signals, cells and the inside out of the reading; the words and figures stay unread.</summary>
    private static void ResolveForeign(Span<Token> tokens, ReadOnlySpan<char> text, ReadOnlySpan<char> lower)
    {
        for (var i = 0; i < tokens.Length; i++)
        {
            var figures = ForeignAt(tokens, i, lower);
            if (figures == ForeignFigures.None)
                continue;
            if (figures == ForeignFigures.Pack)
                ResolvePack(tokens, i);
            else if (figures == ForeignFigures.Cell)
                ResolveCell(tokens, i);
            else if (!(EndsClause(tokens, i + 1) && ResolveForeignBefore(tokens, i, figures))
                && !ResolveForeignAfter(tokens, i + 1, figures, text))
                ResolveForeignBefore(tokens, i, figures);
        }
    }

    /// <summary>"+48 V phantom, 12 V d.c.": what follows the word is of something else.</summary>
    private static bool EndsClause(ReadOnlySpan<Token> tokens, int i) =>
        i >= tokens.Length || tokens[i].Sign is Sign.Comma or Sign.Semicolon or Sign.NewLine or Sign.Close or Sign.Slash or Sign.Plus;

    private static ForeignFigures ForeignAt(ReadOnlySpan<Token> tokens, int i, ReadOnlySpan<char> lower)
    {
        ref readonly var token = ref tokens[i];
        if (token.Sign is not (Sign.Foreign or Sign.Mains or Sign.Name or Sign.Identifier or Sign.Word or Sign.Quiet))
            return ForeignFigures.None;
        var word = lower[token.Start..token.End];
        switch (token.Sign)
        {
            case Sign.Foreign:
                return LabelWords.ForeignTo(word);
            case Sign.Mains when word is "line" && i > 0 && tokens[i - 1].Sign == Sign.Word:
                return ForeignFigures.SignalVoltage;
            case Sign.Word when word is "battery" or "batteries":
                return ForeignFigures.Pack;
            case Sign.Name when word is "level":
                return ForeignFigures.SignalVoltage;
            case Sign.Identifier when i > 0 && word.EndsWith("h") && word.Contains("mah", StringComparison.Ordinal):
                return ForeignFigures.Cell;

            // "B+", "high voltage"
            case Sign.Word when word is "b" && i + 1 < tokens.Length && tokens[i + 1].Sign == Sign.Plus && !tokens[i + 1].Spaced:
                return ForeignFigures.Inside;
            case Sign.Word when word is "high" && i + 1 < tokens.Length
                && lower[tokens[i + 1].Start..tokens[i + 1].End] is "voltage" or "tension":
                return ForeignFigures.Danger;
            case Sign.Name when word is "class" && i + 1 < tokens.Length
                && lower[tokens[i + 1].Start..tokens[i + 1].End] is "a" or "b" or "ab" or "d":
                return ForeignFigures.SignalPower;
            case Sign.Quiet when word is "rms" && i > 0 && tokens[i - 1].Sign == Sign.Watt:
                return ForeignFigures.SignalPower;
            default:
                return ForeignFigures.None;
        }
    }

    /// <summary>Takes out the first figure after a word, and what hangs on it, up to the end of the clause.</summary>
    private static bool ResolveForeignAfter(Span<Token> tokens, int i, ForeignFigures figures, ReadOnlySpan<char> text)
    {
        var found = false;
        for (var most = i + ForeignReach; i < most && i < tokens.Length; i++)
        {
            var sign = tokens[i].Sign;
            if (sign is Sign.Semicolon or Sign.NewLine
                || (sign == Sign.Point && text[tokens[i].Start] is '.' or '!' && i > 0 && tokens[i - 1].Sign != Sign.Qualifier))
                return found;
            if (sign == Sign.Comma && found)
                return true;
            if (sign is Sign.Number && i + 1 < tokens.Length && tokens[i + 1].Sign == Sign.Times)
            {
                // "2 x 50 mW"
                i++;
                continue;
            }

            if (sign is Sign.Count && i + 1 < tokens.Length && tokens[i + 1].Sign == Sign.Times)
            {
                tokens[i].Sign = Sign.Word;
                continue;
            }

            if (sign != Sign.Number)
            {
                // A form or a side begins what is said of the supply.
                if (sign is Sign.Direct or Sign.Alternating or Sign.Input or Sign.Mains or Sign.Ids or Sign.Count)
                    return found;
                continue;
            }

            // "8 ohm 20 W"
            var end = FigureEnd(tokens, i);
            if (end == i && !found && figures == ForeignFigures.SignalPower && i + 1 < tokens.Length
                && tokens[i + 1].Sign is Sign.Word or Sign.Identifier)
                continue;
            if (end == i || !IsForeign(tokens, end, figures))
                return found;
            Identify(tokens[i..end]);
            found = true;
            i = end - 1;
            if (figures is not (ForeignFigures.Inside or ForeignFigures.Danger))
                return true;
        }

        return found;
    }

    /// <summary>"1 W amplifier", "20 W RMS", "12 V heater".</summary>
    private static bool ResolveForeignBefore(Span<Token> tokens, int i, ForeignFigures figures)
    {
        var end = i;
        while (end > 0 && end > i - 3 && tokens[end - 1].Sign is Sign.Word or Sign.Quiet or Sign.Open or Sign.Filler)
            end--;
        var start = FigureEnd(tokens, Math.Max(0, end - 4)) == end ? Math.Max(0, end - 4) : Math.Max(0, end - 2);
        if (start >= end || FigureEnd(tokens, start) != end || !IsForeign(tokens, end, figures))
            return false;
        Identify(tokens[start..end]);
        return true;
    }

    /// <summary>A figure beside a word for cells: "1.5 V AA", "Li-ion 7.4 V", "3.7 V 2000 mAh". "9 V battery" is none of them.</summary>
    private static void ResolveCell(Span<Token> tokens, int i)
    {
        var before = i - 2;
        while (before > 0 && before > i - 4 && tokens[before + 1].Sign is Sign.Word)
            before--;
        if (IsFigure(tokens, before, Sign.Volt) && (tokens[i].Sign != Sign.Identifier || before == i - 2))
        {
            var from = before >= 2 && tokens[before - 1].Sign == Sign.Times ? before - 2 : before;
            foreach (ref var token in tokens[from..(before + 2)])
                token.Sign = Sign.Identifier;
            return;
        }

        if (tokens[i].Sign == Sign.Identifier)
            return;
        var after = i + 1;
        while (after < tokens.Length && after < i + 4 && tokens[after].Sign is Sign.Dash or Sign.Foreign or Sign.Word or Sign.Colon)
            after++;
        if (IsFigure(tokens, after, Sign.Volt) && !(after + 2 < tokens.Length && tokens[after + 2].Sign is Sign.Direct))
            Identify(tokens.Slice(after, 2));
    }

    /// <summary>"battery 11.1 V; outputs 9 V": where another low voltage is printed, the battery's is none of the supply.</summary>
    private static void ResolvePack(Span<Token> tokens, int i)
    {
        var after = i + 1;
        while (after < tokens.Length && after < i + 4 && tokens[after].Sign is Sign.Colon or Sign.Quiet)
            after++;
        if (!IsFigure(tokens, after, Sign.Volt))
            return;
        for (var j = 0; j + 1 < tokens.Length; j++)
        {
            if (j != after && IsFigure(tokens, j, Sign.Volt) && tokens[j].Value < FigureCollector.LowestMains)
            {
                Identify(tokens.Slice(after, 2));
                return;
            }
        }
    }

    /// <summary>
    /// Index just past the figure that starts at <paramref name="i"/>, a value or a range; the same index when none does.
    /// </summary>
    private static int FigureEnd(ReadOnlySpan<Token> tokens, int i)
    {
        if (i + 1 >= tokens.Length || tokens[i].Sign != Sign.Number)
            return i;
        if (Sign.IsUnit(tokens[i + 1].Sign))
            return i + 2;
        return i + 3 < tokens.Length && tokens[i + 1].Sign is Sign.Dash or Sign.To or Sign.Dots && tokens[i + 2].Sign == Sign.Number
            && Sign.IsUnit(tokens[i + 3].Sign) ? i + 4 : i;
    }

    private static bool IsForeign(ReadOnlySpan<Token> tokens, int end, ForeignFigures figures)
    {
        var unit = tokens[end - 1];
        var highest = tokens[end - 2].Value * unit.Value;
        var formed = end < tokens.Length && tokens[end].Sign is Sign.Direct or Sign.Alternating or Sign.Equal;
        return figures switch
        {
            ForeignFigures.SignalPower => unit.Sign == Sign.Watt,
            ForeignFigures.SignalVoltage => unit.Sign == Sign.Volt && highest < HighestSignal && !formed,
            ForeignFigures.Danger => unit.Sign == Sign.Volt && highest >= LowestDanger,
            _ => unit.Sign is Sign.Volt or Sign.Ampere,
        };
    }
}
