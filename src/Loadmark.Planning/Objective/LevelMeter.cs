using Loadmark.Core.Checks;
using Loadmark.Core.Fits;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Objective;

/// <summary>Measures the levels of the objective on a wired rig, by what the rules say of it.</summary>
internal static class LevelMeter
{
    /// <summary>What a level is called in results.</summary>
    public static string NameOf(Level level) => level switch
    {
        Level.Unfed => "loads not fed",
        Level.UnfedFirst => "loads of priority 1 not fed",
        Level.UnfedSecond => "loads of priority 2 not fed",
        Level.Doubtful => "loads on what is not known to suit, or under their voltage",
        Level.Moves => "wired loads moved",
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
    /// <param name="level">The level.</param>
    /// <param name="rig">The wired rig.</param>
    /// <param name="check">What the rules say of it.</param>
    /// <param name="inputs">The inputs of supplies that are to be fed before all loads.</param>
    /// <param name="present">The present wiring, of which as little as can be is to be moved; null where that does not count.</param>
    public static decimal Measure(
        Level level, WiredRig rig, CheckResult check, PlannedInputs inputs, PresentWiring? present) => level switch
        {
            Level.Unfed => FedSupplies.Unfed(rig, inputs).Sum(load => inputs.Has(load) ? inputs.Weight : 1),
            Level.UnfedFirst => Unfed(rig, 1),
            Level.UnfedSecond => Unfed(rig, 2),
            Level.Doubtful => Costs(rig).Sum(static cost => cost.Doubts),
            Level.Moves => present is null ? 0 : rig.Loads.Items.Count(present.IsMoved),
            Level.Thin => check.Findings.Items.Count(static finding => finding.Rule == RuleId.ThinHeadroom),
            Level.Margins => Costs(rig).Sum(static cost => cost.Margins),
            Level.Noise => Occupancies(rig).Sum(static occupancy => occupancy.NoiseFindings),
            Level.NoisyLoads => Occupancies(rig).Where(static occupancy => occupancy.NoiseFindings > 0)
                .Sum(static occupancy => occupancy.Count),
            Level.SpecialLeads => rig.Feeds.Items.Count(IsSpecial),
            Level.Sharing => rig.Feeds.Items.Where(feed => feed.Loads.Length > 1).Sum(feed => feed.Loads.Length),
            _ => rig.Outlets.Items.Where(outlet => outlet.Feeds.Count > 0)
                .Sum(outlet => Scaled(Level.Capacity, MicroUnits.Nearest(Capacity(outlet)))),
        };

    private static int Unfed(WiredRig rig, int priority) =>
        FedSupplies.Unfed(rig, PlannedInputs.None).Count(load => LoadGroup.PriorityOf(load.Rating.Load.Priority) == priority);

    /// <summary>What counts by how each load is fed, once for each plug that the load is on.</summary>
    private static IEnumerable<LoadCost> Costs(WiredRig rig)
    {
        foreach (var feed in rig.Feeds)
        {
            var point = FeedPoint.Of(feed);
            foreach (var load in feed.Loads)
                yield return LoadCost.Of(Suitability.Of(point, load.Rating));
        }
    }

    private static IEnumerable<ReturnOccupancy> Occupancies(WiredRig rig)
    {
        var audio = new SignalPath(rig.Rig);
        return rig.Returns.Items.Select(audio.OccupancyOf);
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
