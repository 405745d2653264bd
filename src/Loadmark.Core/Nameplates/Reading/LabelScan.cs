using Loadmark.Core.Gear;

namespace Loadmark.Core.Nameplates.Reading;

/// <summary>
/// Walks over a label once and picks out what it understands: figures, kinds of current, polarity, plug, and the words
/// that say what is input and what is output. It does not yet say which figure belongs to which.
/// </summary>
internal sealed class LabelScan
{
    private readonly TokenList _tokens;
    private readonly List<Item> _items = new(12);

    private LabelScan(TokenList tokens) => _tokens = tokens;

    /// <summary>What was understood, in the order of the text.</summary>
    public List<Item> Items => _items;

    /// <summary>The polarity so far; more than one candidate when the label contradicts itself.</summary>
    public Field<Polarity> Polarity { get; private set; }

    /// <summary>The plug so far.</summary>
    public Field<Plug> Plug { get; private set; }

    public static LabelScan Of(TokenList tokens, ReadOnlySpan<char> text)
    {
        var scan = new LabelScan(tokens);
        scan.Run(text);
        return scan;
    }

    private void Run(ReadOnlySpan<char> text)
    {
        var index = 0;
        while (index < _tokens.Count)
            index = Step(index, text);
    }

    private int Step(int index, ReadOnlySpan<char> text)
    {
        if (PolarityDrawing.MayStart(text[_tokens[index].Start..]) && TryDrawing(index, text, out var after))
            return after;

        switch (_tokens.Kind(index))
        {
            case TokenKind.Number:
                return Number(index);
            case TokenKind.Word:
                return Word(index);
            case TokenKind.Plus or TokenKind.Dash or TokenKind.Open:
                return TryPolarity(index, out var behind) ? behind : index + 1;
            case TokenKind.Tilde or TokenKind.AlternatingSign:
                return Mark(ItemKind.Alternating, index);
            case TokenKind.DirectSign:
                return Mark(ItemKind.Direct, index);
            case TokenKind.Semicolon:
                return Mark(ItemKind.Break, index);
            default:
                return index + 1;
        }
    }

    private int Number(int index)
    {
        if (PlugScanner.TryRead(_tokens, index, out var to) is { } plug)
        {
            if (PlugScanner.IsPlugWord(_tokens.Meaning(index - 1)))
                _tokens[index - 1].IsTaken = true;
            while (PlugScanner.IsPlugWord(_tokens.Meaning(to)) && !IsPolarityOfBarrel(to))
                to++;
            _tokens.Take(index, to);
            Plug = Merge(Plug, plug, _tokens.Place(index, to));
            return to;
        }

        if (FigureScanner.TryRead(_tokens, index) is { } item)
        {
            _items.Add(item);
            AddForms(item);
            return item.Tokens.To;
        }

        return index + 1;
    }

    /// <summary>"VDC" and "VAC" say the kind of current inside the unit.</summary>
    private void AddForms(Item item)
    {
        if (item.Kind != ItemKind.Volts)
            return;

        for (var index = item.Tokens.From; index < item.Tokens.To; index++)
        {
            var meaning = _tokens.Meaning(index);
            if (meaning is WordMeaning.VoltDirect or WordMeaning.VoltAlternating)
            {
                Mark(meaning == WordMeaning.VoltDirect ? ItemKind.Direct : ItemKind.Alternating, index);
                return;
            }
        }
    }

    private int Word(int index)
    {
        switch (_tokens.Meaning(index))
        {
            case WordMeaning.Direct:
                return Mark(ItemKind.Direct, index);
            case WordMeaning.Alternating:
                return Mark(ItemKind.Alternating, index);
            case WordMeaning.Input when IsOfFigures(index):
                return Mark(ItemKind.Input, index);
            case WordMeaning.Output when IsOfFigures(index):
                return Mark(ItemKind.Output, index);
            case WordMeaning.Centre or WordMeaning.Sleeve or WordMeaning.Barrel or WordMeaning.LetterC or WordMeaning.Negative or WordMeaning.Positive:
                return TryPolarity(index, out var behind) ? behind : index + 1;
            case WordMeaning.Or or WordMeaning.Most or WordMeaning.Typical or WordMeaning.Filler or WordMeaning.Between or WordMeaning.To or WordMeaning.And:
                _tokens[index].IsTaken = _tokens.Kind(index) == TokenKind.Word && IsBesideFigure(index);
                return index + 1;
            default:
                return index + 1;
        }
    }

