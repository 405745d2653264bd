using System.Collections.Immutable;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Drawing.Diagrams;

/// <summary>A feed with the loads that stand beside it.</summary>
/// <param name="Feed">The feed.</param>
/// <param name="Here">The feed's loads that have no other place, in the order of the plugs.</param>
/// <param name="Elsewhere">The feed's loads that stand beside a feed before it: fed twice, a mistake that a rule reports.</param>
internal sealed record FeedRows(WiredFeed Feed, ImmutableArray<WiredLoad> Here, ImmutableArray<WiredLoad> Elsewhere)
{
    /// <summary>Whether the feed's lead goes up and down past the rows of others.</summary>
    public bool Wanders => Feed.Outlets.Length > 1 || Elsewhere.Length > 0;

    /// <summary>Whether there is a word to say on the feed's lead.</summary>
    public bool HasLabel => Feed.Lead is not null || Feed.Joined != Joint.None;

    /// <summary>Whether the feed's lead has several plugs along the wire.</summary>
    public bool IsChain => Feed.Lead is { Type: LeadType.DaisyChain };

    /// <summary>How many of the feed's lead's plugs hang free; 0 when nothing tells.</summary>
    public int FreePlugs => IsChain && Feed.Lead!.Plugs is { } plugs ? Math.Max(0, plugs - Feed.Loads.Length) : 0;
}
