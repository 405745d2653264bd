namespace Loadmark.Core.Nameplates.Parsing;

/// <content>Figures in which letters stand for digits.</content>
internal ref partial struct LabelLexer
{
    /// <summary>"O.3A": a nought, most likely.</summary>
    /// <returns>Where the figure ends; 0 when there is none.</returns>
    private int LexNought(int start)
    {
        if (_text[start] is not ('O' or 'o') || At(start + 1) != '.' || !IsDigit(start + 2) || IsWordPart(start - 1)
            || !DecimalText.TryRead(_text[(start + 1)..], out var value, out var length, out _))
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
}
