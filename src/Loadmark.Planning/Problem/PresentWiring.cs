using System.Diagnostics.CodeAnalysis;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Problem;

/// <summary>How each load is fed now, where a plan is to leave as many as it can as they are.</summary>
internal sealed class PresentWiring
{
    private readonly Dictionary<string, WiredFeed?> _feeds = new(StringComparer.Ordinal);

    private PresentWiring(WiredRig rig)
    {
        foreach (var load in rig.Loads.Items.Where(static load => load.Feeds.Count > 0 && !load.Feeds.Any(static feed => feed.Feed.Pinned)))
            _feeds.Add(load.Id, load.Feeds is [var only] ? only : null);
    }

    /// <summary>Looks a rig's own wiring up; pinned feeds stay in any case, and their loads do not count.</summary>
    /// <param name="rig">The rig.</param>
    /// <exception cref="InvalidRigException">The wiring names a load, outlet or lead that the rig does not have.</exception>
    public static PresentWiring Of(Rig rig) => new(WiredRig.Of(rig));

    /// <summary>Whether a load is wired now.</summary>
    /// <param name="load">The load's tag.</param>
    public bool IsWired(string load) => _feeds.ContainsKey(load);

    /// <summary>The feed that a load is on now.</summary>
    /// <param name="load">The load's tag.</param>
    /// <param name="feed">The feed.</param>
    /// <returns>False where it is on none, or on several: then no plan can leave it as it is.</returns>
    public bool TryFeedOf(string load, [NotNullWhen(true)] out WiredFeed? feed) => _feeds.TryGetValue(load, out feed) && feed is not null;

    /// <summary>Whether a load that is wired now is fed otherwise in a planned wiring, or not at all.</summary>
    /// <param name="load">The load in the planned wiring.</param>
    public bool IsMoved(WiredLoad load) =>
        IsWired(load.Id) && !(TryFeedOf(load.Id, out var before) && load.Feeds is [var after] && IsSame(before, after));

    /// <summary>
    /// Whether two feeds are the same to a load on them: the same outlets at the same voltage, joined in the same way, over the same lead.
    /// What else is on them does not count, nor which of two outlets in series comes first.
    /// </summary>
    /// <param name="one">One feed.</param>
    /// <param name="other">The other, be it of another wiring of the rig.</param>
    public static bool IsSame(WiredFeed one, WiredFeed other) =>
        one.Joined == other.Joined && one.Feed.Lead == other.Feed.Lead && one.Outlets.Length == other.Outlets.Length
        && one.Outlets.All(outlet => other.Outlets.Any(like => IsSame(outlet, like)));

    private static bool IsSame(WiredOutlet one, WiredOutlet other) =>
        one.Rating.Reference == other.Rating.Reference && one.Volts == other.Volts;
}
