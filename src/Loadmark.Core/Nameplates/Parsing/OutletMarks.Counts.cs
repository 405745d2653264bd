namespace Loadmark.Core.Nameplates.Parsing;

/// <content>Numbers that count outlets.</content>
internal ref partial struct OutletMarks
{
    private void TryCount(int i)
    {
        var number = _tokens[i].Sign == Sign.Word
            ? LabelWords.NumberOf(Lower(i))
            : IsId(i) && _tokens[i].Value <= PrintedOutlets.Most ? (int)_tokens[i].Value : 0;
        if (number == 0 || SignAt(i - 1) is Sign.Name or Sign.Number or Sign.Dash
            || (SignAt(i - 1) is Sign.Slash && SignAt(i + 1) is not Sign.Times))
            return;
        if (IsMadeOf(i, number))
        {
            // "24 V 2 A (2x12 V)": what the voltage is made of.
            foreach (ref var token in _tokens[i..(i + 4)])
                token.Sign = Sign.Identifier;
            return;
        }

        if (!IsBeforeTimes(i) && !IsAfterTimes(i) && !IsBeforeOutputs(i, number))
            return;
        _tokens[i].Sign = Sign.Count;
        _tokens[i].Value = number;
    }

    /// <summary>Whether a bracket opens with a count and a voltage that come to the voltage before it.</summary>
    private readonly bool IsMadeOf(int i, int number)
    {
        if (SignAt(i - 1) != Sign.Open || SignAt(i + 1) != Sign.Times || SignAt(i + 2) != Sign.Number || SignAt(i + 3) != Sign.Volt)
            return false;
        for (var j = i - 2; j > i - Reach && j > 0; j--)
        {
            if (_tokens[j].Sign == Sign.Volt && SignAt(j - 1) == Sign.Number)
                return _tokens[j - 1].Value == number * _tokens[i + 2].Value;
        }

        return false;
    }

    /// <summary>"8 x 9 V 100 mA", "9 V 2 x 500 mA", "9 V 100 mA (4x)"; not "2 x 9 V battery".</summary>
    private readonly bool IsBeforeTimes(int i)
    {
        if (SignAt(i + 1) != Sign.Times || SignAt(i - 1) == Sign.Times)
            return false;
        if (SignAt(i - 1) == Sign.Open && SignAt(i + 2) == Sign.Close)
            return true;
        var figure = SignAt(i + 2) is Sign.Open or Sign.Direct or Sign.Alternating ? i + 3 : i + 2;
        return SignAt(figure + 1) != Sign.Comma && IsFigureAt(figure, out var unit) && unit is Sign.Volt or Sign.Ampere
            && !IsOfCells(figure);
    }

    /// <summary>Whether a word for a battery stands soon after a figure.</summary>
    private readonly bool IsOfCells(int i)
    {
        for (var most = i + 5; i < most && i < _tokens.Length; i++)
        {
            if (_tokens[i].Sign is Sign.Word or Sign.Foreign
                && Lower(i) is "battery" or "batteries" or "cell" or "cells" or "aa" or "aaa" or "alkaline")
                return true;
        }

        return false;
    }

    /// <summary>"9 V 100 mA x 6".</summary>
    private readonly bool IsAfterTimes(int i)
    {
        if (SignAt(i - 1) != Sign.Times
            || SignAt(i + 1) is Sign.Times or Sign.Millimetre or Sign.Volt or Sign.Ampere or Sign.Watt or Sign.Inch or Sign.Dash
                or Sign.Identifier)
            return false;
        if (SignAt(i - 2) == Sign.Output)
            return IsFigureAt(SignAt(i + 1) is Sign.Colon or Sign.Direct or Sign.Close ? i + 2 : i + 1, out var unit)
                ? unit == Sign.Volt
                : SignAt(i + 1) is not (Sign.Number or Sign.Identifier);
        return Sign.IsUnit(SignAt(i - 2))
            || SignAt(i - 2) is Sign.Direct or Sign.Alternating or Sign.Equal or Sign.Tilde or Sign.Close or Sign.Comma or Sign.Open
                or Sign.Each;
    }

    /// <summary>"5 outs daisy chain": plugs of one lead, and no outlets.</summary>
    private readonly bool IsOfChain(int i) => i < _tokens.Length && Lower(i) is "daisy" or "daisychain" or "chain" or "chained";

    /// <summary>"8 outputs", "4 isolated d.c. outputs", "1 output".</summary>
    private readonly bool IsBeforeOutputs(int i, int number)
    {
        for (var j = i + 1; j < i + 5 && j < _tokens.Length; j++)
        {
            if (_tokens[j].Sign == Sign.Output)
                return !IsOfChain(j + 1) && (LabelWords.IsPlural(Lower(j)) || (number == 1 && j == i + 1));
            if (_tokens[j].Sign is not (Sign.Word or Sign.Quiet or Sign.Isolated or Sign.Regulated or Sign.Direct or Sign.Alternating
                or Sign.Filler or Sign.Dash))
                return false;
        }

        return false;
    }
}
