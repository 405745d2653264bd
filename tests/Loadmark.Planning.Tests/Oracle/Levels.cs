using Loadmark.Core.Checks;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Tests.Oracle;

/// <summary>The levels of the objective, measured again from what the rules say; nothing of it is the planner's.</summary>
internal static class Levels
{
    public static decimal[] Of(Rig rig)
    {
        var wired = WiredRig.Of(rig);
        return Of(rig, wired, RigChecker.Check(wired));
    }

    public static decimal[] Of(Rig rig, WiredRig wired, CheckResult check)
    {
        var findings = check.Findings.Items;
        var fed = rig.Wired!.Value.Items.SelectMany(feed => feed.To.Items).ToHashSet(StringComparer.Ordinal);
        var dark = rig.Loads.Items.Where(load => !fed.Contains(load.Id)).ToList();
        var noise = findings.Where(finding => finding.Rule is "shared-return-digital" or "return-not-its-own" or "ground-loop").ToList();
        decimal noisyLoads = 0;
        foreach (var group in wired.Returns)
        {
            if (noise.Exists(finding => group.Loads.Any(load => finding.Subjects.Items.Contains(load.Id))))
                noisyLoads += group.Loads.Count;
        }

        decimal special = 0;
        decimal sharing = 0;
        decimal capacity = 0;
        foreach (var feed in rig.Wired!.Value)
        {
            var lead = rig.Leads.Items.FirstOrDefault(lead => lead.Id == feed.Lead);
            if (feed.From.Count > 1 || feed.To.Count > 1 || (lead is not null && lead.Type != LeadType.Straight))
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
            findings.Count(finding => finding.Rule == "thin-headroom"),
            findings.Count(finding => finding.Rule is "voltage-high" or "voltage-low" or "plug-loose"),
            noise.Count,
            noisyLoads,
            special,
            sharing,
            Math.Round(capacity, 5),
        ];
    }

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
