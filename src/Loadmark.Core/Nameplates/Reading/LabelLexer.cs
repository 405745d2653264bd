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
        if (LexNought(start) is var past and > 0)
            return past;

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
        if (hasUnit && Previous == Sign.Number && !EndsInSize(first))
            known = false;
        if (known || !hasDigits)
            return i;

        _count = first;
        _spaced = spaced;
        if (LexLookAlike(start, i) is var alike and > 0)
            return alike;
        Add(Sign.Identifier, start, i);
        return i;
    }

    /// <summary>"…100mA5.5x2.1": the size of a plug hangs on the figures.</summary>
    private readonly bool EndsInSize(int first) =>
        _count >= first + 4 && _tokens[_count - 2].Sign == Sign.Times && _tokens[_count - 3] is { Sign: Sign.Number, Value.Scale: 1 } && Sign.IsUnit(_tokens[_count - 4].Sign);

    /// <summary>"O.3A": a nought, most likely.</summary>
    /// <returns>Where the figure ends; 0 when there is none.</returns>
    private int LexNought(int start)
    {
        if (_text[start] is not ('O' or 'o') || At(start + 1) != '.' || !IsDigit(start + 2) || IsWordPart(start - 1) || !DecimalText.TryRead(_text[(start + 1)..], out var value, out var length, out _))
            return 0;
        var number = start + 1 + length;
        var end = number;
        while (IsLetter(end))
            end++;
        return LexDoubtful(start, number, end, value, unitLength: 0);
    }

    /// <summary>A figure in which letters stand for digits.</summary>
    /// <returns>Where it ends; 0 when there is none.</returns>
    private int LexLookAlike(int start, int end)
    {
        var length = LookAlikes.NumberIn(_text[start..end], out var value, out var unitLength);
        return length == 0 ? 0 : LexDoubtful(start, start + length, end, value, unitLength);
    }

    private int LexDoubtful(int start, int number, int end, decimal value, int unitLength)
    {
        var (count, spaced) = (_count, _spaced);
        Add(Sign.Number, start, number, value);
        if (unitLength > 0 && number + unitLength == end)
            Add(Sign.Ampere, number, end, 1e-3m);
        else if (number == end || !LexUnit(number, end))
            Forget(count, spaced);
        if (_count == count)
            return 0;
        if (LookAlikes.IsLikely(value * _tokens[count + 1].Value, _tokens[count + 1].Sign))
        {
            _tokens[count].Doubtful = true;
            return end;
        }

        Forget(count, spaced);
        return 0;
    }

    private void Forget(int count, bool spaced)
    {
        _count = count;
        _spaced = spaced;
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
        return end == i + 1 && IsInTwo(i) ? i + 3 : end;
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
            if (sign is Sign.Direct or Sign.Alternating or Sign.Qualifier or Sign.Input or Sign.Output or Sign.Mains or Sign.Quiet or Sign.Each or Sign.Total
                || (sign is Sign.Times or Sign.To or Sign.Or && inRunAfterNumber) || (sign is Sign.Times && IsTrailingTimes(start, end)))
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

    /// <summary>"9V 100mA x4": an x after a figure, and up to two digits.</summary>
    private readonly bool IsTrailingTimes(int start, int end)
    {
        var digits = end;
        while (IsDigit(digits) && digits < end + 3)
            digits++;
        return end == start + 1 && digits - end is 1 or 2 && !IsWordPart(digits) && (IsFigureEnd(Previous) || Previous is Sign.Open or Sign.Comma or Sign.Close);
    }

    private void LexWord(int start, int end, char sign)
    {
        var word = _lower[start..end];
        var next = NextVisible(end);
        switch (word)
        {
            case "i/p" or "o/p":
                Add(word is "i/p" ? Sign.Input : Sign.Output, start, end);
                return;
            case "d c" or "a c":
                Add(word is "d c" ? Sign.Direct : Sign.Alternating, start, end);
                return;
            case "cc" or "ca" when _text[start] == 'C' && _text[start + 1] is 'C' or 'A' && At(end) != '.' && Previous is Sign.Volt or Sign.Quiet:
                Add(word is "cc" ? Sign.Direct : Sign.Alternating, start, end);
                return;
            case "min" when IsDutchMinus(end):
                Add(Sign.Negative, start, end);
                return;
            case "in" when Previous == Sign.Negative || Previous == Sign.Positive:
                Add(Sign.Filler, start, end);
                return;
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
            case "in" or "out" when (Previous is not (Sign.Word or Sign.Name or Sign.Identifier or Sign.Foreign) && (_text[start] is 'I' or 'O' || Previous is Sign.Direct or Sign.Alternating || next == ':'))
                || (next == ':' && IsUsb()) || (next is >= '0' and <= '9' && (_count == 0 || (word is "out" && IsFigureEnd(Previous)))):
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
                _tokens[_count - 1].Topic = LabelWords.TopicOf(word);
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
        var sign = SideOf(_lower[start..end]);
        if (sign is Sign.Direct or Sign.Alternating or Sign.Qualifier or Sign.Quiet or Sign.Input or Sign.Output or Sign.Times or Sign.To or Sign.Or or Sign.Each or Sign.Total)
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

    /// <summary>"センターマイナス", "マイナスセンター".</summary>
    private bool LexKanaPolarity(int start, int end)
    {
        for (var split = start + 3; split <= end - 3 && split <= start + 5; split++)
        {
            var (first, second) = (LabelWords.SignOf(_lower[start..split]), LabelWords.SignOf(_lower[split..end]));
            if ((first == Sign.Centre && second is Sign.Positive or Sign.Negative) || (first is Sign.Positive or Sign.Negative && second == Sign.Centre))
            {
                Add(first, start, split);
                Add(second, split, end);
                return true;
            }
        }

        return false;
    }

    /// <summary>"I/P", "O/P"; "D C 9 V", where the letters stand apart and a figure beside them.</summary>
    private readonly bool IsInTwo(int i)
    {
        if (IsWordPart(i - 1) || IsWordPart(i + 3))
            return false;
        if (At(i + 1) == '/')
            return LowerAt(i) is 'i' or 'o' && LowerAt(i + 2) == 'p';
        return At(i + 1) == ' ' && LowerAt(i) is 'd' or 'a' && LowerAt(i + 2) == 'c'
            && (Previous == Sign.Volt || (NextVisible(i + 3) is >= '0' and <= '9' && Previous is Sign.NewLine or Sign.Colon or Sign.Input or Sign.Output or Sign.Quiet));
    }

    /// <summary>"min in het midden", "min aan de kern": minus, not minimum.</summary>
    private readonly bool IsDutchMinus(int end)
    {
        var rest = _lower[end..Math.Min(_lower.Length, end + 10)].TrimStart(' ');
        return rest.StartsWith("in het") || rest.StartsWith("in de") || rest.StartsWith("aan ") || rest.StartsWith("op de");
    }

    /// <summary>Whether "USB", with or without the kind of its connector, stands before.</summary>
    private readonly bool IsUsb()
    {
        for (var i = _count - 1; i >= 0 && i >= _count - 3; i--)
        {
            if (_lower[_tokens[i].Start.._tokens[i].End] is "usb")
                return true;
        }

        return false;
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

        // The unit's token takes the hyphen in, so that nothing vanishes.
        var hyphen = _tokens[--_count].Start;
        Add(sign, hyphen, end, factor);
        return true;
    }
}
