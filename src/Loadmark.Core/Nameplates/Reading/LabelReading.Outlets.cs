using System.Collections.Immutable;
using System.Text;

namespace Loadmark.Core.Nameplates.Reading;

/// <content>Outlets that the label tells apart, the input, isolation and ground.</content>
internal ref partial struct LabelReading
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
                ids.Append(char.IsAsciiLetterOrDigit(_text[token.Start]) ? _text.AsSpan(token.Start, token.Length) : DecimalText.Write(token.Value));
            else if (ids.Length > 0 && token.Sign is not (Sign.Colon or Sign.Point or Sign.Name))
                ids.Append(token.Sign is Sign.Dash or Sign.To ? '-' : ',');
        }

        var names = ids.ToString();
        FlushForms(index);
        if (!_figures.StartOutlets(names, new PrintedOutlets(names, 1, [], default).Names(1).Count(), PlaceOf(tokens)))
            return;
        Understand(tokens);
        _setOff = false;
    }

    private void ReadOutletCount(int index, Span<Token> tokens)
    {
        var trails = tokens[0].Sign == Sign.Times;
        var count = (int)tokens[trails ? 1 : 0].Value;
        var place = PlaceOf(tokens);

        // "9 V 2 x 500 mA", "9 V 100 mA, 8 outputs": the number goes with the voltage before it, where none follows.
        if (trails || (_figures.IsUncounted && !IsBeforeVolts(index)))
        {
            if (_figures.CountOutlets(count, place))
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

    private void ReadIsolation(int index, Span<Token> tokens)
    {
        var phrase = _phrases[index];
        var place = PlaceOf(tokens);
        var isolated = tokens[0].Sign == Sign.Isolated;
        if (!isolated)
        {
            // "common ground", "shared return"
            if (phrase.To >= _tokens.Length || _tokens[phrase.To].Sign is not (Sign.Ground or Sign.Return))
                return;
            place = PlaceOf(_tokens[phrase.From..(phrase.To + 1)]);
            Understand(_tokens[phrase.From..(phrase.To + 1)]);
        }
        else
        {
            // "not isolated", "non-isolated"
            var before = phrase.From - 1;
            if (before >= 0 && _tokens[before].Sign == Sign.Dash)
                before--;
            var denied = before >= 0 && _tokens[before].Sign is Sign.Un or Sign.Not;
            isolated = !denied;
            if (denied)
                place = PlaceOf(_tokens[before..phrase.To]);
            Understand(_tokens[(denied ? before : phrase.From)..phrase.To]);
        }

        if (_figures.Current is { } outlets && !_setOff)
        {
            var marks = outlets.Isolation;
            marks.Add(isolated, place);
            outlets.Isolation = marks;
        }
        else
        {
            _isolation.Add(isolated, place);
        }
    }

    private void ReadGround(Phrase phrase, Span<Token> tokens)
    {
        var signFirst = tokens[0].Sign != Sign.Ground;
        var sign = tokens[signFirst ? 0 : ^1];
        var before = phrase.From > 0 ? _tokens[phrase.From - 1].Sign : Sign.NewLine;

        // "+/- ground" leaves it open, and a lone dash may only part two words.
        if (signFirst && before is Sign.Slash or Sign.Plus or Sign.Dash or Sign.Positive or Sign.Negative or Sign.Or)
            return;
        var next = phrase.To < _tokens.Length ? _tokens[phrase.To] : default;
        if (sign.Sign == Sign.Dash && !(signFirst ? before is Sign.NewLine or Sign.Comma or Sign.Semicolon or Sign.Open : next.Sign is '\0' or Sign.NewLine or Sign.Comma or Sign.Semicolon or Sign.Close))
            return;
        if (!signFirst && next.Sign is Sign.Slash && phrase.To + 1 < _tokens.Length && _tokens[phrase.To + 1].Sign is Sign.Positive or Sign.Negative or Sign.Plus or Sign.Dash)
            return;

        Understand(tokens);
        _ground.Add(sign.Sign is Sign.Positive or Sign.Plus, PlaceOf(tokens));
    }

    /// <summary>What is said at an input is the input's where the label has an output, else the label's own.</summary>
    private void SettleInput()
    {
        if (_figures.Input is not null)
        {
            if (!_inputPolarity.IsEmpty)
                Reject(_inputPolarity.Place);
            return;
        }

        _forms.Add(_inputForms);
        _inputForms = default;
        if (!_inputPolarity.IsEmpty)
            _polarity.Add(_inputPolarity.Negative, _inputPolarity.Positive, _inputPolarity.Place);
    }

    private readonly LowVoltageInput? LowVoltageInput()
    {
        if (_figures.Input is not { } groups)
            return null;
        PrintedFigure? volts = null;
        PrintedFigure? amps = null;
        PrintedFigure? watts = null;
        var place = groups[0].Place;
        var choices = ImmutableArray.CreateBuilder<QuantityRange<Volt>>();
        foreach (var group in groups)
        {
            place = place.Union(group.Place);
            amps = Highest(amps, group.Amps);
            watts = Highest(watts, group.Watts);
            if (group.Volts is not { } printed)
                continue;
            choices.Add(printed.As<Volt>());
            volts = volts is { } before ? new PrintedFigure(Math.Min(before.Low, printed.Low), Math.Max(before.High, printed.High), before.Place) : printed;
        }

        return new LowVoltageInput(volts?.As<Volt>(), amps is { } current ? new Amps(current.High) : null, watts is { } power ? new Watts(power.High) : null, place)
        {
            Form = _inputForms.Field,
            Choices = choices.Count > 1 ? choices.ToImmutable() : [],
        };
    }

    private static PrintedFigure? Highest(PrintedFigure? before, PrintedFigure? figure) =>
        figure is { } printed && (before is not { } other || printed.High > other.High) ? printed : before;

    /// <summary>The outlets with their settings. What all of them say alike is said of the label.</summary>
    private ImmutableArray<PrintedOutlets> Outlets(ref Derivation derived)
    {
        if (!_figures.HasOutlets)
            return [];
        var outlets = new List<OutletGroup>();
        var modes = new List<ImmutableArray<Mode>>();
        for (var i = FigureReading.NoOutlet; i < _figures.Outlets.Count; i++)
        {
            var groups = _figures.Groups.Where(group => group.Outlet == i).ToList();
            var settings = derived.Modes(groups);
            if (settings.IsEmpty)
                continue;
            var place = groups.Select(group => group.Place).Aggregate((left, right) => left.Union(right));

            // Figures beside counted outlets that are not counted are of one more.
            var group = i < 0 ? new OutletGroup { Count = 1, Place = place } : _figures.Outlets[i];
            group.Place = group.Place.Union(place);
            if (group.Forms.IsEmpty && _forms.IsEmpty && groups.Find(one => one.Hertz != null)?.Hertz is { } hertz)
                group.Forms = new FormMarks(Direct: false, Alternating: true, hertz.Place);
            outlets.Add(group);
            modes.Add(settings);
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
            printed.Add(new PrintedOutlets(group.Ids, group.Count, modes[i], group.Place)
            {
                Form = group.Forms.Field,
                Polarity = group.Polarity.Field,
                Isolated = group.Isolation.Field,
            });
        }

        printed.Sort((left, right) => left.Place.Start.CompareTo(right.Place.Start));
        return printed.ToImmutable();
    }

    /// <summary>Moves what the outlets say alike to the label.</summary>
    private void Lift(List<OutletGroup> outlets)
    {
        // Direct current said once is said of all, as long as nothing says otherwise; alternating current is the exception.
        if (outlets.Count == 1 || outlets.TrueForAll(group => !group.Forms.Alternating) || outlets.TrueForAll(group => group.Forms is { Alternating: true, Direct: false }))
        {
            foreach (var group in outlets)
            {
                _forms.Add(group.Forms);
                group.Forms = default;
            }
        }

        // A polarity said of the last outlets alone may be said of all of them. The usual one is taken so; the other is a question.
        var last = outlets[^1];
        var lastOnly = outlets.Count > 1 && _polarity.IsEmpty && outlets.TrueForAll(group => group == last || group.Polarity.IsEmpty);
        if (lastOnly && last.Polarity.Positive)
            _polarity.Add(negative: true, positive: true, last.Polarity.Place);
        else if (lastOnly || outlets.TrueForAll(group => (group.Polarity.Negative, group.Polarity.Positive) == (last.Polarity.Negative, last.Polarity.Positive)))
            LiftPolarity(outlets);

        if (outlets.TrueForAll(group => (group.Isolation.Isolated, group.Isolation.Common) == (last.Isolation.Isolated, last.Isolation.Common)))
            LiftIsolation(outlets);

        // What the label says anyway needs no saying of some.
        foreach (var group in outlets)
        {
            if (Says(group.Forms.Field, _forms.Field))
                group.Forms = default;
            if (Says(group.Polarity.Field, _polarity.Field))
                group.Polarity = default;
            if (Says(group.Isolation.Field, _isolation.Field))
                group.Isolation = default;
        }
    }

    private static bool Says<T>(Field<T> group, Field<T> label)
        where T : struct => group.State == label.State && Equals(group.Value, label.Value);

    private void LiftAll(OutletGroup group)
    {
        _forms.Add(group.Forms);
        LiftPolarity([group]);
        LiftIsolation([group]);
    }

    private void LiftPolarity(List<OutletGroup> outlets)
    {
        foreach (var group in outlets)
        {
            if (!group.Polarity.IsEmpty)
                _polarity.Add(group.Polarity.Negative, group.Polarity.Positive, group.Polarity.Place);
            group.Polarity = default;
        }
    }

    private void LiftIsolation(List<OutletGroup> outlets)
    {
        foreach (var group in outlets)
        {
            if (group.Isolation.Isolated)
                _isolation.Add(isolated: true, group.Isolation.Place);
            if (group.Isolation.Common)
                _isolation.Add(isolated: false, group.Isolation.Place);
            group.Isolation = default;
        }
    }

    /// <summary>What stands unread, where no field says it in words that were understood.</summary>
    private readonly LabelTopics NotUnderstood(Place? rest)
    {
        var topics = rest is null ? Topics.Unread(_tokens, _text) : AllTopics;
        if (_forms.Field.State != FieldState.Absent)
            topics &= ~LabelTopics.Form;
        if (_polarity.Field.State != FieldState.Absent)
            topics &= ~LabelTopics.Polarity;
        if (_plug.State != FieldState.Absent)
            topics &= ~LabelTopics.Plug;
        if (_ground.Field.State != FieldState.Absent)
            topics &= ~LabelTopics.Ground;
        if (_regulation.Field.State != FieldState.Absent)
            topics &= ~LabelTopics.Regulation;
        return topics;
    }

    private const LabelTopics AllTopics = LabelTopics.Form | LabelTopics.Polarity | LabelTopics.Ground | LabelTopics.Plug | LabelTopics.Regulation;
}
