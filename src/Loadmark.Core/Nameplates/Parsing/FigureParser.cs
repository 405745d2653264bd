namespace Loadmark.Core.Nameplates.Parsing;

/// <summary>Takes the values out of a phrase of figures: "9-18 V or 24 V" is a range and a single value.</summary>
internal static class FigureParser
{
    /// <summary>The most figures in one phrase; the grammar allows no more.</summary>
    private const int Most = 32;

    /// <summary>How many figures there may be in a phrase, for its working space.</summary>
    /// <param name="tokens">The phrase's tokens.</param>
    public static int MostFigures(ReadOnlySpan<Token> tokens) => Math.Min(Most, tokens.Length);

    /// <summary>Reads the figures of a phrase.</summary>
    /// <param name="tokens">The phrase's tokens.</param>
    /// <param name="figures">Receives the figures that make sense.</param>
    /// <param name="odd">
    /// Set, where it is still absent, to what cannot be taken as one figure: ambiguous for grouped digits, unreadable for
    /// nought and for more than <see cref="IUnit.Largest"/>.
    /// </param>
    /// <returns>How many figures make sense. The tokens of those that do not, and are not in <paramref name="odd"/> as ambiguous, are left
    /// as not understood.</returns>
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
            if (figure.IsApparent && (figure.Other != 0m || figure.High <= 0m))
            {
                Forget(tokens[start..i]);
                continue;
            }

            if (figure.High <= 0m || figure.High > TUnit.Largest)
            {
                if (figure.Other is > 0m and var other && other <= TUnit.Largest)
                {
                    figures[count++] = new PrintedFigure(other, other, figure.Place);
                    continue;
                }

                Forget(tokens[start..i]);
                if (odd.State == FieldState.Absent)
                    odd = Field<Quantity<TUnit>>.Unreadable(figure.Place);
            }
            else if (figure.Other is > 0m and var other && other <= TUnit.Largest)
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
        ref readonly var first = ref tokens[i];
        var unit = UnitAfter(tokens, i);
        var factor = unit < tokens.Length ? tokens[unit].Value : 1m;
        var isApparent = unit < tokens.Length && tokens[unit].IsApparent;
        var low = first.Value * factor;
        i++;
        if (i < tokens.Length && Sign.IsUnit(tokens[i].Sign))
            i++;

        // "9 VDC to 18 VDC": the form stands inside the range.
        if (i + 2 < tokens.Length && tokens[i].Sign is Sign.Direct or Sign.Alternating
            && tokens[i + 1].Sign is Sign.Dash or Sign.Dots or Sign.Tilde or Sign.To)
            i++;
        if (i + 1 >= tokens.Length || tokens[i + 1].Sign != Sign.Number
            || tokens[i].Sign is not (Sign.Dash or Sign.Dots or Sign.Tilde or Sign.To or Sign.And))
            return new PrintedFigure(low, low, Between(first, tokens[i - 1]))
            {
                Other = first.Other == 0m ? 0m : first.Other * factor,
                Doubtful = first.Doubtful,
                IsApparent = isApparent,
            };

        i++;
        unit = UnitAfter(tokens, i);
        var high = unit < tokens.Length ? tokens[unit].Value * tokens[i].Value : tokens[i].Value;

        // "1,000-2,000 mA": two readings of either end make no range. Nor do figures with a gap in them.
        if (first.Other != 0m || tokens[i].Other != 0m || first.Broken || tokens[i].Broken || first.Doubtful || tokens[i].Doubtful)
            high = low = 0m;
        i++;
        if (i < tokens.Length && Sign.IsUnit(tokens[i].Sign))
            i++;
        var place = Between(first, tokens[i - 1]);
        return new PrintedFigure(Math.Min(low, high), Math.Max(low, high), place) { IsApparent = isApparent };
    }

    /// <summary>Where the next unit stands; past the end where there is none.</summary>
    private static int UnitAfter(ReadOnlySpan<Token> tokens, int i)
    {
        while (i < tokens.Length && !Sign.IsUnit(tokens[i].Sign))
            i++;
        return i;
    }

    private static Place Between(Token first, Token last) => new(first.Start, last.End - first.Start);
}
