namespace Loadmark.Core.Nameplates.Reading;

/// <summary>Tells figures from the numbers in model names, serial numbers and approvals.</summary>
internal static class Chunks
{
    /// <summary>Turns the tokens of each run without spaces that is no figure into junk.</summary>
    public static void Sort(TokenList tokens)
    {
        var start = 0;
        var afterMark = false;
        while (start < tokens.Count)
        {
            var end = start + 1;
            while (end < tokens.Count && !tokens[end].SpaceBefore)
                end++;

            if (afterMark && IsNumberLike(tokens, start, end))
            {
                Junk(tokens, start, end);
                afterMark = false;
            }
            else
            {
                var mark = Mark(tokens, start, end);
                if (mark > 0 && mark < end && tokens.Kind(mark) is not (TokenKind.Colon or TokenKind.Punctuation or TokenKind.LineEnd))
                    Junk(tokens, mark, end);
                else if (mark == 0 && IsModelName(tokens, start, end))
                    Junk(tokens, start, end);
                else if (mark > 0 && mark + 1 < end)
                    Junk(tokens, mark, end);
                afterMark = mark > 0 && (mark == end || mark + 1 == end);
            }

            start = end;
        }
    }

    private static bool IsNumberLike(TokenList tokens, int start, int end)
    {
        for (var index = start; index < end; index++)
        {
            if (tokens.Kind(index) is TokenKind.Number or TokenKind.Junk)
                return true;
        }

        return false;
    }

    /// <summary>The index after "model", "S/N", "P/N" and the like at the start of a chunk; 0 when there is none.</summary>
    private static int Mark(TokenList tokens, int start, int end)
    {
        if (tokens.Meaning(start) == WordMeaning.NumberMark)
            return start + 1;
        return start + 2 < end && tokens[start].Length == 1 && tokens[start].Kind == TokenKind.Word
            && tokens.Kind(start + 1) == TokenKind.Slash && tokens.Kind(start + 2) == TokenKind.Word && tokens[start + 2].Length == 1
            && tokens.Meaning(start + 2) == WordMeaning.Unknown
            ? start + 3
            : 0;
    }

    /// <summary>
    /// A number that touches an unknown word, directly or over a dash, makes the whole run a name ("PX-9V3", "IP20");
    /// so does a number run on after a unit that has none of its own ("9V3").
    /// </summary>
    private static bool IsModelName(TokenList tokens, int start, int end)
    {
        for (var index = start; index < end; index++)
        {
            if (tokens.Kind(index) != TokenKind.Number)
                continue;

            if (Touches(tokens, index - 1, start - 1, -1) || Touches(tokens, index + 1, end, 1))
                return true;
            if (index > start && tokens.Kind(index - 1) is TokenKind.Number)
                return true;
            if (index > start && tokens.Kind(index - 1) == TokenKind.Word && IsUnit(tokens.Meaning(index - 1)) && !HasUnit(tokens, index + 1, end))
                return true;
        }

        return false;
    }

    private static bool Touches(TokenList tokens, int index, int stop, int step)
    {
        if (index == stop)
            return false;
        if (tokens.Kind(index) is TokenKind.Junk)
            return true;
        if (tokens.Kind(index) == TokenKind.Dash && index + step != stop)
            return tokens.Kind(index + step) == TokenKind.Word && tokens.Meaning(index + step) is WordMeaning.Unknown or WordMeaning.LetterC;
        return tokens.Kind(index) == TokenKind.Word && tokens.Meaning(index) is WordMeaning.Unknown or WordMeaning.LetterC;
    }

    private static bool IsUnit(WordMeaning meaning) =>
        meaning is WordMeaning.Volt or WordMeaning.VoltDirect or WordMeaning.VoltAlternating or WordMeaning.Ampere or WordMeaning.Watt;

    private static bool HasUnit(TokenList tokens, int index, int end)
    {
        // "9V100-200mA": the unit may come after the range.
        while (index < end && tokens.Kind(index) is TokenKind.Number or TokenKind.Dash or TokenKind.Slash or TokenKind.Tilde or TokenKind.Dots)
            index++;
        return index < end ? tokens.Kind(index) == TokenKind.Word : tokens.Meaning(index) != WordMeaning.Unknown && index < tokens.Count && tokens[index].SpaceBefore;
    }

    private static void Junk(TokenList tokens, int start, int end)
    {
        for (var index = start; index < end; index++)
        {
            tokens[index].Kind = TokenKind.Junk;
            tokens[index].Meaning = WordMeaning.Unknown;
        }
    }
}
