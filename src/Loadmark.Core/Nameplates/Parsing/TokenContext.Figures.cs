namespace Loadmark.Core.Nameplates.Parsing;

/// <content>Figures in pieces: grouped by spaces, broken by gaps, begun with a point.</content>
internal static partial class TokenContext
{
    private static int JoinFigures(Span<Token> tokens, ReadOnlySpan<char> text)
    {
        var kept = 0;
        for (var i = 0; i < tokens.Length; i++)
        {
            if (IsGlued(tokens, i) && tokens[i].Sign == Sign.Point && text[tokens[i].Start] == '.' && kept > 0
                && TryPoint(tokens[kept - 1], tokens[i..], out var pointed))
            {
                tokens[kept++] = pointed;
                i++;
            }
            else if (IsTapped(tokens, i))
            {
                // "12-0-12 V": 12 V on either side of the tap, 24 V from end to end.
                tokens[kept++] = tokens[i] with { End = tokens[i + 4].End, Other = 0m, Tapped = true };
                i += 4;
            }
            else if (IsSum(tokens, i, out var second) && tokens[second].Value == tokens[i].Value)
            {
                // "9 V + 9 V", "12+12 V": two windings or cells alike, one of 9 V or 18 V over both.
                tokens[kept++] = tokens[i] with { End = tokens[second].End, Other = 0m, Tapped = true };
                i = second;
            }
            else if (i + 2 < tokens.Length && tokens[i].Sign == Sign.Number && tokens[i + 1].Sign == Sign.Number
                && tokens[i + 2].Sign is Sign.Volt or Sign.Ampere or Sign.Watt)
            {
                var joined = tokens[i];
                if (!IsPartOfStandard(tokens[..kept])
                    && TryJoin(tokens[i], tokens[i + 1], kept > 0 ? tokens[kept - 1].Sign : Sign.NewLine, text, out joined))
                    i++;
                tokens[kept++] = joined;
            }
            else if (tokens[i].Sign == Sign.To && kept > 0 && tokens[kept - 1].Sign == Sign.Quiet && IsUp(tokens[kept - 1], text)
                && kept > 1 && IsFigureEnd(tokens[kept - 2].Sign))
            {
                // "from 9 V up to 18 V"
                tokens[kept - 1] = tokens[i] with { Start = tokens[kept - 1].Start, Spaced = tokens[kept - 1].Spaced };
            }
            else
            {
                // Most labels have nothing to join: their tokens stay where they are.
                if (kept != i)
                    tokens[kept] = tokens[i];
                ResolveGroupingPoint(ref tokens[kept++], tokens[(i + 1)..], text);
            }
        }

        return kept;
    }

    /// <summary>
    /// "9 V ..6 A": points glued to a number that is the end of no range may be a decimal point printed twice. Both ways to take it are
    /// kept;
    /// of a number with decimals of its own, none. "Current ... 6 A" has a row of points that leads to the figure.
    /// </summary>
    private static void ResolveStrayPoints(Span<Token> tokens)
    {
        for (var i = 0; i + 2 < tokens.Length; i++)
        {
            if (tokens[i].Sign != Sign.Dots || tokens[i + 1].Sign != Sign.Number || tokens[i + 1].Spaced
                || !Sign.IsUnit(tokens[i + 2].Sign))
                continue;
            var before = i > 0 ? tokens[i - 1].Sign : Sign.NewLine;
            var unit = before is Sign.Direct or Sign.Alternating && i > 1 ? tokens[i - 2].Sign : before;
            var leads = tokens[i].Length > 2 && !IsFigureEnd(before)
                && before is not (Sign.NewLine or Sign.Comma or Sign.Semicolon or Sign.Open or Sign.Slash);
            if (before == Sign.Number || unit == tokens[i + 2].Sign || leads)
                continue;
            if (tokens[i + 1] is { Length: <= 4, Value: { Scale: 0 } whole and > 0m } number)
                tokens[i + 1] =
                    number with { Value = new decimal((int)whole, 0, 0, isNegative: false, (byte)number.Length), Other = whole };
            else
                Identify(tokens.Slice(i, 3));
        }
    }

    /// <summary>"IEC 62368-1 9 V": the part of a standard and a figure.</summary>
    private static bool IsPartOfStandard(ReadOnlySpan<Token> before) =>
        before is [.., { Sign: Sign.Number, Length: >= 4 }, { Sign: Sign.Dash, Spaced: false }];

    private static bool IsTapped(ReadOnlySpan<Token> tokens, int i) =>
        i + 5 < tokens.Length && tokens[i].Sign == Sign.Number && tokens[i + 1].Sign is Sign.Dash or Sign.Slash
            && tokens[i + 2].Sign == Sign.Number && tokens[i + 2].Value == 0m
        && tokens[i + 3].Sign == tokens[i + 1].Sign && tokens[i + 4].Sign == Sign.Number && tokens[i + 4].Value == tokens[i].Value
        && tokens[i + 5].Sign == Sign.Volt;