    /// <summary>"Power 9V" is about the figure, "Power Station" is a name: a filler counts only beside something understood.</summary>
    private bool IsBesideFigure(int index)
    {
        for (var before = index - 1; before >= 0; before--)
        {
            if (_tokens[before].IsTaken)
                return true;
            if (_tokens.Kind(before) is TokenKind.Word or TokenKind.Junk or TokenKind.Number)
                break;
        }

        for (var after = index + 1; after < _tokens.Count; after++)
        {
            if (_tokens.Kind(after) == TokenKind.Number)
                return true;
            if (_tokens.Kind(after) == TokenKind.Junk || (_tokens.Kind(after) == TokenKind.Word && !IsAccompanying(_tokens.Meaning(after))))
                return false;
        }

        return false;
    }

    private static bool IsAccompanying(WordMeaning meaning) => meaning is WordMeaning.Or or WordMeaning.Most or WordMeaning.Typical
        or WordMeaning.Filler or WordMeaning.Between or WordMeaning.To or WordMeaning.Direct or WordMeaning.Alternating or WordMeaning.Input
        or WordMeaning.Output;

    private int Mark(ItemKind kind, int index)
    {
        _tokens[index].IsTaken = true;
        _items.Add(new Item { Kind = kind, Place = _tokens[index].Place, Tokens = (index, index + 1) });
        return index + 1;
    }

    /// <summary>"DC IN 9V" and "OUTPUT: 9V" are about figures, "Made in" is not.</summary>
    private bool IsOfFigures(int index)
    {
        if (index == 0 || _tokens[index - 1].IsTaken || _tokens.Kind(index - 1) is TokenKind.LineEnd or TokenKind.Punctuation or TokenKind.Comma)
            return true;
        var next = index + 1;
        while (_tokens.Kind(next) is TokenKind.Colon or TokenKind.Punctuation or TokenKind.Dash or TokenKind.Open
            || IsAccompanying(_tokens.Meaning(next)))
        {
            next++;
        }

        return _tokens.Kind(next) == TokenKind.Number;
    }

    private bool IsPolarityOfBarrel(int index) =>
        _tokens.Meaning(index) == WordMeaning.Barrel && PolarityScanner.TryRead(_tokens, index, out _) is not null;

    private bool TryPolarity(int index, out int to)
    {
        if (PolarityScanner.TryRead(_tokens, index, out to) is not { } polarity)
            return false;

        _tokens.Take(index, to);
        Polarity = Merge(Polarity, polarity, _tokens.Place(index, to));
        return true;
    }

    private bool TryDrawing(int index, ReadOnlySpan<char> text, out int to)
    {
        to = index;
        var start = _tokens[index].Start;
        var polarity = PolarityDrawing.TryRead(text[start..], out var length);
        if (length == 0)
            return false;

        while (to < _tokens.Count && _tokens[to].Start < start + length)
            to++;
        _tokens.Take(index, to);
        var place = new Place(start, length);
        Polarity = polarity is { } clear
            ? Merge(Polarity, clear, place)
            : Polarity.State == FieldState.Absent
                ? Field<Polarity>.Ambiguous([Gear.Polarity.CentreNegative, Gear.Polarity.CentrePositive], place)
                : Polarity;
        return true;
    }

    /// <summary>What a second mention makes of a field: the same again changes nothing, another value makes it ambiguous.</summary>
    private static Field<T> Merge<T>(Field<T> so, T value, Place place)
        where T : struct =>
        so switch
        {
            { State: FieldState.Absent } => Field<T>.Read(value, place),
            { State: FieldState.Read, Value: { } known } => EqualityComparer<T>.Default.Equals(known, value)
                ? Field<T>.Read(value, so.Place)
                : Field<T>.Ambiguous([known, value], so.Place.Union(place)),
            _ => so,
        };
}
