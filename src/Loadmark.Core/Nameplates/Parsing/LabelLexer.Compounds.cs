namespace Loadmark.Core.Nameplates.Parsing;

/// <content>What is written onto something else in one word: units with what follows them, a contact with its sign.</content>
internal ref partial struct LabelLexer
{
    /// <summary>A unit after a number, with what may be written onto it: "VDC", "mAmax".</summary>
    private bool LexUnit(int start, int end)
    {
        if (end - start > 20)
            return false;

        for (var split = end; split > start; split--)
        {
            if (!LabelWords.TryUnit(_lower[start..split], out var sign, out var factor))
                continue;

            // MV and MW: milli or mega? Not to be guessed.
            if (sign is Sign.Volt or Sign.Watt && _text[start] == 'M')
                continue;
            if (split == end)
            {
                Add(sign, start, end, factor);
                return true;
            }

            // "12AX7" is a valve, not twelve amperes seven times over.
            if (end == split + 1 && _lower[split] == 'x' && sign == Sign.Ampere && (_text[split] == 'X' || IsDigit(end)))
                continue;

            var count = _count;
            Add(sign, start, split, factor);
            if (LexSuffix(split, end))
                return true;
            _count = count;
        }

        return false;
    }

    private bool LexSuffix(int start, int end)
    {
        if (_lower[start..end] is "cc" or "ca" && Previous == Sign.Volt && _lower[start - 1] == 'v')
        {
            // "9Vcc", "12Vca": corriente or corrente continua, alterna.
            Add(_lower[start + 1] == 'c' ? Sign.Direct : Sign.Alternating, start, end);
            return true;
        }

        var sign = SideOf(_lower[start..end]);
        if (sign is Sign.Direct or Sign.Alternating or Sign.Qualifier or Sign.Quiet or Sign.Input or Sign.Output or Sign.Times or Sign.To
            or Sign.Or or Sign.Each or Sign.Total)
        {
            Add(sign, start, end);
            return true;
        }

        return LexFormAndSide(start, end);
    }

    /// <summary>"DCIN", "ACinput", "DCmax".</summary>
    private bool LexFormAndSide(int start, int end)
    {
        if (end - start < 4 || _lower[start + 1] != 'c' || _lower[start] is not ('d' or 'a'))
            return false;
        var sign = SideOf(_lower[(start + 2)..end]);
        if (sign is not (Sign.Input or Sign.Output or Sign.Qualifier or Sign.Adaptor))
            return false;
        Add(_lower[start] == 'd' ? Sign.Direct : Sign.Alternating, start, start + 2);
        Add(sign, start + 2, end);
        return true;
    }

    private static char SideOf(ReadOnlySpan<char> word) =>
        word is "in" ? Sign.Input : word is "out" ? Sign.Output : LabelWords.SignOf(word);

    /// <summary>"9-volt": the hyphen joins, it is no range.</summary>
    private bool LexUnitAfterHyphen(int start, int end)
    {
        if (_count < 2 || (end - start < 3 && _lower[start..end] is not "v") || _spaced || Previous != Sign.Dash
            || _tokens[_count - 1].Spaced || _tokens[_count - 2].Sign != Sign.Number)
            return false;
        if (!LabelWords.TryUnit(_lower[start..end], out var sign, out var factor))
            return false;

        // The unit's token takes the hyphen in, so that nothing vanishes.
        var hyphen = _tokens[--_count].Start;
        Add(sign, hyphen, end, factor);
        return true;
    }

    /// <summary>Lexes a contact and its sign in one word: "centernegative".</summary>
    private bool LexContactAndSign(int start, int end)
    {
        if (!IsLatin(start))
            return LexKanaPolarity(start, end);
        if (end - start is < 6 or > 16)
            return false;
        for (var length = 3; length <= 6; length += 3)
        {
            if (LabelWords.SignOf(_lower[start..(start + length)]) is var contact && contact is not (Sign.Centre or Sign.Sleeve))
                continue;
            if (LabelWords.SignOf(_lower[(start + length)..end]) is var sign && sign is not (Sign.Positive or Sign.Negative))
                continue;
            Add(contact, start, start + length);
            Add(sign, start + length, end);
            return true;
        }

        return false;
    }

    /// <summary>Lexes a contact and its sign in katakana: "センターマイナス", "マイナスセンター".</summary>
    private bool LexKanaPolarity(int start, int end)
    {
        for (var split = start + 3; split <= end - 3 && split <= start + 5; split++)
        {
            var (first, second) = (LabelWords.SignOf(_lower[start..split]), LabelWords.SignOf(_lower[split..end]));
            if ((first == Sign.Centre && second is Sign.Positive or Sign.Negative)
                || (first is Sign.Positive or Sign.Negative && second == Sign.Centre))
            {
                Add(first, start, split);
                Add(second, split, end);
                return true;
            }
        }

        return false;
    }

    /// <summary>"Switch-mode", "switching mode": such a supply is regulated (common practice, no source).</summary>
    private bool LexSwitchMode(int end)
    {
        var at = _count - 1;
        if (at > 0 && _tokens[at].Sign is Sign.Dash or Sign.Point)
            at--;
        if (at < 0 || _lower[_tokens[at].Start.._tokens[at].End] is not ("switch" or "switched" or "switching"))
            return false;
        _count = at + 1;
        _tokens[at] = _tokens[at] with { Sign = Sign.Regulated, End = end };
        _spaced = false;
        return true;
    }
}
