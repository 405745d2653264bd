namespace Loadmark.Core.Nameplates.Reading;

/// <summary>Reads figures: numbers with units, ranges ("9-18V", "9 to 18 V") and alternatives ("9 or 12 V", "50/60Hz").</summary>
internal static class FigureScanner
{
    private const int MostValues = 8;

    /// <summary>Reads the figure that starts at <paramref name="at"/>, a number.</summary>
    /// <returns>The item and the index after it; null when the number has no unit that is a figure here.</returns>
    public static Item? TryRead(TokenList tokens, int at)
    {
        Span<decimal> numbers = stackalloc decimal[MostValues];
        Span<decimal> factors = stackalloc decimal[MostValues];
        var count = 0;
        var isRange = false;
        var other = (decimal?)null;
        var unit = WordMeaning.Unknown;
        var index = at;
        var to = at;
        while (count < MostValues)
        {
            numbers[count] = tokens[index].Value;
            factors[count] = 0;
            if (tokens[index].Grouping)
                other = tokens[index].Value * 1000;
            index++;
            var own = Unit(tokens.Meaning(index));
            if (own != WordMeaning.Unknown)
            {
                if (unit != WordMeaning.Unknown && unit != own)
                    break;
                unit = own;
                factors[count] = tokens[index].Value;
                index++;
            }

            count++;
            to = index;
            if (isRange || !TryJoin(tokens, ref index, unit, out isRange))
                break;
        }

        if (unit == WordMeaning.Unknown)
            return null;

        // Numbers without a unit of their own take the next one's: in "9-18V" the 9 is volts too.
        var kept = count;
        for (var position = count - 1; position >= 0; position--)
        {
            if (factors[position] == 0)
                factors[position] = position + 1 < count ? factors[position + 1] : 0;
            if (factors[position] == 0)
                kept = position;
        }

        if (kept == 0)
            return null;

        var values = new decimal[kept];
        for (var position = 0; position < kept; position++)
            values[position] = numbers[position] * factors[position];
        if (isRange && kept < 2)
            isRange = false;
        if (isRange && values[0] > values[^1])
            Array.Reverse(values);

        tokens.Take(at, to);
        return new Item
        {
            Kind = Kind(unit),
            Place = tokens.Place(at, to),
            Tokens = (at, to),
            Values = values,
            IsRange = isRange,
            IsQualified = IsQualified(tokens, at, to),
            OtherValue = other is { } thousands && kept == 1 ? thousands * factors[0] : null,
        };
    }

    /// <summary>
    /// Steps over what joins two numbers of one figure, if that is what comes: a dash, dots, a tilde or "to" for a range;
    /// a solidus, a comma or "or" for alternatives. The number behind must have the same unit, if it has one.
    /// </summary>
    private static bool TryJoin(TokenList tokens, ref int index, WordMeaning unit, out bool isRange)
    {
        isRange = false;
        var next = index;

        // "9V DC - 18V DC", "9VDC or 12VDC": the kind of current between the numbers is not lost, it is read again later.
        var joint = tokens.Kind(next);
        if (joint is TokenKind.Dash or TokenKind.Dots or TokenKind.Tilde)
            isRange = true;
        else if (joint == TokenKind.Word && tokens.Meaning(next) is WordMeaning.To or WordMeaning.And)
            isRange = true;
        else if (joint is not (TokenKind.Slash or TokenKind.Comma) && tokens.Meaning(next) != WordMeaning.Or)
            return false;

        next++;
        if (tokens.Kind(next) != TokenKind.Number)
            return false;

        var its = Unit(tokens.Meaning(next + 1));
        if (unit != WordMeaning.Unknown && its != unit)
            return false;
        if (unit == WordMeaning.Unknown && its == WordMeaning.Unknown && !JoinsFurther(tokens, next + 1))
            return false;

        index = next;
        return true;
    }

    private static bool JoinsFurther(TokenList tokens, int index) =>
        tokens.Kind(index) is TokenKind.Slash or TokenKind.Comma || tokens.Meaning(index) == WordMeaning.Or;

    private static bool IsQualified(TokenList tokens, int from, int to)
    {
        var before = from - 1;
        while (tokens.Kind(before) is TokenKind.Colon or TokenKind.Punctuation or TokenKind.Open)
            before--;
        var after = to;
        while (tokens.Kind(after) is TokenKind.Open)
            after++;

        return tokens.Meaning(after) is WordMeaning.Most or WordMeaning.Typical
            || tokens.Meaning(before) is WordMeaning.Most or WordMeaning.Typical;
    }

    private static WordMeaning Unit(WordMeaning meaning) => meaning switch
    {
        WordMeaning.Volt or WordMeaning.VoltDirect or WordMeaning.VoltAlternating => WordMeaning.Volt,
        WordMeaning.Ampere or WordMeaning.Watt or WordMeaning.Hertz => meaning,
        _ => WordMeaning.Unknown,
    };

    private static ItemKind Kind(WordMeaning unit) => unit switch
    {
        WordMeaning.Volt => ItemKind.Volts,
        WordMeaning.Ampere => ItemKind.Amps,
        WordMeaning.Watt => ItemKind.Watts,
        _ => ItemKind.Hertz,
    };
}
