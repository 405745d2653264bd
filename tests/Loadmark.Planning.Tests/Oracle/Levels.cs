using Loadmark.Core.Checks;
using Loadmark.Core.Fits;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Tests.Oracle;

/// <summary>The levels of the objective, measured again from what the rules say; nothing of it is the planner's.</summary>
internal static class Levels
{
    /// <summary>The place of the loads moved, where they count.</summary>
    public const int Moves = 4;

    /// <summary>The levels with the loads among them that are wired in one rig and otherwise, or not, in the other.</summary>
    public static decimal[] WithMoves(decimal[] levels, Rig present, Rig planned) =>
        [.. levels[..Moves], planned.EveryLoad.Count(load => IsWired(present, load.Id) && !IsKept(present, planned, load.Id)), .. levels[Moves..]];

    /// <summary>Whether a feed that is not pinned has a load.</summary>
    public static bool IsWired(Rig rig, string load) =>
        rig.Wired!.Value.Items.Any(feed => feed.To.Items.Contains(load)) && !rig.Wired!.Value.Items.Any(feed => feed.Pinned && feed.To.Items.Contains(load));

    private static bool IsKept(Rig present, Rig planned, string load)
    {
        var (before, after) = (HowFed(present, load), HowFed(planned, load));
        return before.Count == 1 && after.Count == 1 && before[0] == after[0];
    }

    /// <summary>Each feed of a load in words that are the same where nobody who plugs it in would see a difference.</summary>
    private static List<string> HowFed(Rig rig, string load)
    {
        var wired = WiredRig.Of(rig);
        return [.. rig.Wired!.Value.Items.Where(feed => feed.To.Items.Contains(load)).Select(feed =>
            string.Join(" + ", feed.From.Items.Select(from => $"{from} at {wired.Outlets.Items.Single(outlet => outlet.Rating.Reference == from).Volts}").Order(StringComparer.Ordinal))
            + $" {feed.Joined} over {feed.Lead}")];
    }

    public static decimal[] Of(Rig rig)
    {
        var wired = WiredRig.Of(rig);
        return Of(rig, wired, NameplateCheck.Of(wired));
    }

    public static decimal[] Of(Rig rig, WiredRig wired, CheckResult check)
    {
        var findings = check.Findings.Items;
        var fed = rig.Wired!.Value.Items.Where(feed => IsLive(rig, feed, [])).SelectMany(feed => feed.To.Items).ToHashSet(StringComparer.Ordinal);
        var dark = rig.Loads.Items.Where(load => !fed.Contains(load.Id)).ToList();
        var noise = findings.Where(static finding => finding.Rule == RuleId.SharedReturnDigital || finding.Rule == RuleId.ReturnNotItsOwn).ToList();
        decimal noisyLoads = 0;
        foreach (var group in wired.Returns)
        {
            if (noise.Exists(finding => group.Loads.Any(load => finding.Subjects.Items.Contains(load.Id))))
                noisyLoads += group.Loads.Count;
        }

        var fits = wired.Feeds.Items.SelectMany(static feed => feed.Loads.Select(load => Suitability.Of(FeedPoint.Of(feed), load.Rating))).ToList();
        decimal special = 0;
        decimal sharing = 0;
        decimal capacity = 0;
        foreach (var feed in rig.Wired!.Value)
        {
            var lead = rig.Leads.Items.FirstOrDefault(lead => lead.Id == feed.Lead);
            if (feed.From.Count > 1 || feed.To.Count > 1 || lead is { Type: not LeadType.Straight } or { Plug: not null })
                special++;
            if (feed.To.Count > 1)
                sharing += feed.To.Count;
            foreach (var reference in feed.From)
                capacity += wired.Outlets.Items.Single(outlet => outlet.Rating.Reference == reference).Rating.Modes.Max(mode => Most(mode));
        }

        return
        [
            dark.Count,
            dark.Count(load => load.Priority == 1),
            dark.Count(load => load.Priority is null or 2),
            fits.Count(static fit => fit.IsDoubtful),
            findings.Count(static finding => finding.Rule == RuleId.ThinHeadroom),
            MarginsOf(findings, fits),
            noise.Count,
            noisyLoads,
            special,
            sharing,
            Math.Round(capacity, 5),
        ];
    }

    /// <summary>
    /// What the rules report of voltages a little off and of loose plugs, load by load; plugs that are not known, which they collect in one
    /// finding, and starved loads, which are counted as doubtful, come from the judgement of fit.
    /// </summary>
    private static int MarginsOf(IEnumerable<Finding> findings, List<Suitability> fits) =>
        findings.Count(static finding => finding.Rule == RuleId.VoltageHigh || finding.Rule == RuleId.VoltageLow || finding.Rule == RuleId.PlugLoose)
        - fits.Count(static fit => fit.Level == VoltageFit.Starved) + fits.Count(static fit => !fit.PlugIsKnown);

    /// <summary>Whether the mains stand behind a feed, be it through supplies that feed one another.</summary>
    private static bool IsLive(Rig rig, Feed feed, string[] behind) => feed.From.Items.All(outlet =>
        rig.Supplies.Items.First(supply => supply.Id == outlet.Supply).Label?.Input is null
        || (!behind.Contains(outlet.Supply)
            && rig.Wired!.Value.Items.Any(other => other.To.Items.Contains(outlet.Supply) && IsLive(rig, other, [.. behind, outlet.Supply]))));

    public static int Compare(decimal[] one, decimal[] other)
    {
        for (var place = 0; place < one.Length; place++)
        {
            if (one[place] != other[place])
                return one[place].CompareTo(other[place]);
        }

        return 0;
    }

    private static decimal Most(OutletMode mode) => (mode.Volts is { } volts ? mode.LimitAt(volts.Low) : mode.Limit)?.Value.Value ?? 0;
}
