using System.Collections.Immutable;
using Loadmark.Core.Fits;
using Loadmark.Planning.Objective;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.LocalSearch;

/// <summary>
/// What the levels of the objective come to in a wiring that changes. Whatever changes goes first, as it was, and then comes
/// again as it is.
/// </summary>
/// <param name="kinds">The kinds of leads.</param>
/// <param name="loads">Every load, as the group it is of.</param>
internal sealed class LiveLevels(ImmutableArray<LeadKind> kinds, LoadGroup[] loads)
{
    private readonly long[] _levels = new long[Enum.GetValues<Level>().Length];

    /// <summary>What each level comes to.</summary>
    public ReadOnlySpan<long> Values => _levels;

    /// <summary>What a level comes to.</summary>
    public long this[Level level] => _levels[(int)level];

    /// <summary>
    /// How far noisy loads are scattered: the roots of how many are on each noisy return, added up. The fewer returns they
    /// are on, the less it is, and so it shows the way to fewer noisy returns long before one falls quiet.
    /// </summary>
    public double Scatter { get; private set; }

    /// <summary>
    /// How unevenly outlets are filled: the squares of the shares of their limits that run, added up. Of two wirings that leave
    /// the same loads dark, the one with fuller outlets has more room on the others.
    /// </summary>
    public double Fullness { get; private set; }

    /// <summary>A feed comes, or goes.</summary>
    public void Count(LiveFeed feed, int sign)
    {
        var count = feed.Loads.Count;
        if (count == 0)
            return;

        var site = feed.FeedSite;
        for (var place = 0; place < site.Legs.Length; place++)
        {
            if (site.Legs[place].Limit is not { } limit)
                continue;
            var run = feed.Sums[place].Run;
            if (run > limit.Usable)
                _levels[(int)Level.Thin] += sign;
            var share = (double)run / Math.Max(1, limit.Most);
            Fullness += sign * share * share;
        }

        _levels[(int)Level.Doubtful] += sign * feed.Doubts;
        _levels[(int)Level.Margins] += sign * feed.Margins;
        _levels[(int)Level.Capacity] += sign * site.Capacity;
        if (kinds[feed.Kind].IsSpecial)
            _levels[(int)Level.SpecialLeads] += sign;
        if (count > 1)
            _levels[(int)Level.Sharing] += sign * count;
        if (feed.Wired > 0)
            _levels[(int)Level.Moves] += sign * (feed.Wired - AtHome(feed));
        if (site.Return < 0)
            Count(feed.Occupancy, sign);
    }

    /// <summary>The loads of a return come, or go.</summary>
    public void Count(ReturnOccupancy occupancy, int sign)
    {
        var findings = occupancy.NoiseFindings;
        if (findings == 0)
            return;
        _levels[(int)Level.Noise] += sign * findings;
        _levels[(int)Level.NoisyLoads] += sign * occupancy.Count;
        Scatter += sign * Math.Sqrt(occupancy.Count);
    }

    /// <summary>What runs on a total comes, or goes.</summary>
    public void Count(TotalLimit limit, long run, int sign)
    {
        if (!limit.IsOver && run > limit.Usable)
            _levels[(int)Level.Thin] += sign;
    }

    /// <summary>How many loads of a feed are on it now.</summary>
    private int AtHome(LiveFeed feed)
    {
        if (!feed.FeedSite.IsHome)
            return 0;
        var count = 0;
        foreach (var load in feed.Loads)
            count += feed.FeedSite.HomeKindOf(loads[load].Index) == feed.Kind ? 1 : 0;
        return count;
    }

    /// <summary>A load falls dark, or is fed.</summary>
    public void CountDark(LoadGroup load, int sign)
    {
        _levels[(int)Level.Unfed] += sign * load.Darkness;
        if (load.IsWired)
            _levels[(int)Level.Moves] += sign;
        if (load.IsInput)
            return;
        if (load.Priority == 1)
            _levels[(int)Level.UnfedFirst] += sign;
        else if (load.Priority == 2)
            _levels[(int)Level.UnfedSecond] += sign;
    }
}
