namespace Loadmark.Core.Nameplates.Parsing;

/// <content>Outlets named in brackets, before their figures or after them.</content>
internal ref partial struct OutletMarks
{
    /// <summary>
    /// "9 V 100 mA (1-8), 9 V 500 mA (9-10)", "(1-6) 9 V 200 mA (7) 12 V": two brackets or more whose numbers count on from 1.
    /// </summary>
    private readonly void MarkBracketed()
    {
        var (brackets, last) = (0, 0m);
        for (var i = 0; i < _tokens.Length; i++)
        {
            if (BracketEnd(i, last) is not (var end and > 0))
                continue;
            brackets++;
            last = IdOf(end - 1);
            i = end;
        }

        if (brackets < 2)
            return;
        last = 0m;
        for (var i = 0; i < _tokens.Length; i++)
        {
            if (BracketEnd(i, last) is not (var end and > 0))
                continue;
            last = IdOf(end - 1);
            for (var j = i + 1; j < end; j++)
            {
                if (_tokens[j].Sign == Sign.Number)
                    _tokens[j].Sign = Sign.Ids;
                else if (_tokens[j].Sign == Sign.Tilde)
                    _tokens[j].Sign = Sign.Dash;
            }

            i = end;
        }
    }

    /// <summary>Where the bracket closes that opens here with ids that go on from the last; 0 when it is no such bracket.</summary>
    private readonly int BracketEnd(int i, decimal last)
    {
        if (SignAt(i) != Sign.Open || !IsId(i + 1) || _tokens[i + 1].Value != last + 1m)
            return 0;
        var end = i + 2;
        while (SignAt(end) is Sign.Dash or Sign.Tilde or Sign.Dots or Sign.To or Sign.Comma or Sign.And && IsId(end + 1)
            && _tokens[end + 1].Value > _tokens[end - 1].Value)
            end += 2;
        return SignAt(end) == Sign.Close ? end : 0;
    }
}
