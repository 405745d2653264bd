namespace Loadmark.Core.Nameplates.Parsing;

/// <content>Outlets that the label tells apart.</content>
internal sealed partial class FigureCollector
{
    /// <summary>The index that stands for no outlets told apart.</summary>
    public const int NoOutlet = -1;

    /// <summary>The most groups of outlets of one label; keeps reading linear.</summary>
    private const int MostOutlets = 64;

    private List<PrintedOutletGroup>? _outlets;

    /// <summary>The outlets told apart, in the order printed.</summary>
    public List<PrintedOutletGroup> Outlets => _outlets ?? [];

    /// <summary>Whether the label tells outlets apart.</summary>
    public bool HasOutlets => _outlets is not null;

    /// <summary>Index of the outlets that the next figure is of; <see cref="NoOutlet"/> when it is of none.</summary>
    public int Outlet { get; private set; } = NoOutlet;

    /// <summary>The outlets that what is read now is of; null when it is of none.</summary>
    public PrintedOutletGroup? Current => Outlet >= 0 ? _outlets![Outlet] : null;

    /// <summary>Outlets begin: the figures that follow are theirs.</summary>
    public bool StartOutlets(string? ids, int count, Place place)
    {
        // The same ids again: one more setting of the same outlets.
        var known = ids is null ? NoOutlet : Outlets.FindIndex(group => group.Ids == ids);
        if (known < 0 && (Outlets.Count >= MostOutlets || count is < 1 or > PrintedOutlets.Most))
            return false;
        if (known < 0)
        {
            known = Outlets.Count;
            (_outlets ??= []).Add(new PrintedOutletGroup { Ids = ids, Count = count, Place = place });
        }

        Outlet = known;
        _side = Sign.Output;
        _atMains = false;
        _open = -1;
        _listEnded = true;
        return true;
    }

    /// <summary>The figures read last are of so many outlets each: "9 V 100 mA x 6", "9 V 100 mA (1-6)".</summary>
    /// <param name="ids">Their ids; null when just a count is printed.</param>
    /// <param name="count">How many.</param>
    /// <param name="place">Where that is printed.</param>
    public bool CountOutlets(string? ids, int count, Place place)
    {
        if (_open < 0 || _groups[_open].Outlet >= 0 || Outlets.Count >= MostOutlets || count is < 1 or > PrintedOutlets.Most)
            return false;
        for (var i = _open; i < _groups.Count; i++)
        {
            _groups[i].Outlet = Outlets.Count;
            _groups[i].Side = Sign.Output;
            place = place.Union(_groups[i].Place);
        }

        (_outlets ??= []).Add(new PrintedOutletGroup { Ids = ids, Count = count, Place = place });
        _listEnded = true;
        return true;
    }

    /// <summary>Whether the output has a voltage already, and no outlets are told apart but by their names.</summary>
    public bool HasOutputVolts =>
        Outlets.TrueForAll(static group => group.IsNamedByWord)
            && _groups.Exists(static group => group is { Side: Sign.Output, Volts: not null });

    /// <summary>An output of another name begins: what was said of the output is of one outlet, what follows of another.</summary>
    /// <param name="place">Where its word stands.</param>
    public void SplitOutputs(Place place)
    {
        if (!HasOutlets)
        {
            foreach (var group in _groups.Where(static group => group.Side == Sign.Output))
            {
                group.Outlet = 0;
                place = group.Place;
            }

            (_outlets ??= []).Add(new PrintedOutletGroup { Ids = null, Count = 1, Place = place, IsNamedByWord = true });
        }

        if (StartOutlets(null, 1, place))
            _outlets![^1].IsNamedByWord = true;
    }

    /// <summary>"3 x 9 V, 1 x 18 V; 100 mA each": a current that is set off from the last outlets is of all that have none.</summary>
    public void SpreadAmps()
    {
        if (_open < 0 || _groups[_open] is not { Outlet: >= 0, Amps: { } amps })
            return;
        foreach (var group in _groups)
        {
            if (group is { Outlet: >= 0, Volts: not null, Amps: null, AmpsDisputed: false })
                group.Amps = amps;
        }
    }

    /// <summary>Whether the figures being read could be counted.</summary>
    public bool IsUncounted => _open >= 0 && _groups[_open] is { Outlet: NoOutlet, Volts: not null, Side: not Sign.Input };
}
