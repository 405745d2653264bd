using Loadmark.Core.Gear;

namespace Loadmark.Core.Ratings;

/// <summary>An outlet of a rig with what is asked of it.</summary>
public sealed class WiredOutlet
{
    private List<WiredFeed>? _feeds;

    internal WiredOutlet(OutletRating rating, SupplyRating supply, int index)
    {
        Rating = rating;
        Supply = supply;
        Index = index;
        ReturnGroup = null!;
        Select(rating.Modes[0], rating.Modes[0].Volts?.High, isStated: true);
    }

    /// <summary>What the outlet can give.</summary>
    public OutletRating Rating { get; }

    /// <summary>What the outlet's supply can give in all.</summary>
    public SupplyRating Supply { get; }

    /// <summary>The outlet's place among the rig's outlets, from 0.</summary>
    public int Index { get; }

    /// <summary>The outlet's name: <c>brick/5</c>.</summary>
    public string Name => Rating.Name;

    /// <summary>The mode the outlet is set to; its first when it feeds nothing.</summary>
    public OutletMode Mode { get; private set; }

    /// <summary>The voltage the outlet is set to; null when not known.</summary>
    public Volts? Volts { get; private set; }

    /// <summary>Whether the rig says how the outlet is set, or there is nothing to set.</summary>
    public bool SettingIsStated { get; private set; }

    /// <summary>The most current at that setting; null when nothing tells.</summary>
    public Figure<Amps>? Limit { get; private set; }

    /// <summary>The feeds the outlet is in; more than one is a mistake that a rule reports.</summary>
    public IReadOnlyList<WiredFeed> Feeds => _feeds ?? (IReadOnlyList<WiredFeed>)[];

    /// <summary>The loads whose return is joined with this outlet's.</summary>
    public ReturnGroup ReturnGroup { get; internal set; }

    /// <summary>What the outlet's loads draw when they run: known figures only, see <see cref="DrawIsKnown"/>.</summary>
    public Amps Run { get; private set; }

    /// <summary>What the outlet's loads draw while they start: known figures only.</summary>
    public Amps Start { get; private set; }

    /// <summary>Whether the draw of every load on the outlet is known.</summary>
    public bool DrawIsKnown { get; private set; } = true;

    internal void Select(OutletMode mode, Volts? volts, bool isStated)
    {
        Mode = mode;
        Volts = volts;
        SettingIsStated = isStated;
        Limit = volts is { } setting ? mode.LimitAt(setting) : mode.Limit;
    }

    internal void Add(WiredFeed feed) => (_feeds ??= new List<WiredFeed>(1)).Add(feed);

    internal void Take(Amps run, Amps start, bool isKnown)
    {
        Run += run;
        Start += start;
        DrawIsKnown &= isKnown;
    }
}
