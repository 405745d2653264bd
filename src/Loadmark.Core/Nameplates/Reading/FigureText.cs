namespace Loadmark.Core.Nameplates.Reading;

/// <summary>Takes the values out of a phrase of figures: "9-18 V or 24 V" is a range and a single value.</summary>
internal static class FigureText
{
    /// <summary>The most figures in one phrase; the grammar allows no more.</summary>
    public const int Most = 32;

    /// <summary>Reads the figures of a phrase.</summary>
    /// <param name="tokens">The phrase's tokens.</param>
    /// <param name="figures">Receives the figures that make sense.</param>
    /// <param name="odd">
    /// Set, where it is still absent, to what cannot be taken as one figure: ambiguous for grouped digits, unreadable for
    /// nought and for more than <see cref="IUnit.Largest"/>.
    /// </param>
    /// <returns>How many figures make sense. The tokens of those that do not, and are not in <paramref name="odd"/> as ambiguous, are left as not understood.</returns>
    public static int Read<TUnit>(Span<Token> tokens, Span<PrintedFigure> figures, ref Field<Quantity<TUnit>> odd)
        where TUnit : struct, IUnit
    {
        var count = 0;
        var i = 0;
        while (i < tokens.Length)
        {
            tokens[i].Understood = true;
            if (tokens[i].Sign != Sign.Number)
            {
                i++;
                continue;
            }

            var start = i;
            var figure = ReadOne(tokens, ref i);
            for (var j = start; j < i; j++)
                tokens[j].Understood = true;
            if (tokens[start].Tapped)
            {
                // Between the tap and either end, or from end to end. A second such figure stays unread.
                if (odd.State != FieldState.Ambiguous && figure.High > 0m && figure.High * 2m <= TUnit.Largest)
                    odd = Field<Quantity<TUnit>>.Ambiguous([new(figure.High), new(figure.High * 2m)], figure.Place);
                else
                    Forget(tokens[start..i]);
                continue;
            }

            // There is no field for volt-amperes that can be taken in several ways.
            if (figure is { IsApparent: true, Other: not null } or { IsApparent: true, High: <= 0m })
            {
                Forget(tokens[start..i]);
                continue;
            }

            if (figure.High <= 0m || figure.High > TUnit.Largest)
            {
                if (figure.Other is { } other && other > 0m && other <= TUnit.Largest)
                {
                    figures[count++] = new PrintedFigure(other, other, figure.Place);
                    continue;
                }

                Forget(tokens[start..i]);
                if (odd.State == FieldState.Absent)
                    odd = Field<Quantity<TUnit>>.Unreadable(figure.Place);
            }
            else if (figure.Other is { } other && other > 0m && other <= TUnit.Largest)
            {
                var (low, high) = other < figure.High ? (other, figure.High) : (figure.High, other);
                if (odd.State != FieldState.Ambiguous)
                {
                    odd = Field<Quantity<TUnit>>.Ambiguous([new(low), new(high)], figure.Place);
                    continue;
                }

                Forget(tokens[start..i]);
            }
            else
            {
                figures[count++] = figure;
            }
        }

        return count;
    }

    private static void Forget(Span<Token> tokens)
    {
        foreach (ref var token in tokens)
            token.Understood = false;
    }

    /// <summary>A number, or two with a range between them, with the unit that goes with each.</summary>
    private static PrintedFigure ReadOne(ReadOnlySpan<Token> tokens, ref int i)
    {
        var first = tokens[i];
        var low = first.Value * UnitAfter(tokens, i);
        var other = first.Other * UnitAfter(tokens, i);
        var isApparent = IsApparentAfter(tokens, i);
        i++;
        if (i < tokens.Length && Sign.IsUnit(tokens[i].Sign))
            i++;

        // "9 VDC to 18 VDC": the form stands inside the range.
        if (i + 2 < tokens.Length && tokens[i].Sign is Sign.Direct or Sign.Alternating && tokens[i + 1].Sign is Sign.Dash or Sign.Dots or Sign.Tilde or Sign.To)
            i++;
        if (i + 1 >= tokens.Length || tokens[i + 1].Sign != Sign.Number || tokens[i].Sign is not (Sign.Dash or Sign.Dots or Sign.Tilde or Sign.To or Sign.And))
            return new PrintedFigure(low, low, Between(first, tokens[i - 1])) { Other = other == 0m ? null : other, Doubtful = first.Doubtful, IsApparent = isApparent };

        i++;
        var high = tokens[i].Value * UnitAfter(tokens, i);

        // "1,000-2,000 mA": two readings of either end make no range. Nor do figures with a gap in them.
        if (first.Other != 0m || tokens[i].Other != 0m || first.Broken || tokens[i].Broken || first.Doubtful || tokens[i].Doubtful)
            high = low = 0m;
        i++;
        if (i < tokens.Length && Sign.IsUnit(tokens[i].Sign))
            i++;
        var place = Between(first, tokens[i - 1]);
        return new PrintedFigure(Math.Min(low, high), Math.Max(low, high), place) { IsApparent = isApparent };
    }

    private static bool IsApparentAfter(ReadOnlySpan<Token> tokens, int i)
    {
        while (i < tokens.Length && !Sign.IsUnit(tokens[i].Sign))
            i++;
        return i < tokens.Length && tokens[i].IsApparent;
    }

    private static decimal UnitAfter(ReadOnlySpan<Token> tokens, int i)
    {
        for (; i < tokens.Length; i++)
        {
            if (Sign.IsUnit(tokens[i].Sign))
                return tokens[i].Value;
        }

        return 1m;
    }

    private static Place Between(Token first, Token last) => new(first.Start, last.End - first.Start);
}
