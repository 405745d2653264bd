using Loadmark.Core.Fits;

namespace Loadmark.Planning.LocalSearch;

/// <summary>A feed of a wiring that is being improved.</summary>
internal sealed class LiveFeed(FeedSite site, int ends)
{
    /// <summary>The site that the feed begins at: its outlets, and how they are joined.</summary>
    public FeedSite FeedSite { get; } = site;

    /// <summary>The place of what its lead does to polarity and plug.</summary>
    public int Ends { get; } = ends;

    /// <summary>The kind of the feed's lead.</summary>
    public int Kind { get; set; }

    /// <summary>The places of the loads that the feed has.</summary>
    public List<int> Loads { get; } = new(4);

    /// <summary>The feed's place among the feeds, from 0.</summary>
    public int Place { get; set; }

    /// <summary>What the feed's loads count against each leg's limit.</summary>
    public (long Run, long Start, long After)[] Sums { get; } = new (long, long, long)[site.Legs.Length];

    /// <summary>Findings of margin of its loads.</summary>
    public int Margins { get; set; }

    /// <summary>How many of the feed's loads it is not known to suit, or feeds well under their voltage.</summary>
    public int Doubts { get; set; }

    /// <summary>How many of its loads are wired now, be it elsewhere.</summary>
    public int Wired { get; set; }

    /// <summary>What the feed's loads do to one another on their return.</summary>
    public ReturnOccupancy Occupancy;
}
