namespace Loadmark.Core.Nameplates.Parsing;

/// <summary>Resolves what a token is by its neighbours, where the token alone does not say.</summary>
internal static partial class TokenContext
{
    /// <summary>From here up a bare number after "AC" is a type, not a voltage without its unit.</summary>
    private const decimal LowestType = 30m;

    /// <summary>Applies every rule, in place.</summary>
    /// <param name="tokens">The label's tokens.</param>
    /// <param name="text">The label, folded.</param>
    /// <param name="lower">The same in small letters.</param>
    /// <returns>How many tokens there are now; figures that were split became one.</returns>
    public static int Resolve(Span<Token> tokens, ReadOnlySpan<char> text, ReadOnlySpan<char> lower)
    {
        OutletMarks.Resolve(tokens, text, lower);
        var count = JoinFigures(tokens, text);
        tokens = tokens[..count];
        ResolveStrayPoints(tokens);
        SpreadIdentifiers(tokens, text);
        ResolveNames(tokens, text);
        ResolveFuses(tokens, text);
        ResolveSigns(tokens);
        ResolveRails(tokens, lower);
        ResolveCharges(tokens, text);
        ResolveInside(tokens, lower);
        ResolveUnloaded(tokens, lower);
        ResolveForeign(tokens, text, lower);
        ResolveConverters(tokens, lower);
        ResolveForms(tokens);
        ResolveTransistors(tokens);
        return count;
    }

    /// <summary>A figure hung onto a name by a hyphen or the like ("PX-9V", "9V-200") is a part of the name.</summary>
    private static void SpreadIdentifiers(Span<Token> tokens, ReadOnlySpan<char> text)
    {
        var start = 0;
        while (start < tokens.Length)
        {
            var end = start + 1;
            while (end < tokens.Length && !tokens[end].Spaced && Joins(tokens, end, text))
                end++;
            if (end - start > 1 && IsName(tokens, start, end))
            {
                for (var i = start; i < end; i++)
                    tokens[i].Sign = Sign.Identifier;
            }

            start = end;
        }
    }

    /// <summary>Whether the token at <paramref name="i"/> hangs together with the one before it.</summary>
    private static bool Joins(ReadOnlySpan<Token> tokens, int i, ReadOnlySpan<char> text)
    {
        if (tokens[i].Start != tokens[i - 1].End)
            return false;
        return IsLink(tokens, i, text) && IsLink(tokens, i - 1, text);
    }

    private static bool IsLink(ReadOnlySpan<Token> tokens, int i, ReadOnlySpan<char> text)
    {
        var token = tokens[i];
        return token.Sign switch
        {
            Sign.Comma or Sign.Semicolon or Sign.NewLine or Sign.Colon or Sign.Open or Sign.Close or Sign.Tilde or Sign.Equal
                or Sign.Inch or Sign.Dots or Sign.And or Sign.Plus or Sign.Drawing => false,
            Sign.At => false,
            Sign.Word => char.IsLetter(text[token.Start]),
            Sign.Direct => text[token.Start] != Folding.DirectMark,
            Sign.Slash => (i > 0 && tokens[i - 1].Sign == Sign.Identifier)
                || (i + 1 < tokens.Length && tokens[i + 1].Sign == Sign.Identifier),
            Sign.Point => text[token.Start] switch
            {
                // A full stop after a word ends a sentence; after an abbreviation it joins, as in "Rev.2A".
                '.' => i > 0 && !(tokens[i - 1].Sign is Sign.Word && tokens[i - 1].Length >= 4),
                '_' or '#' or '\\' or '\'' or '*' => true,
                _ => false,
            },
            _ => true,
        };
    }

    private static bool IsName(ReadOnlySpan<Token> tokens, int start, int end, bool hasDigits = false)
    {
        for (var i = start; i < end; i++)
        {
            switch (tokens[i].Sign)
            {
                case Sign.Identifier:
                    return true;
                case Sign.Number:
                    hasDigits = true;
                    if (i >= start + 2 && Sign.IsUnit(tokens[i - 2].Sign) && EndsLoose(tokens, i, end, tokens[i - 1].Sign))
                        return true;
                    break;
                case Sign.Word when hasDigits && tokens[i].Length <= 3:
                    return true;
                case Sign.Word when i + 1 < end && HasNumber(tokens[(i + 1)..end]):
                    return true;
                default:
                    break;
            }
        }

        return false;
    }

    /// <summary>"9V-200" with no unit to follow, or "9V.5A", where the point may be a decimal one.</summary>
    private static bool EndsLoose(ReadOnlySpan<Token> tokens, int i, int end, char joiner)
    {
        if (joiner == Sign.Point)
            return true;
        if (joiner != Sign.Dash)
            return false;
        var next = i + 1 < tokens.Length ? tokens[i + 1].Sign : Sign.NewLine;
        return !(Sign.IsUnit(next) || next is Sign.Times or Sign.Slash or Sign.Dots or Sign.To or Sign.Or
            || (next == Sign.Dash && i + 1 < end));
    }

    private static bool HasNumber(ReadOnlySpan<Token> tokens)
    {
        foreach (var token in tokens)
        {
            if (token.Sign == Sign.Number)
                return true;
        }

        return false;
    }

