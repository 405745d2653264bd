using System.Collections.Immutable;

namespace Loadmark.Core.Nameplates.Parsing;

/// <content>The low-voltage input, and the side that figures are of.</content>
internal ref partial struct LabelParser
{
    /// <summary>
    /// "12 V d.c. IN 9 V d.c. OUT": voltages come first, each with its word after it, the last word with none. One voltage alone
    /// beside the names of two sockets is no such label.
    /// </summary>
    private readonly bool SidesFollow()
    {
        var volts = 0;
        var inputs = 0;
        var outputs = 0;
        foreach (var phrase in _phrases)
        {
            switch (phrase.Kind)
            {
                case PhraseKind.Volts:
                    volts++;
                    break;
                case PhraseKind.OutletIds or PhraseKind.OutletCount:
                    return false;
                case PhraseKind.Side when phrase.To - phrase.From > 1 || _tokens[phrase.From].Sign == Sign.Mains
                    || volts != inputs + outputs + 1:
                    return false;
                case PhraseKind.Side when _tokens[phrase.From].Sign == Sign.Input:
                    inputs++;
                    break;
                case PhraseKind.Side:
                    outputs++;
                    break;
                default:
                    break;
            }
        }

        return inputs > 0 && outputs > 0 && volts == inputs + outputs;
    }

    /// <summary>Starts the side whose word comes after the voltage at hand.</summary>
    private readonly void StartSideAfter(int index)
    {
        while (_phrases[index].Kind != PhraseKind.Side)
            index++;
        _figures.StartSide(_tokens[_phrases[index].From].Sign, trails: false);
    }

    /// <summary>Whether a voltage follows a word for a side before the next such word does.</summary>
    private readonly bool HasVoltsAhead(int index)
    {
        for (var i = index + 1;
            i < _phrases.Length
            && _phrases[i].Kind is not (PhraseKind.Side or Sign.Arrow or PhraseKind.OutletIds or PhraseKind.OutletCount);
            i++)
        {
            if (_phrases[i].Kind == PhraseKind.Volts)
                return true;
        }

        return false;
    }

    /// <summary>What is said at an input is the input's where the label has an output, else the label's own.</summary>
    private void ResolveInput()
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
        PrintedFigure? voltAmps = null;
        var place = groups[0].Place;
        var choices = ImmutableArray.CreateBuilder<QuantityRange<Volt>>();
        foreach (var group in groups)
        {
            place = place.Union(group.Place);
            amps = Highest(amps, group.Amps);
            watts = Highest(watts, group.Watts);
            voltAmps = Highest(voltAmps, group.VoltAmps);
            if (group.Volts is not { } printed)
                continue;
            choices.Add(printed.As<Volt>());
            volts = volts is { } before
                ? new PrintedFigure(Math.Min(before.Low, printed.Low), Math.Max(before.High, printed.High), before.Place)
                : printed;
        }

        return new LowVoltageInput(
            volts?.As<Volt>(),
            amps is { } current ? new Amps(current.High) : null,
            watts is { } power ? new Watts(power.High) : null,
            place)
        {
            VoltAmps = voltAmps is { } apparent ? new VoltAmps(apparent.High) : null,
            Form = _inputForms.Field,
            Choices = choices.Count > 1 ? choices.ToImmutable() : [],
        };
    }

    private static PrintedFigure? Highest(PrintedFigure? before, PrintedFigure? figure) =>
        figure is { } printed && (before is not { } other || printed.High > other.High) ? printed : before;
}
