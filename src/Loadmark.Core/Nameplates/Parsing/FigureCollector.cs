namespace Loadmark.Core.Nameplates.Parsing;

/// <summary>Gathers the figures of a label into modes and the mains input, in the order printed.</summary>
internal sealed partial class FigureCollector
{
    /// <summary>
    /// From this voltage up a figure is mains: the lowest nominal mains voltage is 100 V (IEC 60038, table 1), and no
    /// pedalboard's low voltage comes near.
    /// </summary>
    public const decimal LowestMains = 80m;

    /// <summary>The most modes that are compared with one another; keeps reading linear.</summary>
    private const int MostCompared = 16;

    private readonly List<FigureGroup> _groups = new(2);
    private char _side = Sign.NewLine;
    private bool _atMains;

    /// <summary>Index of the first of the groups that take the next figure; −1 when the next figure opens one.</summary>
    private int _open = -1;
    private PrintedFigure? _waitingHertz;
    private int _beforeBracket = -1;
    private bool _listEnded;
    private char _beforeLimit;
    private List<Place>? _rejected;

    private bool _outputUnread;

    /// <summary>Whether the last voltage printed could not be read.</summary>
    private bool _voltsLost;

    /// <summary>Whether a word for output begins what is said of the outputs.</summary>
    private bool _toldOutput;

    /// <summary>The modes in the making.</summary>
    public IReadOnlyList<FigureGroup> Groups => _groups;

    /// <summary>Whether a mode is open.</summary>
    public bool AtMode => _open >= 0;

    /// <summary>Currents of one mode that nothing tells apart.</summary>
    public Field<Amps> DisputedAmps { get; private set; }

    /// <summary>Powers of one mode that nothing tells apart.</summary>
    public Field<Watts> DisputedWatts { get; private set; }

    /// <summary>Figures that found no place in the reading.</summary>
    public IReadOnlyList<Place> Rejected => _rejected ?? (IReadOnlyList<Place>)[];

    /// <summary>A voltage was read, or several to choose from: all of the mains, or none.</summary>
    public void AddVolts(ReadOnlySpan<PrintedFigure> volts)
    {
        if (IsMains(volts[0]))
        {
            AddMainsVolts(volts);
            return;
        }

        _atMains = _voltsLost = false;
        if (volts.Length > 1)
            _beforeLimit = '\0';
        var list = ListStart();
        _listEnded = false;
        var waiting = _open >= 0 && _groups[_open] is { Volts: null, VoltsLost: false } ? _groups[_open] : null;
        var start = _groups.Count;
        if (waiting != null)
        {
            _groups[_open].Volts = volts[0];
            start = _open;
            volts = volts[1..];
        }

        foreach (var figure in volts)
        {
            if (list >= 0 && HasVolts(list, figure))
                continue;
            _groups.Add(new FigureGroup
            {
                Volts = figure,
                Amps = waiting?.Amps,
                AmpsQualified = waiting?.AmpsQualified ?? false,
                AmpsFirst = waiting?.AmpsFirst ?? false,
                Side = _side,
                Outlet = waiting?.Outlet ?? Outlet,
                WattsFirst = waiting?.WattsFirst ?? false,
                Watts = waiting?.Watts,
                VoltAmps = waiting?.VoltAmps,
            });
        }

        _open = list >= 0 ? list : start;
        if (_waitingHertz is { } hertz)
        {
            _waitingHertz = null;
            AddHertz(hertz);
        }
    }

    /// <summary>A word, a new line or a semicolon: voltages on either side are no list.</summary>
    public void EndList() => _listEnded = true;

    /// <summary>A bracket opens: what stood before it goes on after it.</summary>
    public void OpenBracket() => _beforeBracket = _open;

    /// <summary>A bracket closes: "9 V adaptor (230 V a.c.) 100 mA" is no mains current.</summary>
    public void CloseBracket()
    {
        if (_atMains && _open < 0 && _beforeBracket >= 0 && _beforeBracket < _groups.Count)
        {
            _open = _beforeBracket;
            _atMains = false;
        }

        _beforeBracket = -1;
    }