    /// <summary>What follows "Model", "S/N" or "Class" is an identifier if it has a digit in it.</summary>
    private static void ResolveNames(Span<Token> tokens, ReadOnlySpan<char> text)
    {
        for (var i = 0; i < tokens.Length; i++)
        {
            if (tokens[i].Sign != Sign.Name)
                continue;

            var first = i + 1;
            while (first < tokens.Length && (tokens[first].Sign is Sign.Name or Sign.Colon or Sign.Dash or Sign.Slash or Sign.Point
                || (tokens[first].Sign == Sign.Word && !tokens[first].Spaced && tokens[first].Length == 1)))
            {
                first++;
            }

            var last = first;
            var digits = false;
            while (last < tokens.Length && tokens[last].Sign is not (Sign.NewLine or Sign.Semicolon)
                && (last == first || !tokens[last].Spaced))
            {
                digits |= tokens[last].Sign is Sign.Number or Sign.Identifier;
                last++;
            }

            // "Model: 9V" names a voltage; "Rev 2A" does not name a current.
            var figure = last - first == 2 && tokens[first].Sign == Sign.Number && Sign.IsUnit(tokens[first + 1].Sign)
                && text[tokens[i].Start] is 'm' or 'M';
            if (!digits || figure)
                continue;
            for (var j = first; j < last; j++)
                tokens[j].Sign = Sign.Identifier;
            i = last - 1;
        }
    }

    /// <summary>"AC 128": a transistor, not alternating current; a voltage would have its unit.</summary>
    private static void ResolveTransistors(Span<Token> tokens)
    {
        for (var i = 0; i + 1 < tokens.Length; i++)
        {
            if (tokens[i].Sign is not (Sign.Direct or Sign.Alternating) || tokens[i].Length != 2 || tokens[i + 1].Sign != Sign.Number
                || tokens[i + 1].Value < LowestType)
                continue;
            var next = i + 2 < tokens.Length ? tokens[i + 2].Sign : Sign.NewLine;
            if (!Sign.IsUnit(next) && next is not (Sign.Dash or Sign.Slash or Sign.Tilde or Sign.To or Sign.Dots or Sign.Or or Sign.Number))
                Identify(tokens.Slice(i, 2));
        }
    }

    /// <summary>"1.5 A h" is what a battery holds, not a current.</summary>
    private static void ResolveCharges(Span<Token> tokens, ReadOnlySpan<char> text)
    {
        for (var i = 2; i < tokens.Length; i++)
        {
            var hour = tokens[i].Sign == Sign.Word && tokens[i].Length == 1 && text[tokens[i].Start] is 'h' or 'H';
            var amperes = hour && tokens[i - 1].Sign is Sign.Point or Sign.Dash ? i - 2 : i - 1;
            if (hour && amperes > 0 && tokens[amperes].Sign == Sign.Ampere && tokens[amperes - 1].Sign == Sign.Number)
                tokens[amperes].Sign = tokens[amperes - 1].Sign = Sign.Identifier;
        }
    }

    /// <summary>An equals sign or a tilde marks a form only beside a figure.</summary>
    private static void ResolveForms(Span<Token> tokens)
    {
        for (var i = 0; i < tokens.Length; i++)
        {
            if (tokens[i].Sign == Sign.Direct && tokens[i].Value < 0m && i + 1 < tokens.Length && IsFigure(tokens, i + 1, Sign.Volt)
                && i > 0 && Sign.IsUnit(tokens[i - 1].Sign))
                tokens[i].Sign = Sign.Dash; // "9V --- 18V"
            if (tokens[i].Sign is not (Sign.Equal or Sign.Tilde))
                continue;

            var before = i > 0 ? tokens[i - 1].Sign : Sign.NewLine;
            var after = i + 1 < tokens.Length ? tokens[i + 1].Sign : Sign.NewLine;
            var afterFigure =
                before is Sign.Volt or Sign.Ampere or Sign.Watt or Sign.Hertz or Sign.Direct or Sign.Alternating or Sign.Slash or Sign.Or;
            var atStart = before is Sign.NewLine or Sign.Colon or Sign.Comma or Sign.Semicolon or Sign.Open or Sign.Slash;
            if (tokens[i].Sign == Sign.Equal)
            {
                var leans = after == Sign.Number && !tokens[i + 1].Spaced && (tokens[i].Spaced || atStart);
                tokens[i].Sign = afterFigure || leans || (atStart && after == Sign.Number) ? Sign.Direct : Sign.Point;
            }
            else if (after == Sign.Number && i + 2 < tokens.Length && tokens[i + 2].Sign == Sign.Ampere
                && before is not (Sign.Volt or Sign.Hertz or Sign.Ampere or Sign.Number or Sign.Slash or Sign.Or))
            {
                // "~300 mA": about.
                tokens[i].Sign = Sign.Point;
            }
            else if (!afterFigure && before is not (Sign.Number or Sign.Input or Sign.Output or Sign.Mains) && after != Sign.Number)
            {
                tokens[i].Sign = Sign.Point;
            }
        }
    }
}
