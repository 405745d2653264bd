using System.Globalization;

namespace Loadmark.Core.Nameplates.Parsing;

/// <summary>
/// Finds the numbers of a label that name outlets ("OUT 1-3 9 V", "5: 12 V") or count them ("8 outputs", "6 x 9 V", "9 V ×6"),
/// before figures are put together, so that none of them is taken for a figure or a part of one.
/// </summary>
internal ref partial struct OutletMarks
{
    /// <summary>How far to look past a number for what it belongs to; keeps reading linear.</summary>
    private const int Reach = 10;

    /// <summary>The most ids of one list.</summary>
    private const int MostIds = 16;

    /// <summary>The highest number of an outlet that is believed.</summary>
    private const decimal HighestId = 99m;

    private readonly Span<Token> _tokens;
    private readonly ReadOnlySpan<char> _text;
    private readonly ReadOnlySpan<char> _lower;

    /// <summary>The last id of the list read last; 0 before the first.</summary>
    private decimal _last;

    /// <summary>Whether that list was of letters.</summary>
    private bool _lettered;

    private OutletMarks(Span<Token> tokens, ReadOnlySpan<char> text, ReadOnlySpan<char> lower)
    {
        _tokens = tokens;
        _text = text;
        _lower = lower;
    }

    /// <summary>Gives the tokens that name or count outlets the signs for it, in place.</summary>
    /// <param name="tokens">The label's tokens, as lexed.</param>
    /// <param name="text">The label, folded.</param>
    /// <param name="lower">The same in small letters.</param>
    public static void Resolve(Span<Token> tokens, ReadOnlySpan<char> text, ReadOnlySpan<char> lower) =>
        new OutletMarks(tokens, text, lower).Resolve();

    private readonly char SignAt(int i) => i >= 0 && i < _tokens.Length ? _tokens[i].Sign : Sign.NewLine;

    private readonly ReadOnlySpan<char> Lower(int i) => _lower[_tokens[i].Start.._tokens[i].End];

    private readonly bool IsHash(int i) => SignAt(i) == Sign.Point && _text[_tokens[i].Start] == '#';

    private void Resolve()
    {
        MarkBracketed();
        var listed = IsListed();
        var ports = HasPorts();
        for (var i = 0; i < _tokens.Length; i++)
        {
            var sign = _tokens[i].Sign;
            if (sign is Sign.Identifier && IsNumbered(i))
                _tokens[i].Sign = Sign.Ids;
            else if (IsLettered(i))
                _tokens[i].Sign = Sign.Ids;
            else if (sign is Sign.Word && ports && IsPort(i))
                MarkPort(i);
            else if (_lettered && IsLetter(i) && IdOf(i) == _last + 1m && TryIds(i, isTold: true))
                continue;
            else if (IsHolder(i) && TryIds(SkipHash(i + 1), isTold: true))
                _tokens[i].Sign = Sign.Output;
            else if (sign is Sign.Output || IsHash(i))
                TryIdsAfter(i);
            else if (sign is Sign.Number or Sign.Identifier && _last > 0m && IsBoundary(i) && GoesOn(i) && TryGlued(i))
                continue;
            else if (sign is Sign.Number && (_last > 0m || listed) && IsBoundary(i) && TryIds(i, isTold: false))
                continue;
            else if (sign is Sign.Number or Sign.Word)
                TryCount(i);
        }
    }

    private readonly int SkipHash(int i)
    {
        while (IsHash(i) || (SignAt(i) == Sign.Name && (Lower(i) is "no" or "nr" or "out" || LabelWords.SignOf(Lower(i)) == Sign.Output))
            || (SignAt(i) == Sign.Point && SignAt(i - 1) == Sign.Name))
            i++;
        return i;
    }

    /// <summary>"1: 9 V 2: 9 V": a list of outlets that needs no word, when it starts with 1 and goes on to 2.</summary>
    private readonly bool IsListed()
    {
        if (SignAt(0) != Sign.Number || _tokens[0].Value != 1m)
            return false;
        var next = 2m;
        if (SignAt(1) is Sign.Dash or Sign.Tilde or Sign.Dots && SignAt(2) == Sign.Number && SignAt(3) == Sign.Colon)
            next = _tokens[2].Value + 1m;
        else if (SignAt(1) != Sign.Colon)
            return false;
        for (var i = 2; i + 1 < _tokens.Length; i++)
        {
            if (_tokens[i].Sign == Sign.Number && _tokens[i].Value == next && IsBoundary(i)
                && (_tokens[i + 1].Sign == Sign.Colon
                    || (_tokens[i + 1].Sign is Sign.Dash or Sign.Tilde or Sign.Dots && SignAt(i + 3) == Sign.Colon)))
                return true;
        }

        return false;
    }

    /// <summary>Whether a number at <paramref name="i"/> begins something of its own.</summary>
    private readonly bool IsBoundary(int i) =>
        SignAt(i - 1) is not (Sign.Number or Sign.Ids or Sign.Count or Sign.Dash or Sign.Times or Sign.To or Sign.Input or Sign.Mains
            or Sign.Name or Sign.Dots or Sign.Tilde or Sign.Fuse or Sign.Centre or Sign.Diameter or Sign.At or Sign.Between
            or Sign.Or or Sign.Qualifier);

    private readonly bool IsId(int i) =>
        SignAt(i) == Sign.Number && _tokens[i].Length <= 2 && _tokens[i].Value >= 1m && _tokens[i].Value <= HighestId
            && _tokens[i].Value.Scale == 0;

    private readonly bool IsLetter(int i) =>
        i < _tokens.Length && _tokens[i].Length == 1 && _text[_tokens[i].Start] is >= 'A' and <= 'H'
            && SignAt(i) is Sign.Word or Sign.Filler
        && SignAt(i - 1) is not Sign.Number;

    /// <summary>Whether numbers, with lists and ranges, run on to a unit: they are a figure then.</summary>
    private readonly bool IsFigureAt(int i, out char unit)
    {
        for (var most = i + Reach; i < most && SignAt(i) == Sign.Number; i += 2)
        {
            unit = SignAt(i + 1);
            if (Sign.IsUnit(unit))
                return true;
            if (unit is not (Sign.Dash or Sign.Dots or Sign.Tilde or Sign.To or Sign.Slash or Sign.Or or Sign.Comma))
                return false;
        }

        unit = '\0';
        return false;
    }

    /// <summary>Marks the ids of a list that starts here, if a list of ids it is.</summary>
    /// <param name="start">Where the first id would be.</param>
    /// <param name="isTold">Whether a word for output stands before it.</param>
    private bool TryIds(int start, bool isTold)
    {
        if (isTold && TryGlued(start))
            return true;
        if (!IsId(start) && !(isTold && IsLetter(start)))
            return false;
        if (IsId(start) && IsFigureAt(start, out _) && !IsNamedBeforeDash(start, isTold))
            return false;

        var letters = IsLetter(start);
        var first = IdOf(start);
        var last = first;
        var end = start + 1;
        for (var count = 1; count < MostIds; count++)
        {
            var joiner = SignAt(end);
            if (joiner is not (Sign.Dash or Sign.Tilde or Sign.Dots or Sign.To or Sign.Slash or Sign.Comma or Sign.And or Sign.Or
                or Sign.Plus))
                break;
            var next = SkipHash(end + 1);
            if (!(letters ? IsLetter(next) : IsId(next)) || IdOf(next) <= last || (!letters && IsFigureAt(next, out _)))
                break;
            if (joiner is Sign.Slash && IdOf(next) != last + 1m)
                break;
            if (joiner is Sign.Dash or Sign.Tilde or Sign.Dots or Sign.To && IdOf(next) - last >= PrintedOutlets.Most)
                break;
            last = IdOf(next);
            end = next + 1;
        }

        if (!IsFollowed(start, end, isTold, letters))
            return false;
        for (var i = start; i < end; i++)
        {
            // "1~4": from one to the other, and nothing alternates.
            if (_tokens[i].Sign == Sign.Tilde)
                _tokens[i].Sign = Sign.Dash;
            if (_tokens[i].Sign == Sign.Number || (letters && _tokens[i].Length == 1 && char.IsAsciiLetter(_text[_tokens[i].Start])))
                _tokens[i].Sign = Sign.Ids;
        }

        _last = last;
        _lettered = letters;
        return true;
    }

    /// <summary>"3,4:" after outlet 2.</summary>
    private readonly bool GoesOn(int i)
    {
        var text = _text[_tokens[i].Start.._tokens[i].End];
        var comma = text.IndexOf(',');
        return SignAt(i + 1) == Sign.Colon && comma is 1 or 2
            && int.TryParse(text[..comma], NumberStyles.None, CultureInfo.InvariantCulture, out var first)
            && first == _last + 1m;
    }

    /// <summary>"1,3:" or "1,2,4 9 V": a list without spaces, lexed as one number.</summary>
    private bool TryGlued(int i)
    {
        if (SignAt(i) is not (Sign.Number or Sign.Identifier) || _tokens[i].Length > 3 * MostIds)
            return false;
        var last = 0;
        var count = 0;
        var text = _text[_tokens[i].Start.._tokens[i].End];
        foreach (var part in text.Split(','))
        {
            if (text[part].Length is < 1 or > 2 || !int.TryParse(text[part], NumberStyles.None, CultureInfo.InvariantCulture, out var id)
                || id <= last)
                return false;
            last = id;
            count++;
        }

        var figure = SignAt(i + 1) == Sign.Colon ? i + 2 : i + 1;
        if (count < 2 || !IsFigureAt(figure, out var unit) || unit != Sign.Volt)
            return false;
        _tokens[i].Sign = Sign.Ids;
        _last = last;
        return true;
    }

    private readonly decimal IdOf(int i) => _tokens[i].Sign == Sign.Number ? _tokens[i].Value : _text[_tokens[i].Start] - 'A' + 1m;

    /// <summary>Whether what follows a list of ids bears out that it is one: a colon, or a voltage.</summary>
    private readonly bool IsFollowed(int start, int end, bool isTold, bool letters)
    {
        var single = end == start + 1;
        var next = IdOf(start) == _last + 1m;
        if (SignAt(end) == Sign.Colon)
            return isTold || IdOf(start) > _last;
        if (SignAt(end) == Sign.Dash && isTold && single)
            return IsNamedBeforeDash(start, isTold);
        if (!isTold && !next)
            return false;

        // "OUTPUT 9 12 V" may be two voltages.
        if (isTold && single && !letters && !next && _tokens[start].Value is 9m or 12m or 15m or 18m or 24m && SignAt(end) == Sign.Number)
            return false;
        for (var i = end; i < end + 4; i++)
        {
            if (SignAt(i) == Sign.Number)
                return IsFigureAt(i, out var unit) && unit == Sign.Volt;
            if (SignAt(i) == Sign.Output && isTold)
                return true;
            if (SignAt(i) is not (Sign.Direct or Sign.Alternating or Sign.Open or Sign.NewLine or Sign.Equal or Sign.Tilde or Sign.Isolated
                or Sign.Each or Sign.Point) || i >= _tokens.Length)
                return false;
        }

        return false;
    }

    /// <summary>"OUTPUT 1 - 9 V, OUTPUT 2 - 12 V": the number is a name and the dash no range, when the outputs count on.</summary>
    private readonly bool IsNamedBeforeDash(int i, bool isTold)
    {
        if (!isTold || SignAt(i + 1) != Sign.Dash || !_tokens[i + 1].Spaced || i + 2 >= _tokens.Length || !_tokens[i + 2].Spaced
            || !IsFigureAt(i + 2, out var unit) || unit != Sign.Volt)
            return false;
        if (_last > 0m)
            return _tokens[i].Value == _last + 1m;
        for (var j = i + 3; j < _tokens.Length && j < i + (3 * Reach); j++)
        {
            if (_tokens[j].Sign == Sign.Output)
                return IsId(j + 1) && _tokens[j + 1].Value == _tokens[i].Value + 1m && SignAt(j + 2) == Sign.Dash;
        }

        return false;
    }
}
