namespace Loadmark.Core.Ratings;

/// <summary>A load of a rig with the feeds it is on.</summary>
public sealed class WiredLoad
{
    private List<WiredFeed>? _feeds;

    internal WiredLoad(LoadRating rating, int index, bool isFedSupply)
    {
        Rating = rating;
        Index = index;
        IsFedSupply = isFedSupply;
    }

    /// <summary>What the load needs.</summary>
    public LoadRating Rating { get; private set; }

    /// <summary>The load's place among the rig's loads, from 0.</summary>
    public int Index { get; }

    /// <summary>The load's tag.</summary>
    public string Id => Rating.Id;

    /// <summary>Whether the load is the input of one of the rig's supplies, fed by another.</summary>
    public bool IsFedSupply { get; }

    /// <summary>The feeds the load is on; none or more than one is a mistake that a rule reports.</summary>
    public IReadOnlyList<WiredFeed> Feeds => _feeds ?? (IReadOnlyList<WiredFeed>)[];

    /// <summary>Rates it again at the voltage it is fed, where its draw depends on it.</summary>
    internal void RateAt(Volts fed)
    {
        if (Rating.FollowsVoltage)
            Rating = LoadRating.Of(Rating.Load, fed);
    }

    internal void Add(WiredFeed feed) => (_feeds ??= new List<WiredFeed>(1)).Add(feed);
}
