using System.Collections.Immutable;

namespace Loadmark.Core.Nameplates.Parsing;

/// <content>The mains input and frequencies.</content>
internal sealed partial class FigureCollector
{
    /// <summary>The mains input in the making; null when none is printed.</summary>
    public FigureGroup? Mains { get; private set; }

    /// <summary>The voltages of the mains input, when several are printed; empty otherwise.</summary>
    public ImmutableArray<QuantityRange<Volt>> MainsChoices { get; private set; } = [];

    /// <summary>Whether the next figure belongs to the mains input, as far as can be told.</summary>
    public bool AtMains => _atMains || (_side is Sign.Input or Sign.Mains && _open < 0 && Mains != null);

    /// <summary>Whether the words so far are about the input and a mains input is known.</summary>
    public bool IsMainsSide => _side is Sign.Input or Sign.Mains && Mains != null;

    /// <summary>Where the label prints a frequency for a mode; null when it does not.</summary>
    public Place? HertzOfMode { get; private set; }

    /// <summary>A frequency was read, or two.</summary>
    public void AddHertz(PrintedFigure hertz)
    {
        // Supplies run at 50, 60 or (aboard) 400 Hz; other frequencies are of a signal or a converter.
        if (hertz.Low < 40m || (hertz.High > 70m && hertz.Low < 360m) || hertz.High > 440m)
        {
            Reject(hertz.Place);
        }
        else if (_open >= 0 && !_atMains)
        {
            if (_groups[_open].Volts == null)
            {
                _waitingHertz = hertz;
                return;
            }

            HertzOfMode ??= hertz.Place;
            for (var i = _open; i < _groups.Count; i++)
                _groups[i].Hertz ??= hertz;
        }
        else if (TakesMains() || _side == Sign.Input)
        {
            Mains ??= new FigureGroup();
            Mains.Hertz = Mains.Hertz is { } before ? Join(before, hertz) : hertz;
            _atMains = true;
        }
        else if (_waitingHertz == null)
        {
            _waitingHertz = hertz;
        }
        else
        {
            Reject(hertz.Place);
        }
    }

    private void AddMainsVolts(ReadOnlySpan<PrintedFigure> volts)
    {
        Mains ??= new FigureGroup();
        var first = Mains.Volts == null;
        foreach (var figure in volts)
            Mains.Volts = Mains.Volts is { } before ? Join(before, figure) : figure;

        // Several voltages in one breath are for a selector; a voltage printed again elsewhere is not.
        MainsChoices = first && volts.Length > 1 ? Choices(volts) : [];
        if (_waitingHertz is { } hertz && Mains.Hertz == null)
        {
            Mains.Hertz = hertz;
            _waitingHertz = null;
        }

        // "0.6 A 100-240 V": the figures before it are the input's as well.
        if (_open >= 0 && _groups[_open].Volts == null && !_groups[_open].AmpsDisputed)
        {
            Absorb(_groups[_open]);
            _groups.RemoveAt(_open);
        }

        _open = -1;
        _atMains = true;
    }

    private static ImmutableArray<QuantityRange<Volt>> Choices(ReadOnlySpan<PrintedFigure> volts)
    {
        var choices = ImmutableArray.CreateBuilder<QuantityRange<Volt>>(volts.Length);
        foreach (var figure in volts)
            choices.Add(figure.As<Volt>());
        return choices.MoveToImmutable();
    }

    private void Absorb(FigureGroup group)
    {
        Mains ??= new FigureGroup();
        Mains.Amps ??= group.Amps;
        Mains.Watts ??= group.Watts;
        Mains.VoltAmps ??= group.VoltAmps;
    }
}
