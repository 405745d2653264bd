using Loadmark.Core.Checks;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Decoding;

/// <summary>Measures the levels of the objective on a wired rig, by what the rules say of it.</summary>
internal static class LevelMeter
{
    private static readonly string[] MarginRules = ["voltage-high", "voltage-low", "plug-loose"];

    /// <summary>What a level is called in results.</summary>
    public static string NameOf(Level level) => level switch
    {
        Level.Unfed => "loads not fed",
        Level.UnfedFirst => "loads of priority 1 not fed",
        Level.UnfedSecond => "loads of priority 2 not fed",
        Level.Thin => "limits past their headroom",
        Level.Margins => "other margins",
        Level.Noise => "noise findings",
        Level.NoisyLoads => "loads on noisy returns",
        Level.SpecialLeads => "special leads",
        Level.Sharing => "loads sharing an outlet",
        _ => "capacity tied up in amps",
    };

    /// <summary>A level in the model's whole units as the result has it: amps for the capacity, a count otherwise.</summary>
    public static decimal Scaled(Level level, long amount) => level == Level.Capacity ? amount / 1_000_000m : amount;

    /// <summary>A level of a result in the model's whole units.</summary>
    public static long Units(Level level, decimal amount) => (long)(level == Level.Capacity ? amount * 1_000_000m : amount);

    /// <summary>Measures a level.</summary>
    public static decimal Measure(Level level, WiredRig rig, CheckResult check) => level switch
    {
        Level.Unfed => rig.Loads.Items.Count(load => load.Feeds.Count == 0),
        Level.UnfedFirst => Unfed(rig, 1),
        Level.UnfedSecond => Unfed(rig, 2),
        Level.Thin => check.Findings.Items.Count(finding => finding.Rule == "thin-headroom"),
        Level.Margins => check.Findings.Items.Count(finding => MarginRules.Contains(finding.Rule)),
        Level.Noise => check.Findings.Items.Count(finding => finding.Severity == Severity.Noise),
        Level.NoisyLoads => NoisyLoads(rig, check),
        Level.SpecialLeads => rig.Feeds.Items.Count(IsSpecial),
        Level.Sharing => rig.Feeds.Items.Where(feed => feed.Loads.Length > 1).Sum(feed => feed.Loads.Length),
        _ => rig.Outlets.Items.Where(outlet => outlet.Feeds.Count > 0).Sum(outlet => Scaled(Level.Capacity, MicroUnits.Nearest(Capacity(outlet)))),
    };

    private static int Unfed(WiredRig rig, int priority) =>
        rig.Loads.Items.Count(load => load.Feeds.Count == 0 && LoadGroup.PriorityOf(load.Rating.Load.Priority) == priority);

    private static int NoisyLoads(WiredRig rig, CheckResult check)
    {
        var named = check.Findings.Items.Where(finding => finding.Severity == Severity.Noise)
            .SelectMany(finding => finding.Subjects.Items).ToHashSet(StringComparer.Ordinal);
        return rig.Returns.Items.Where(group => group.Loads.Any(load => named.Contains(load.Id))).Sum(group => group.Loads.Count);
    }

    private static bool IsSpecial(WiredFeed feed) =>
        feed.Joined != Joint.None || feed.Loads.Length > 1 || feed.Lead is { Type: not LeadType.Straight } or { Plug: not null };

    /// <summary>The most amps an outlet could give at any of its settings; zero when nothing tells.</summary>
    private static decimal Capacity(WiredOutlet outlet)
    {
        var most = 0m;
        foreach (var mode in outlet.Rating.Modes)
        {
            var limit = mode.Volts is { } range ? outlet.Rating.ModeAt(range.Low)?.LimitAt(range.Low) : mode.Limit;
            most = Math.Max(most, limit?.Value.Value ?? 0);
        }

        return most;
    }
}