    /// <summary>
    /// Two voltages with a plus between them, the unit at both or at the second: "9 V + 9 V", "12+12 V". In "+5 V +12 V" each plus is the
    /// sign of the figure it is glued to.
    /// </summary>
    private static bool IsSum(ReadOnlySpan<Token> tokens, int i, out int second)
    {
        second = 0;
        if (tokens[i].Sign != Sign.Number)
            return false;
        var plus = i + 1;
        if (plus < tokens.Length && tokens[plus].Sign == Sign.Volt)
            plus++;
        if (plus > i + 1 && plus < tokens.Length && tokens[plus].Sign is Sign.Direct or Sign.Alternating)
            plus++;
        second = plus + 1;
        return second < tokens.Length && tokens[plus].Sign == Sign.Plus && tokens[plus].Length == 1
            && tokens[plus].Spaced == tokens[second].Spaced && IsFigure(tokens, second, Sign.Volt);
    }

    private static bool IsGlued(ReadOnlySpan<Token> tokens, int i) =>
        i > 0 && i + 2 < tokens.Length && tokens[i].Start == tokens[i - 1].End && tokens[i + 1].Start == tokens[i].End;

    private static bool IsFigureEnd(char sign) => Sign.IsUnit(sign) || sign is Sign.Number or Sign.Direct or Sign.Alternating;

    private static bool IsUp(Token token, ReadOnlySpan<char> text) => token.Length == 2 && text[token.Start] is 'u' or 'U';

    /// <summary>
    /// "9VDC.1A": a point between a letter and a digit is a decimal point, beside the other figures at least. Where a full
    /// stop would give the likelier figure ("9V.300mA", "max.2A") both are kept.
    /// </summary>
    private static bool TryPoint(Token before, ReadOnlySpan<Token> tokens, out Token pointed)
    {
        pointed = default;
        var number = tokens[1];
        var unit = tokens[2];
        var afterFigure = Sign.IsUnit(before.Sign) || before.Sign is Sign.Direct or Sign.Alternating;
        var plain = unit.Sign == Sign.Ampere && unit.Value == 1m;
        if (number.Sign != Sign.Number || number.Length > 6 || number.Value.Scale != 0 || number.Value == 0m || !Sign.IsUnit(unit.Sign)
            || unit.Sign == Sign.Millimetre)
            return false;
        if (!afterFigure && !(plain && before.Sign is Sign.Qualifier or Sign.Quiet or Sign.Positive or Sign.Negative))
            return false;

        var fraction = new decimal((int)number.Value, 0, 0, isNegative: false, (byte)number.Length);
        var certain = afterFigure && (plain || (unit.Sign == Sign.Watt && unit.Value == 1m && number.Length == 1));
        pointed = tokens[0] with { Sign = Sign.Number, End = number.End, Value = fraction, Other = certain ? 0m : number.Value };
        return true;
    }

    /// <summary>
    /// "1 200 mA" is 1200 mA, or a loose 1 and 200 mA; "1 000 mA" can only be the first. "3 50 mA" is a figure with a gap
    /// in it: what was printed cannot be told, and the last piece alone must not be taken for it.
    /// </summary>
    private static bool TryJoin(Token first, Token second, char before, ReadOnlySpan<char> text, out Token joined)
    {
        joined = first;
        if (before is Sign.Output or Sign.Input or Sign.Name or Sign.Fuse or Sign.Times or Sign.Slash or Sign.Diameter || first.Length > 4)
            return false;

        var whole = first.Value.Scale == 0;
        var pointed = text[second.Start] == '.';
        if (!whole && first.Value >= 1m && !pointed)
            return false;
        if (whole && first.Length > 3 && !pointed)
            return false;

        joined = first with { End = second.End, Value = 0m, Other = 0m, Broken = true };
        var grouped = whole && first.Length <= 3 && first.Value >= 1m && second.Length == 3 && second.Value.Scale == 0 && second.Other == 0m
            && second.Start == first.End + 1;
        if (grouped && before != Sign.Number)
        {
            joined.Value = (first.Value * 1000m) + second.Value;
            joined.Other = second.Value;
            joined.Broken = false;
        }

        return true;
    }

    /// <summary>"1.000 mA": nobody prints thousandths of a milliampere, so the point may group thousands.</summary>
    private static void ResolveGroupingPoint(ref Token token, ReadOnlySpan<Token> after, ReadOnlySpan<char> text)
    {
        if (token is { Sign: Sign.Number, Other: 0m, Value.Scale: 3 } && after is [{ Sign: Sign.Ampere, Value: 1e-3m }, ..]
            && text[token.Start] is >= '1' and <= '9')
            token.Other = token.Value * 1000m;
    }
}
