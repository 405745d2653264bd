using Loadmark.Core.Fits;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Tests.Oracle.Naive;

/// <summary>One way to feed something: these outlets at these settings over this one lead; which loads is open.</summary>
/// <param name="Outlets">One outlet, or the two that are joined.</param>
/// <param name="Joined">How.</param>
/// <param name="At">The setting of each; null where nothing tells its voltage.</param>
/// <param name="Lead">The listed lead; null for a plain one.</param>
/// <param name="Copy">Which of several such leads, from 0.</param>
internal sealed record NaiveFeed(WiredOutlet[] Outlets, Joint Joined, Volts?[] At, Lead? Lead, int Copy)
{
    /// <summary>The feed that is pinned; null for one that is open.</summary>
    public Feed? Pinned { get; init; }

    /// <summary>The nominal voltage at the plugs; null when nothing tells it.</summary>
    public Volts? Volts => Joined == Joint.Series ? At[0] + At[1] : At[0];

    /// <summary>Whether two or more loads make it a special feed, and even one does.</summary>
    public bool IsSpecial => Joined != Joint.None || Lead is { Type: not LeadType.Straight } or { Plug: not null };

    /// <summary>The limits in amps with their surges, one for each outlet, or one for two in parallel together; null where nothing tells.</summary>
    public IEnumerable<(decimal? Amps, decimal? Surge, decimal? SurgeSeconds)> Limits()
    {
        if (Joined == Joint.Parallel)
        {
            var surge = Outlets[0].Rating.Outlet.Surge;
            yield return (LimitOf(0) * 2, surge?.Current.Value * 2, surge?.Duration?.Value);
            yield break;
        }

        for (var place = 0; place < Outlets.Length; place++)
        {
            var surge = Outlets[place].Rating.Outlet.Surge;
            yield return (LimitOf(place), surge?.Current.Value, surge?.Duration?.Value);
        }
    }

    /// <summary>How it suits a load, as the rules judge it once the load is wired to it.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="load">The load.</param>
    public Suitability FitOf(Rig rig, LoadRating load)
    {
        var wired = WiredRig.Of(rig with { Wired = (ValueList<Feed>)[With([load.Id])] }).Feeds[0];
        return Suitability.Of(FeedPoint.Of(wired), wired.Loads.First(one => one.Id == load.Id).Rating);
    }

    /// <summary>What a load is on its return to others.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="load">The load.</param>
    public Occupant OccupantOf(Rig rig, LoadRating load)
    {
        var wired = WiredRig.Of(rig with { Wired = (ValueList<Feed>)[With([load.Id])] }).Feeds[0];
        return new SignalPath(rig).OccupantOf(wired.Loads.First(one => one.Id == load.Id));
    }

    /// <summary>The feed as the rig file has it.</summary>
    /// <param name="loads">Its loads.</param>
    public Feed With(IEnumerable<string> loads) => Pinned ?? new Feed
    {
        From = [.. Outlets.Select(static outlet => outlet.Rating.Reference)],
        Joined = Joined,
        At = [.. At.OfType<Volts>()],
        Lead = Lead?.Id,
        To = [.. loads],
    };

    private decimal? LimitOf(int place) => At[place] is { } volts
        ? Outlets[place].Rating.ModeAt(volts)?.LimitAt(volts)?.Value.Value
        : Outlets[place].Rating.Modes[0].Limit?.Value.Value;
}
