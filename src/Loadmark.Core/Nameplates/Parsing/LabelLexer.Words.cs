namespace Loadmark.Core.Nameplates.Parsing;

/// <content>Letters that stand alone, or begin something: words.</content>
internal ref partial struct LabelLexer
{
    /// <summary>Lexes letters that stand alone or in a run; false when they make the run an identifier.</summary>
    private bool LexLetters(int start, int end, bool inRunAfterNumber, bool beforeDigit)
    {
        var word = _lower[start..end];
        if (IsDottedForm(start))
        {
            Add(word[0] == 'd' || word[..3] is "c.c" ? Sign.Direct : Sign.Alternating, start, end);
            return true;
        }

        if (Previous == Sign.Number && LexUnit(start, end))
            return true;

        var sign = beforeDigit && !inRunAfterNumber ? SideOf(word) : LabelWords.SignOf(word);
        if (inRunAfterNumber || beforeDigit)
        {
            if (sign is Sign.Direct or Sign.Alternating or Sign.Qualifier or Sign.Input or Sign.Output or Sign.Mains or Sign.Quiet
                or Sign.Each or Sign.Total
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
        return end == start + 1 && digits - end is 1 or 2 && !IsWordPart(digits)
            && (IsFigureEnd(Previous) || Previous is Sign.Open or Sign.Comma or Sign.Close or Sign.Output);
    }

    private void LexWord(int start, int end, char sign)
    {
        var word = _lower[start..end];
        var next = NextVisible(end);
        switch (word)
        {
            case "rna" when Previous == Sign.Number && _text[end - 1] == 'A' && _spaced:
                // "300 rnA": an m fallen apart.
                _tokens[_count - 1].Doubtful = true;
                Add(Sign.Ampere, start, end, 1e-3m);
                return;
            case "i/p" or "o/p":
                Add(word is "i/p" ? Sign.Input : Sign.Output, start, end);
                return;
            case "d c" or "a c":
                Add(word is "d c" ? Sign.Direct : Sign.Alternating, start, end);
                return;
            case "cc" when Previous == Sign.Volt:
                Add(Sign.Direct, start, end);
                return;
            case "cc" or "ca" when _text[start] == 'C' && _text[start + 1] is 'C' or 'A' && At(end) != '.'
                && Previous is Sign.Volt or Sign.Quiet:
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
            case "c" when At(end) is '-' or '+' && EndsAbbreviation(end + 1)
                && At(start - 1) is ' ' or '\0' or '(' or ',' or ';' or '/' or '\n':
                Add(Sign.Centre, start, end);
                return;
            case "a" when _count >= 2 && Previous == Sign.Word && _tokens[_count - 1].Length == 1
                && _lower[_tokens[_count - 1].Start] == 'm' && _tokens[_count - 2].Sign == Sign.Number:
                // "300 m A": the gap is the printer's or the scanner's.
                _tokens[_count - 1] = _tokens[_count - 1] with { Sign = Sign.Ampere, End = end, Value = 1e-3m };
                _spaced = false;
                return;
            case "mode" when LexSwitchMode(end):
                return;
            case "don" or "doesn" or "isn" or "can" when At(end) == '\'' && LowerAt(end + 1) == 't' && !IsWordPart(end + 2):
                Add(Sign.Not, start, end);
                return;
            case "no" when Previous != Sign.Name && At(end) is not ('.' or ':' or '#' or '-' or '/')
                && next is not (':' or '#' or (>= '0' and <= '9')):
                Add(Sign.Not, start, end);
                return;
            case "in" or "out" when (
                Previous is not (Sign.Word or Sign.Name or Sign.Identifier or Sign.Foreign)
                    && (_text[start] is 'I' or 'O' || Previous is Sign.Direct or Sign.Alternating || next == ':'))
                || (next == ':' && IsUsb()) || (next is >= '0' and <= '9' && (_count == 0 || (word is "out" && IsFigureEnd(Previous))))
                || IsSideOfVolts(start, end):
                Add(word is "in" ? Sign.Input : Sign.Output, start, end);
                return;
            case "series" when _count > 0 && _lower[_tokens[_count - 1].Start.._tokens[_count - 1].End] is "in":
                // No name follows: "do not connect in series".
                Add(Sign.Word, start, end);
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
                if (sign is Sign.Word or Sign.Quiet or Sign.Centre or Sign.Sleeve)
                    _tokens[_count - 1].Topic = LabelWords.TopicOf(word);
                return;
        }
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

    /// <summary>"I/P", "O/P"; "D C 9 V", where the letters stand apart and a figure beside them.</summary>
    private readonly bool IsInTwo(int i)
    {
        if (IsWordPart(i - 1) || IsWordPart(i + 3))
            return false;
        if (At(i + 1) == '/')
            return LowerAt(i) is 'i' or 'o' && LowerAt(i + 2) == 'p';
        return At(i + 1) == ' ' && LowerAt(i) is 'd' or 'a' && LowerAt(i + 2) == 'c'
            && (Previous == Sign.Volt || (NextVisible(i + 3) is >= '0' and <= '9'
                && Previous is Sign.NewLine or Sign.Colon or Sign.Input or Sign.Output or Sign.Quiet));
    }

    /// <summary>"min in het midden", "min aan de kern": minus, not minimum.</summary>
    private readonly bool IsDutchMinus(int end)
    {
        var rest = _lower[end..Math.Min(_lower.Length, end + 10)].TrimStart(' ');
        return rest.StartsWith("in het") || rest.StartsWith("in de") || rest.StartsWith("aan ") || rest.StartsWith("op de");
    }

    /// <summary>
    /// "PACK IN 5 V 2 A, OUT 9 V": in capitals, with a voltage right after it, whatever the thing is called before; not "LINE IN 5 V".
    /// </summary>
    private readonly bool IsSideOfVolts(int start, int end)
    {
        if (_text[start] is not ('I' or 'O') || _text[end - 1] is not ('N' or 'T'))
            return false;
        if (Previous == Sign.Foreign
            && LabelWords.ForeignTo(_lower[_tokens[_count - 1].Start.._tokens[_count - 1].End]) != ForeignFigures.Cell)
            return false;
        var at = end;
        while (At(at) == ' ')
            at++;
        var digits = at;
        while (At(at) is (>= '0' and <= '9') or '.' or ',')
            at++;
        if (at == digits)
            return false;
        while (At(at) == ' ')
            at++;
        return LowerAt(at) == 'v' && LowerAt(at + 1) is not ((>= 'e' and <= 'z') or 'b');
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
}
