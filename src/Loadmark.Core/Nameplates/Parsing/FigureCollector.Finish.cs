namespace Loadmark.Core.Nameplates.Parsing;

/// <content>What only the whole label can tell: the input, repeated and doubtful figures.</content>
internal sealed partial class FigureCollector
{
    /// <summary>How far volts times amps may be from the watts that bear out a doubtful figure; labels round by less.</summary>
    private const decimal Tolerance = 0.05m;

    /// <summary>The low-voltage input's figures, in the order printed; null when the label has none.</summary>
    public List<FigureGroup>? Input { get; private set; }

    /// <summary>A voltage that letters leave in doubt; null when none is.</summary>
    public PrintedFigure? DoubtfulVolts { get; private set; }

    /// <summary>A current that letters leave in doubt; null when none is.</summary>
    public PrintedFigure? DoubtfulAmps { get; private set; }

    /// <summary>A power that letters leave in doubt; null when none is.</summary>
    public PrintedFigure? DoubtfulWatts { get; private set; }

    /// <summary>Decides what only the whole label can tell.</summary>
    public void Finish()
    {
        if (_waitingHertz is { } hertz)
        {
            if (Mains is { Hertz: null })
                Mains.Hertz = hertz;
            else
                Reject(hertz.Place);
        }

        TakeInput();
        DropSideless();

        // "INPUT 0.6 A OUTPUT 12 V 2 A": an input without a voltage beside an output is the mains input.
        for (var i = _groups.Count - 1; i >= 0; i--)
        {
            if (_groups[i] is { Side: Sign.Input, Volts: null, AmpsDisputed: false, WattsDisputed: false } group
                && (Mains != null || _groups.Count > 1))
            {
                Absorb(group);
                _groups.RemoveAt(i);
            }
        }

        DropRepeated();
        DropLonely();

        ResolveDoubts();

        // One power among several modes that all have their current is the supply's total, not a mode's.
        if (_groups.Count > 1 && _groups.TrueForAll(static group => group.Outlet < 0 && (group.Amps != null || group.AmpsDisputed)))
        {
            if (OnlyPlace(static group => group.Watts) is { } total)
            {
                foreach (var group in _groups)
                    group.Watts = null;
                Reject(total);
            }

            if (OnlyPlace(static group => group.VoltAmps) is { } apparent)
            {
                foreach (var group in _groups)
                    group.VoltAmps = null;
                Reject(apparent);
            }
        }

        _groups.RemoveAll(group => group.IsEmpty);
    }

    /// <summary>
    /// Where a label has an output with a voltage, what stands under "input" is the input and no setting of the output. On a
    /// load, which has no output, it is what the load takes.
    /// </summary>
    private void TakeInput()
    {
        if (!_outputUnread && !_groups.Exists(group => group.Outlet >= 0 || group is { Volts: not null, Side: Sign.Output }))
            return;
        if (!_groups.Exists(group => group is { Side: Sign.Input, Volts: not null }))
            return;
        Input = _groups.FindAll(group => group.Side == Sign.Input);
        _groups.RemoveAll(group => group.Side == Sign.Input);
    }

    /// <summary>
    /// "12 V 2 A, OUTPUT 9 V 500 mA": where a word tells the outputs, a voltage before it that no word tells may as well be the input's. It
    /// stays unread.
    /// </summary>
    private void DropSideless()
    {
        var first = _toldOutput ? _groups.FindIndex(static group => group is { Side: Sign.Output, Volts: not null }) : -1;
        for (var i = first - 1; i >= 0; i--)
        {
            if (_groups[i] is not { Side: Sign.NewLine, Outlet: NoOutlet, Volts: { } volts } || IsPutOut(volts))
                continue;
            Reject(_groups[i].Place);
            _groups.RemoveAt(i);
        }
    }

    private bool IsPutOut(PrintedFigure volts) =>
        _groups.Exists(
            group => group.Side == Sign.Output && group.Volts is { } other && other.Low == volts.Low && other.High == volts.High);

