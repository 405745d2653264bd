namespace Loadmark.Core.Nameplates.Parsing;

/// <content>Which side figures are of: what goes in, what comes out, the mains.</content>
internal sealed partial class FigureCollector
{
    /// <summary>Whether the words so far are about an input, mains or not.</summary>
    public bool AtInput => _side == Sign.Input;

    /// <summary>A word for input, output or mains was read.</summary>
    /// <param name="side">Which.</param>
    /// <param name="trails">Whether no voltage follows that the word could be of: "12 V d.c. IN (2 A) OUT 9 V".</param>
    public void StartSide(char side, bool trails)
    {
        if (trails && side != Sign.Mains && _side == Sign.NewLine && _open >= 0 && _groups[_open].Volts is not null)
        {
            for (var i = _open; i < _groups.Count; i++)
                _groups[i].Side = side;
        }

        // "9 V DC IN 300 mA": the current still belongs to the voltage.
        var goesOn = side != Sign.Mains && _side == Sign.NewLine && _open >= 0
            && _groups[_open] is { Volts: not null, Amps: null, AmpsDisputed: false } one && (one.Side == Sign.NewLine || one.Side == side);

        // "8 x 9 V d.c. outputs 100 mA", "9 V 8 outlets 100 mA": so it does within the outlets.
        if (side == Sign.Output && _open >= 0 && _groups[_open] is { Volts: not null, Amps: null, Outlet: >= 0 } group
            && (Outlet < 0 || group.Outlet == Outlet))
            return;
        _toldOutput |= side == Sign.Output && !trails && Outlet < 0;
        _listEnded |= !goesOn;
        _side = side;
        _atMains = _voltsLost = false;

        // "8 OUTPUTS": the word goes with the number before it; any other begins something new.
        if (Outlet >= 0 && (side != Sign.Output || _groups.Exists(one => one.Outlet == Outlet)))
            Outlet = NoOutlet;
        if (!goesOn)
            _open = -1;
    }

    /// <summary>Whether a voltage is of the mains: high, and not said to be put out.</summary>
    public bool IsMains(PrintedFigure volts) => _side != Sign.Output && volts.High >= LowestMains;

    /// <summary>A voltage is printed that could not be read: the figures after it are of no other.</summary>
    public void LoseVolts()
    {
        _open = -1;
        _listEnded = true;
        _voltsLost = true;
    }

    /// <summary>What looks like an output's voltage could not be read.</summary>
    public void NoteUnread() => _outputUnread |= _side == Sign.Output;

    /// <summary>The voltage read last goes into the thing: "fed from 12 V adaptor".</summary>
    public void MarkInput()
    {
        if (_open >= 0 && _groups[_open].Side == Sign.NewLine)
            _groups[_open].Side = Sign.Input;
    }

    private bool TakesMains() => _open < 0 && (_atMains || _side == Sign.Mains || (_side == Sign.Input && Mains != null));
}
