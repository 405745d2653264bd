using System.Collections.Immutable;
using System.Text;

namespace Loadmark.Core.Nameplates.Parsing;

/// <content>Outlets that the label tells apart.</content>
internal ref partial struct LabelParser
{
    /// <summary>"9 V 100 mA per outlet", "each output": the word begins nothing where a figure has been read.</summary>
    private readonly bool IsPerOutlet(int index)
    {
        if (index == 0 || !_figures.AtMode || _phrases[index].To - _phrases[index].From > 1)
            return false;

        // "EACH OUTPUT 9 V" begins what is said of the outputs.
        var next = index + 1;
        while (next < _phrases.Length && _phrases[next].Kind is Sign.Colon or Sign.Direct or Sign.Alternating or Sign.Point)
            next++;
        if (next < _phrases.Length && (_phrases[next].Kind == PhraseKind.Volts || _phrases[index + 1].Kind == Sign.Colon))
            return false;
        var before = _phrases[index - 1];
        return before.Kind == Sign.Each || (before.Kind == Sign.Filler && IsPer(_tokens[before.From]));
    }

    private readonly bool IsPer(Token token) => _text.AsSpan(token.Start, token.Length).Equals("per", StringComparison.OrdinalIgnoreCase);

    private void ReadOutletIds(int index, Span<Token> tokens)
    {
        var ids = new StringBuilder();
        foreach (var token in tokens)
        {
            if (token.Sign == Sign.Ids)
                ids.Append(
                    char.IsAsciiLetterOrDigit(_text[token.Start])
                        ? _text.AsSpan(token.Start, token.Length)
                        : DecimalText.Write(token.Value));
            else if (ids.Length > 0 && token.Sign is not (Sign.Colon or Sign.Point or Sign.Name))
                ids.Append(token.Sign is Sign.Dash or Sign.Tilde or Sign.Dots or Sign.To ? '-' : ',');
        }

        var names = ids.ToString();
        var count = new PrintedOutlets(names, 1, [], default).Names(1).Count();
        if (index > 0 && _phrases[index - 1].Kind == Sign.Open && _figures.IsUncounted)
        {
            if (_figures.CountOutlets(names, count, PlaceOf(tokens)))
                Understand(tokens);
            return;
        }

        FlushForms(index);
        if (!_figures.StartOutlets(names, count, PlaceOf(tokens)))
            return;
        Understand(tokens);
        _setOff = false;
    }

    /// <summary>
    /// "USB output 5 V 1 A, DC output 9 V 2 A": outputs of other names are other outlets, not settings of one. The word straight before is
    /// the name.
    /// </summary>
    private void SplitOutputs(int index)
    {
        var phrase = _phrases[index];
        if (_tokens[phrase.From].Sign != Sign.Output || phrase.To - phrase.From > 1 || !HasVoltsAhead(index))
            return;
        var name = NameBefore(phrase.From);
        if (_figures.HasOutputVolts && name >= 0 && _outputName is { } before && !IsSameWord(before, name))
            _figures.SplitOutputs(PlaceOf(_tokens[phrase.From..phrase.To]));
        _outputName = name;
    }

    /// <summary>"Output 9 V 150 mA. USB: 5 V 2.1 A": where outputs are told, a port with a voltage after its colon is one more.</summary>
    private readonly bool IsPortOutput(int index) =>
        index + 2 < _phrases.Length && _phrases[index + 1].Kind == Sign.Colon && _phrases[index + 2].Kind == PhraseKind.Volts
        && _figures.HasOutputVolts && !_figures.AtInput
        && _text.AsSpan(_tokens[_phrases[index].From].Start, _tokens[_phrases[index].From].Length)
            .Equals("usb", StringComparison.OrdinalIgnoreCase);

    /// <summary>Where the word stands straight before another; −1 when none does.</summary>
    private readonly int NameBefore(int token) =>
        token > 0 && _tokens[token - 1].Sign is Sign.Word or Sign.Foreign or Sign.Direct or Sign.Alternating ? token - 1 : -1;

    private readonly bool IsSameWord(int one, int other) =>
        one >= 0 && _text.AsSpan(_tokens[one].Start, _tokens[one].Length)
            .Equals(_text.AsSpan(_tokens[other].Start, _tokens[other].Length), StringComparison.OrdinalIgnoreCase);

    private void ReadOutletCount(int index, Span<Token> tokens)
    {
        var trails = tokens[0].Sign == Sign.Times;
        var count = (int)tokens[trails ? 1 : 0].Value;
        var place = PlaceOf(tokens);

        // "OUT x8 9 V 100 mA": nothing stands before it that it could count.
        trails &= _figures.AtMode;

        // "9 V 2 x 500 mA", "9 V 100 mA, 8 outputs": the number goes with the voltage before it, where none follows.
        if (trails || (_figures.IsUncounted && !IsBeforeVolts(index)))
        {
            if (_figures.CountOutlets(null, count, place))
                Understand(tokens);
            return;
        }

        FlushForms(index);
        if (!_figures.StartOutlets(null, count, place))
            return;
        Understand(tokens);
        _setOff = false;
    }

    /// <summary>Whether a voltage comes before any other outlets do.</summary>
    private readonly bool IsBeforeVolts(int index)
    {
        for (var i = index + 1; i < _phrases.Length; i++)
        {
            if (_phrases[i].Kind == PhraseKind.Volts)
                return true;
            if (_phrases[i].Kind is PhraseKind.OutletCount or PhraseKind.OutletIds or PhraseKind.Amps or PhraseKind.Watts or Sign.NewLine)
                return false;
        }

        return false;
    }

    /// <summary>A form that does not stand right before the outlets is of the whole label.</summary>
    private void FlushForms(int index)
    {
        if (_waitingForms.IsEmpty || (index > 0 && _phrases[index - 1].Kind is Sign.Direct or Sign.Alternating))
            return;
        _forms.Add(_waitingForms);
        _waitingForms = default;
    }

    /// <summary>The outlets with their settings. What all of them say alike is said of the label.</summary>
    private ImmutableArray<PrintedOutlets> Outlets(ref DerivedFigures derived)
    {
        if (!_figures.HasOutlets)
            return [];
        var outlets = new List<PrintedOutletGroup>();
        var figures = new List<List<FigureGroup>>();
        for (var i = FigureCollector.NoOutlet; i < _figures.Outlets.Count; i++)
        {
            var groups = _figures.Groups.Where(group => group.Outlet == i).ToList();
            if (!groups.Exists(static group => group.IsMode))
                continue;
            var place = groups.Select(group => group.Place).Aggregate((left, right) => left.Union(right));

            // Figures beside counted outlets that are not counted are of one more.
            var group = i < 0 ? new PrintedOutletGroup { Count = 1, Place = place } : _figures.Outlets[i];
            group.Place = group.Place.Union(place);
            if (group.Forms.IsEmpty && _forms.IsEmpty && groups.Find(one => one.Hertz != null)?.Hertz is { } hertz)
                group.Forms = new FormMarks(Direct: false, Alternating: true, hertz.Place);
            outlets.Add(group);
            figures.Add(groups);
        }

        // Outlets that are spoken of without a figure leave the figures that there are to the label.
        if (outlets is [] || (outlets is [{ Ids: null, Count: 1 }] && _figures.Outlets.TrueForAll(group => !outlets.Contains(group))))
        {
            foreach (var group in _figures.Outlets)
                LiftAll(group);
            return [];
        }

        Lift(outlets);
        var printed = ImmutableArray.CreateBuilder<PrintedOutlets>(outlets.Count);
        for (var i = 0; i < outlets.Count; i++)
        {
            var group = outlets[i];
            printed.Add(new PrintedOutlets(
                group.Ids, group.Count, derived.Modes(figures[i], group.Forms.IsEmpty ? _forms.Field : group.Forms.Field), group.Place)
            {
                Form = group.Forms.Field,
                Polarity = group.Polarity.Field,
                Isolated = group.Isolation.Field,
            });
        }

        printed.Sort((left, right) => left.Place.Start.CompareTo(right.Place.Start));
        return printed.ToImmutable();
    }
}