    /// <summary>
    /// Makes one range of voltages that are said to be limits, or of a range in brackets, and the voltage before them: "9 V
    /// (max 18 V)", "9 V (8-10 V)".
    /// </summary>
    /// <param name="volts">The voltage just read.</param>
    /// <param name="limit">'a' for "max", 'i' for "min", else neither.</param>
    /// <param name="bracketed">Whether a bracket opens right before it.</param>
    /// <returns>Whether it became a part of the voltage before it.</returns>
    public bool TryExtend(PrintedFigure volts, char limit, bool bracketed)
    {
        var before = _open >= 0 && _open == _groups.Count - 1 && !IsMains(volts) ? _groups[_open] : null;
        var limited = _beforeLimit;
        _beforeLimit = before == null || limit is 'a' or 'i' ? limit : '\0';
        if (before is not { Volts: { } printed, Watts: null, VoltAmps: null } || (before.Amps != null && _beforeBracket < 0))
            return false;

        var extends = (limit == 'a' && volts.High > printed.High) || (limit == 'i' && volts.Low < printed.Low)
            || (limited == 'a' && volts.High < printed.High && limit != 'a') || (limited == 'i' && volts.Low > printed.Low && limit != 'i')
            || (bracketed && volts.Low < volts.High && volts.Low <= printed.Low && volts.High >= printed.High);
        if (extends)
            before.Volts = Join(printed, volts);
        return extends;
    }

    /// <summary>
    /// The current just read goes with the voltage that follows, not with the one before: "9-18 V 15 mA @ 9 V / 22 mA @ 18 V".
    /// </summary>
    public void DetachAmps()
    {
        if (_open < 0 || _groups[_open] is not { Volts: not null, Amps: { } amps, AmpsQualified: false } group
            || _groups.FindIndex(_open, one => one.Amps != amps) >= 0)
            return;

        // "9/12/18 V, 500 mA @ 9 V": the current is of none of the list but the one named after it.
        for (var i = _open; i < _groups.Count; i++)
            _groups[i].Amps = null;
        OpenGroup(new FigureGroup { Amps = amps, AmpsFirst = true, Side = group.Side, Outlet = group.Outlet });
    }

    /// <summary>A current was read, or several.</summary>
    public void AddAmps(ReadOnlySpan<PrintedFigure> amps, bool qualified)
    {
        if (TakesMains())
        {
            var mains = Mains ??= new FigureGroup();
            foreach (var figure in amps)
            {
                if (mains.Amps is not { } before || figure.High > before.High)
                    mains.Amps = figure;
            }

            return;
        }

        if (_open >= 0 && _groups[_open] is { AmpsFirst: true } first && (first.Amps != null || first.AmpsDisputed) && !qualified
            && !first.AmpsQualified)
            _open = -1;
        if (_open < 0)
            OpenGroup(new FigureGroup { AmpsFirst = true, Side = _side, Outlet = Outlet, VoltsLost = _voltsLost });

        var pairs = amps.Length > 1 && amps.Length == _groups.Count - _open;
        for (var i = _open; i < _groups.Count; i++)
        {
            if (pairs)
            {
                AddAmps(_groups[i], amps[i - _open], qualified);
                continue;
            }

            foreach (var figure in amps)
                AddAmps(_groups[i], figure, qualified);
        }
    }

    /// <summary>Index of the first of the voltages just read, when nothing but their list has been; −1 otherwise.</summary>
    private int ListStart()
    {
        if (_listEnded || _open < 0)
            return -1;
        for (var i = _open; i < _groups.Count; i++)
        {
            if (_groups[i] is not
                {
                    Volts: not null,
                    Amps: null,
                    AmpsDisputed: false,
                    Watts: null,
                    WattsDisputed: false,
                    VoltAmps: null,
                    Hertz: null,
                })
                return -1;
        }

        return _open;
    }

    private bool HasVolts(int from, PrintedFigure volts)
    {
        for (var i = from; i < _groups.Count; i++)
        {
            if (_groups[i].Volts is { } printed && printed.Low == volts.Low && printed.High == volts.High)
                return true;
        }

        return false;
    }

    private void Reject(Place place) => (_rejected ??= []).Add(place);

    private static PrintedFigure Join(PrintedFigure left, PrintedFigure right) =>
        new(Math.Min(left.Low, right.Low), Math.Max(left.High, right.High), left.Place.Union(right.Place));

    private void OpenGroup(FigureGroup group)
    {
        _open = _groups.Count;
        _groups.Add(group);
    }

    private void AddAmps(FigureGroup group, PrintedFigure amps, bool qualified)
    {
        if (group.Amps is { } one && one.Doubtful != amps.Doubtful)
        {
            // The plainer figure of the two.
            Reject(one.Doubtful ? one.Place : amps.Place);
            group.Amps = one.Doubtful ? amps : one;
        }
        else if (group.Amps is not { } before)
        {
            if (group.AmpsDisputed)
                DisputedAmps = Dispute(DisputedAmps, null, amps);
            else
                group.Amps = amps;
        }
        else if (qualified || group.AmpsQualified)
        {
            group.Amps = Join(before, amps);
        }
        else if (before.Low != amps.Low || before.High != amps.High)
        {
            group.Amps = null;
            group.AmpsDisputed = true;
            DisputedAmps = Dispute(DisputedAmps, before, amps);
        }

        group.AmpsQualified |= qualified;
    }
}