    /// <summary>
    /// A figure with letters for digits is taken when the label's other two figures bear it out (V·A = W). Otherwise it is a
    /// candidate where the label says nothing plainer, and unread where it does.
    /// </summary>
    private void ResolveDoubts()
    {
        foreach (var group in _groups)
        {
            var doubts = (group.Volts is { Doubtful: true } ? 1 : 0)
                + (group.Amps is { Doubtful: true } ? 1 : 0)
                + (group.Watts is { Doubtful: true } ? 1 : 0);
            if (doubts == 0)
                continue;
            if (doubts == 1 && group is { Volts: { } volts, Amps: { } amps, Watts: { } watts }
                && Math.Abs((volts.High * amps.High) - watts.High) <= Tolerance * watts.High)
                continue;

            if (group.Watts is { Doubtful: true } power)
            {
                group.Watts = null;
                DoubtfulWatts = Doubt(DoubtfulWatts, power, group.Amps == null);
            }

            if (group.Volts is { Doubtful: true } voltage)
            {
                group.Volts = null;
                DoubtfulVolts = Doubt(DoubtfulVolts, voltage, isNeeded: true);
            }

            if (group.Amps is { Doubtful: true } current)
            {
                group.Amps = null;
                group.AmpsDisputed = true;
                DoubtfulAmps = Doubt(DoubtfulAmps, current, isNeeded: true);
            }
        }
    }

    private PrintedFigure? Doubt(PrintedFigure? before, PrintedFigure figure, bool isNeeded)
    {
        if (before == null && isNeeded)
            return figure;
        Reject(figure.Place);
        return before;
    }

    /// <summary>
    /// "OUTPUT POWER 20 W MAX. INPUT 100-240 V. 9 V": a power apart from every voltage is of no setting. Nor are figures whose voltage
    /// could not be read, where another was.
    /// </summary>
    private void DropLonely()
    {
        if (!_groups.Exists(static group => group.Volts is not null))
            return;
        for (var i = _groups.Count - 1; i >= 0; i--)
        {
            if (_groups[i] is not { Volts: null, Outlet: NoOutlet } group
                || !(group.VoltsLost || group is { Amps: null, AmpsDisputed: false, Watts: not null }))
                continue;
            Reject(_groups[i].Place);
            _groups.RemoveAt(i);
        }
    }

    /// <summary>"9 V battery or 9 V d.c. 45 mA": a bare voltage that is printed again with its current is no mode of its own.</summary>
    private void DropRepeated()
    {
        for (var i = Math.Min(_groups.Count, MostCompared) - 1; i >= 0; i--)
        {
            if (_groups[i] is not
                {
                    Volts: { } volts,
                    Amps: null,
                    AmpsDisputed: false,
                    Watts: null,
                    WattsDisputed: false,
                    VoltAmps: null,
                    Hertz: null,
                })
                continue;
            for (var j = 0; j < _groups.Count && j < MostCompared; j++)
            {
                if (j != i && _groups[j].Outlet == _groups[i].Outlet && _groups[j].Volts is { } other && other.Low == volts.Low
                    && other.High == volts.High)
                {
                    _groups.RemoveAt(i);
                    break;
                }
            }
        }
    }

    /// <summary>Where the one power stands that the modes have; null when there is none or more than one.</summary>
    private Place? OnlyPlace(Func<FigureGroup, PrintedFigure?> power)
    {
        Place? only = null;
        foreach (var group in _groups)
        {
            if (power(group) is not { } watts)
                continue;
            if (only is { } place && place != watts.Place)
                return null;
            only = watts.Place;
        }

        return only;
    }

    private static Field<Quantity<TUnit>> Dispute<TUnit>(Field<Quantity<TUnit>> field, PrintedFigure? before, PrintedFigure next)
        where TUnit : struct, IUnit
    {
        var candidates = new SortedSet<Quantity<TUnit>>(field.Candidates);
        var place = field.State == FieldState.Absent ? next.Place : field.Place.Union(next.Place);
        if (before is { } printed)
        {
            candidates.Add(new(printed.High));
            place = place.Union(printed.Place);
        }

        candidates.Add(new(next.High));
        if (candidates.Count == 1)
            candidates.Add(new(next.Low));
        return Field<Quantity<TUnit>>.Ambiguous([.. candidates], place);
    }
}
