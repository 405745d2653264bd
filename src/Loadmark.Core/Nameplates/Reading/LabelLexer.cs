namespace Loadmark.Core.Nameplates.Reading;

/// <summary>Splits a folded label into tokens. Runs of letters and digits are either figures through and through or identifiers.</summary>
internal ref partial struct LabelLexer
{
    private readonly ReadOnlySpan<char> _text;
    private readonly ReadOnlySpan<char> _lower;
    private readonly Span<Token> _tokens;
    private int _count;
    private bool _spaced;

    /// <summary>Prepares to lex.</summary>
    /// <param name="text">The label, folded.</param>
    /// <param name="lower">The same in small letters.</param>
    /// <param name="tokens">Room for as many tokens as the label has characters.</param>
    public LabelLexer(ReadOnlySpan<char> text, ReadOnlySpan<char> lower, Span<Token> tokens)
    {
        _text = text;
        _lower = lower;
        _tokens = tokens;
    }

    private readonly char Previous => _count > 0 ? _tokens[_count - 1].Sign : Sign.NewLine;

    /// <summary>Lexes the whole label.</summary>
    /// <returns>How many tokens there are.</returns>
    public int Lex()
    {
        var i = 0;
        while (i < _text.Length)
        {
            var character = _text[i];
            if (character == ' ')
            {
                _spaced = true;
                i++;
            }
            else if (character is '\n' or '\r')
            {
                if (Previous != Sign.NewLine)
                    Add(Sign.NewLine, i, i + 1);
                _spaced = true;
                i++;
            }
            else if (IsDigit(i) || StartsWithPoint(i) || char.IsLetter(character))
            {
                i = LexRun(i);
            }
            else
            {
                i = LexSymbol(i);
            }
        }

        return _count;
    }

    private readonly bool IsDigit(int i) => i < _text.Length && _text[i] is >= '0' and <= '9';

    private readonly bool IsLetter(int i) => i >= 0 && i < _text.Length && char.IsLetter(_text[i]);

    private readonly bool IsWordPart(int i) => IsLetter(i) || (i >= 0 && IsDigit(i));

    private readonly char At(int i) => i >= 0 && i < _text.Length ? _text[i] : '\0';

    private readonly char LowerAt(int i) => i >= 0 && i < _lower.Length ? _lower[i] : '\0';

    /// <summary>".5A": a decimal point with nothing before it.</summary>
    private readonly bool StartsWithPoint(int i) => _text[i] == '.' && IsDigit(i + 1) && !IsWordPart(i - 1) && At(i - 1) != '.';

    private readonly char NextVisible(int i)
    {
        while (i < _text.Length && _text[i] == ' ')
            i++;
        return i < _text.Length ? _text[i] : '\0';
    }

    private void Add(char sign, int start, int end, decimal value = 0, decimal other = 0)
    {
        _tokens[_count++] = new Token(sign, start, end, _spaced) { Value = value, Other = other };
        _spaced = false;
    }

    /// <summary>
    /// A run of letters and digits. "9VDC500mA" becomes figures; "9V3" and "SA130A", in which a part is no figure, one identifier.
    /// </summary>
    private int LexRun(int start)
    {
        var first = _count;
        var spaced = _spaced;
        var known = Previous != Sign.Word || At(_tokens[_count - 1].Start) != '±';
        var hasDigits = false;
        var hasUnit = false;
        var i = start;
        while (i < _text.Length)
        {
            if (IsDigit(i) || (i == start && _text[i] == '.'))
            {
                hasDigits = true;
                known &= LexNumber(ref i);
            }
            else if (IsLetter(i) && (i == start || IsLatin(i) == IsLatin(i - 1) || IsDigit(i - 1)) && !(i > start && IsDottedForm(i)))
            {
                var end = EndOfLetters(i);
                known &= LexLetters(i, end, inRunAfterNumber: i > start && Previous == Sign.Number, beforeDigit: IsDigit(end) && IsLatin(i));
                hasUnit |= _count > first && Sign.IsUnit(Previous);
                i = end;
                if (!IsLatin(i - 1))
                    break;
            }
            else
            {
                break;
            }
        }

        // "9V3" is a part of a name, or 9.3 V written as on a resistor: not to be guessed.
        if (hasUnit && Previous == Sign.Number)
            known = false;
        if (known || !hasDigits)
            return i;

        _count = first;
        _spaced = spaced;
        Add(Sign.Identifier, start, i);
        return i;
    }

    private readonly bool IsLatin(int i) => _text[i] < 0x2E80;

    private readonly int EndOfLetters(int i)
    {
        var latin = IsLatin(i);
        var end = i + 1;

        // The dot of "9Vd.c." ends nothing; everything else that is not a letter does.
        while (IsLetter(end) && IsLatin(end) == latin && !IsDottedForm(end))
            end++;
        if (end == i + 1 && IsDottedForm(i))
            return DottedFormEnd(i);
        return end;
    }

    private readonly bool IsDottedForm(int i) =>
        LowerAt(i) is 'd' or 'a' && At(i + 1) == '.' && LowerAt(i + 2) == 'c' && !IsWordPart(i + 3);

    private readonly int DottedFormEnd(int i) => At(i + 3) == '.' ? i + 4 : i + 3;

    private bool LexNumber(ref int i)
    {
        var start = i;
        var read = DecimalText.TryRead(_text[i..], out var value, out var length, out var grouping);
        if (read)
            i += length;

        // A second decimal point, or more digits than a figure has: a date, a version, a bar code.
        var clean = read;
        while (IsDigit(i) || (At(i) is '.' or ',' or '\'' or '\u00B7' or '\u2022' or '\u2219' && IsDigit(i + 1)))
        {
            clean = false;
            i++;
        }

        Add(Sign.Number, start, i, value, grouping ? value * 1000m : 0m);
        return clean;
    }

    /// <summary>Lexes letters that stand alone or in a run; false when they make the run an identifier.</summary>
    private bool LexLetters(int start, int end, bool inRunAfterNumber, bool beforeDigit)
    {
        var word = _lower[start..end];
        if (IsDottedForm(start))
        {
            Add(word[0] == 'd' ? Sign.Direct : Sign.Alternating, start, end);
            return true;
        }

        if (Previous == Sign.Number && LexUnit(start, end))
            return true;

        var sign = beforeDigit && !inRunAfterNumber ? SideOf(word) : LabelWords.SignOf(word);
        if (inRunAfterNumber || beforeDigit)
        {
            if (sign is Sign.Direct or Sign.Alternating or Sign.Qualifier or Sign.Input or Sign.Output or Sign.Mains or Sign.Quiet
                || (sign is Sign.Times or Sign.To or Sign.Or && inRunAfterNumber))
            {
                Add(sign, start, end);
                return true;
            }

            if (!inRunAfterNumber && LexFormAndSide(start, end))
                return true;
            Add(Sign.Word, start, end);
            return false;
        }

        LexWord(start, end, sign);
        return true;
    }

    private void LexWord(int start, int end, char sign)
    {
        var word = _lower[start..end];
        var next = NextVisible(end);
        switch (word)
        {
            case "s" or "p" when At(end) == '/' && LowerAt(end + 1) == 'n' && !IsLetter(end + 2):
                Add(Sign.Name, start, end);
                return;
            case "c" when At(end) is '-' or '+' && EndsAbbreviation(end + 1) && At(start - 1) is ' ' or '\0' or '(' or ',' or ';' or '/' or '\n':
                Add(Sign.Centre, start, end);
                return;
            case "a" when _count >= 2 && Previous == Sign.Word && _tokens[_count - 1].Length == 1 && _lower[_tokens[_count - 1].Start] == 'm' && _tokens[_count - 2].Sign == Sign.Number:
                // "300 m A": the gap is the printer's or the scanner's.
                _tokens[_count - 1] = _tokens[_count - 1] with { Sign = Sign.Ampere, End = end, Value = 1e-3m };
                _spaced = false;
                return;
            case "don" or "doesn" or "isn" or "can" when At(end) == '\'' && LowerAt(end + 1) == 't' && !IsWordPart(end + 2):
                Add(Sign.Not, start, end);
                return;
            case "no" when Previous != Sign.Name && At(end) is not ('.' or ':' or '#' or '-' or '/') && next is not (':' or '#' or (>= '0' and <= '9')):
                Add(Sign.Not, start, end);
                return;
            case "in" or "out" when Previous is not (Sign.Word or Sign.Name or Sign.Identifier) && (_text[start] is 'I' or 'O' || Previous is Sign.Direct or Sign.Alternating || next == ':'):
                Add(word is "in" ? Sign.Input : Sign.Output, start, end);
                return;
            case "in" or "inch" or "inches" when Previous == Sign.Number:
                Add(Sign.Inch, start, end);
                return;
            case "line" when Previous == Sign.Alternating || next is ':' or (>= '0' and <= '9' and not '6'):
                Add(Sign.Mains, start, end);
                return;
            case "sec" when Previous == Sign.Number:
                Add(Sign.Word, start, end);
                return;
            default:
                if (LexUnitAfterHyphen(start, end) || (sign == Sign.Word && (LexFormAndSide(start, end) || LexContactAndSign(start, end))))
                    return;
                Add(sign, start, end);
                return;
        }
    }

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
        var sign = SideOf(_lower[start..end]);
        if (sign is Sign.Direct or Sign.Alternating or Sign.Qualifier or Sign.Quiet or Sign.Input or Sign.Output or Sign.Times or Sign.To or Sign.Or)
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

    /// <summary>"centernegative".</summary>
    private bool LexContactAndSign(int start, int end)
    {
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

    /// <summary>After "C-" or "C+" nothing may go on: more lines or a sign make it a drawing. "C-neg" says its sign in full.</summary>
    private readonly bool EndsAbbreviation(int i)
    {
        if (!IsWordPart(i))
            return At(i) is not ('-' or '+' or '=' or '_' or '\u2295' or '\u2296') && !(At(i) == '(' && At(i + 1) is '+' or '-');
        var end = i;
        while (IsLetter(end) && end < i + 10)
            end++;
        return At(i - 1) == '-' && !IsWordPart(end) && LabelWords.SignOf(_lower[i..end]) is Sign.Positive or Sign.Negative;
    }

    private static char SideOf(ReadOnlySpan<char> word) =>
        word is "in" ? Sign.Input : word is "out" ? Sign.Output : LabelWords.SignOf(word);

    /// <summary>"9-volt": the hyphen joins, it is no range.</summary>
    private bool LexUnitAfterHyphen(int start, int end)
    {
        if (_count < 2 || (end - start < 3 && _lower[start..end] is not "v") || _spaced || Previous != Sign.Dash || _tokens[_count - 1].Spaced || _tokens[_count - 2].Sign != Sign.Number)
            return false;
        if (!LabelWords.TryUnit(_lower[start..end], out var sign, out var factor))
            return false;
        _count--;
        Add(sign, start, end, factor);
        return true;
    }
}
