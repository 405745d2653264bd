namespace Loadmark.Core.Nameplates.Parsing;

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
        _tokens[_count++] = new Token(sign, start, end, _spaced)
        {
            Value = value,
            Other = other,
            IsApparent = sign == Sign.Watt && LabelWords.IsVoltAmpere(_lower[start..end]),
        };
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
                known &= LexLetters(
                    i, end, inRunAfterNumber: i > start && Previous == Sign.Number, beforeDigit: IsDigit(end) && IsLatin(i));
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

        // "12AC6": a valve, not twelve of something alternating.
        if (!hasUnit && _count > first + 2 && _tokens[first].Sign == Sign.Number && Previous == Sign.Number
            && _tokens[first + 1].Sign is not (Sign.Times or Sign.To or Sign.Or))
            known = false;
        if (!hasDigits && _count == first + 1 && Previous == Sign.Word && _text[start..i].EndsWith("OmA"))
            known = false; // "lOOmA"
        else if (known || !hasDigits)
            return i;

        _count = first;
        _spaced = spaced;
        if (LexLookAlike(start, i) is var alike and > 0)
            return alike;
        Add(hasDigits ? Sign.Identifier : Sign.Word, start, i);
        return i;
    }

    /// <summary>"…100mA5.5x2.1": the size of a plug hangs on the figures.</summary>
    private readonly bool EndsInSize(int first) =>
        _count >= first + 4 && _tokens[_count - 2].Sign == Sign.Times && _tokens[_count - 3] is { Sign: Sign.Number, Value.Scale: 1 }
            && Sign.IsUnit(_tokens[_count - 4].Sign);

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

    /// <summary>"d.c.", "a.c.", and after a voltage "c.c.", "c.a." (corriente, corrente).</summary>
    private readonly bool IsDottedForm(int i)
    {
        if (At(i + 1) != '.' || IsWordPart(i + 3))
            return false;
        return LowerAt(i) switch
        {
            'd' or 'a' => LowerAt(i + 2) == 'c',
            'c' => LowerAt(i + 2) is 'c' or 'a' && Previous == Sign.Volt,
            _ => false,
        };
    }

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
}
