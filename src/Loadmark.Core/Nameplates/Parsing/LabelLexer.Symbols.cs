namespace Loadmark.Core.Nameplates.Parsing;

/// <content>Everything that is neither a letter nor a digit: signs, dashes, bars, punctuation.</content>
internal ref partial struct LabelLexer
{
    private int LexSymbol(int i)
    {
        var character = _text[i];
        if (PolarityDrawing.TryRead(_text[i..], out var drawn, out var shows))
        {
            Add(Sign.Drawing, i, i + drawn, shows);
            return i + drawn;
        }

        switch (character)
        {
            case '+' or '-' when LowerAt(i + 1) == 'v' && LowerAt(i + 2) == 'e' && !IsWordPart(i + 3):
                Add(character == '+' ? Sign.Positive : Sign.Negative, i, i + 3);
                return i + 3;
            case '(' when At(i + 1) is '+' or '-' && At(i + 2) == ')':
                Add(At(i + 1) == '+' ? Sign.Positive : Sign.Negative, i, i + 3);
                return i + 3;
            case '\u2295':
                return AddOne(Sign.Positive, i);
            case '\u2296':
                return AddOne(Sign.Negative, i);
            case '-' when At(i + 1) == '|' && At(i + 2) == '-' && IsFigureEnd(Previous):
                // A cell drawn as strokes: direct current, whichever stroke is the plus.
                Add(Sign.Direct, i, i + 3);
                return i + 3;
            case '-' or '=' when At(i + 1) == '>' && IsFigureEnd(Previous):
                Add(Sign.Arrow, i, i + 2);
                return i + 2;
            case '>' or '→' or '⇒' or '►' or '▶' when IsFigureEnd(Previous):
                return AddOne(Sign.Arrow, i);
            case '-' or '=' or '_':
                return LexLines(i);
            case Folding.DirectMark:
                return AddRepeated(Sign.Direct, i);
            case '~':
                return AddRepeated(Sign.Tilde, i);
            case '.' when At(i + 1) == '.':
                return AddRepeated(Sign.Dots, i);
            case '\u2026' or '÷':
                return AddOne(Sign.Dots, i);
            case '/':
                return AddOne(Sign.Slash, i);
            case ',':
                return AddOne(Sign.Comma, i);
            case ';':
                return AddOne(Sign.Semicolon, i);
            case ':':
                return AddOne(Sign.Colon, i);
            case '+':
                return AddOne(Sign.Plus, i);
            case '&':
                return AddOne(Sign.And, i);
            case '(' or '[' or '{':
                return AddOne(Sign.Open, i);
            case ')' or ']' or '}':
                return AddOne(Sign.Close, i);
            case '@':
                return AddOne(Sign.At, i);
            case '*' when (Previous is Sign.Number or Sign.Open or Sign.Comma or Sign.Close || IsFigureEnd(Previous))
                && NextVisible(i + 1) is >= '0' and <= '9':
                return AddOne(Sign.Times, i);
            case '"' when Previous == Sign.Number && !_spaced:
                return AddOne(Sign.Inch, i);
            case '%':
                if (Previous == Sign.Number)
                    _tokens[_count - 1].Sign = Sign.Identifier;
                return AddOne(Sign.Word, i);
            case '≤' or '≥' or '≈':
                return AddOne(Sign.Point, i);
            default:
                return AddOne(char.IsAscii(character) || char.IsPunctuation(character) ? Sign.Point : Sign.Word, i);
        }
    }

    private static bool IsFigureEnd(char sign) => Sign.IsUnit(sign) || sign is Sign.Direct or Sign.Alternating or Sign.Equal;

    private int AddOne(char sign, int i)
    {
        Add(sign, i, i + 1);
        return i + 1;
    }

    private int AddRepeated(char sign, int i)
    {
        var end = i + 1;
        while (end < _text.Length && _text[end] == _text[i])
            end++;
        Add(sign, i, end);
        return end;
    }

    /// <summary>Dashes and bars: a dash, or the mark of direct current built from them ("===", "- - -", "_ _ _").</summary>
    private int LexLines(int start)
    {
        var end = start;
        var strokes = 0;
        var bars = 0;
        for (var i = start; i < _text.Length && i < start + 16; i++)
        {
            if (_text[i] == ' ' && i > start && At(i - 1) != ' ')
                continue;
            if (_text[i] is not ('-' or '=' or '_'))
                break;
            if (i == start || At(i - 1) == ' ')
                strokes++;
            if (_text[i] == '=')
                bars++;
            end = i + 1;
        }

        if (bars > 0)
        {
            Add(Sign.Equal, start, end);
            return end;
        }

        if (strokes >= 3)
        {
            Add(Sign.Direct, start, end);
            return end;
        }

        // "9V --- 100mA": the dashed line alone stands for direct current, after a voltage.
        if (strokes == 1 && end - start >= 3 && _text[start] == '-' && Previous is Sign.Volt)
        {
            Add(Sign.Direct, start, end, value: -1m);
            return end;
        }

        return _text[start] == '-' ? AddRepeated(Sign.Dash, start) : AddOne(Sign.Point, start);
    }
}
