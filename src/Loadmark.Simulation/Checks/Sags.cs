using Loadmark.Core.Checks;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Simulation.Settling;

namespace Loadmark.Simulation.Checks;

/// <summary>A load settles under 0.90 of its lowest printed voltage, though the nameplates suit: leads or outlet cost too much.</summary>
internal sealed class Sags : SimulationRule
{
    /// <inheritdoc/>
    public override string Name => "sags";

    /// <inheritdoc/>
    public override string Source => "Ohm's and Kirchhoff's laws; resistivity of copper: IEC 60028; the 10 %: common practice, no source";

    internal override IEnumerable<Finding> Judge(Evidence evidence, CancellationToken cancellation)
    {
        foreach (var (feed, loads) in evidence.Feeds(load => evidence.Settled.Loads[load].State == LoadState.Low && !evidence.IsUnderVoltage(load)))
        {
            if (!evidence.IsOverloaded(feed))
                yield return Report(evidence, feed, loads, cancellation);
        }
    }

    private Finding Report(Evidence evidence, WiredFeed feed, List<int> places, CancellationToken cancellation)
    {
        var loads = places.ConvertAll(place => evidence.Settled.Loads[place]);
        var worst = loads.MinBy(static load => load.Volts!.Value / load.LowestPrinted)!;
        var names = Words.List([.. loads.Select(static load => $"{load.Load} ({Millivolts(load.Volts!.Value)})")]);
        var given = Given(evidence.Settled, feed);
        var (byOutlet, byLead) = (feed.Volts!.Value - given, given - worst.Volts!.Value);
        var lead = feed.Lead is { } listed ? $"the lead {listed.Id}" : "the lead";
        var costs = byLead >= byOutlet
            ? $"{lead} costs {Millivolts(byLead)} of the {Millivolts(byLead + byOutlet)} lost"
            : $"{feed.OutletNames} is down to {Millivolts(given)}, {Millivolts(byOutlet)} of the {Millivolts(byLead + byOutlet)} lost";
        return Make(
            [.. loads.Select(static load => load.Load), .. feed.Outlets.Select(static outlet => outlet.Name), .. feed.Lead is { } named ? [named.Id] : Array.Empty<string>()],
            $"{names} {Words.Verb(loads.Count, "settles", "settle")} more than 10 % under what is printed: {costs}.",
            $"{worst.Load}: {Millivolts(worst.Volts.Value)} < 0.90 × {worst.LowestPrinted} = {worst.LowestPrinted * (1 - VoltageBand.Allowed)}",
            Remedy(evidence, feed, places, cancellation));
    }

    /// <summary>The voltage at the outlets' contacts together.</summary>
    private static Volts Given(SettleResult settled, WiredFeed feed)
    {
        var volts = feed.Outlets.Select(outlet => settled.Outlets[outlet.Index].Volts ?? default);
        return feed.Joined == Joint.Series ? volts.Aggregate(static (sum, next) => sum + next) : volts.Aggregate(Volts.Max);
    }

    private static string Remedy(Evidence evidence, WiredFeed feed, List<int> places, CancellationToken cancellation)
    {
        var alone = new FeedAlone(evidence.Circuit.Rig, feed, starts: false);
        var candidates = places.Select(place => evidence.Circuit.Loads[place].Load)
            .Concat(feed.Loads.OrderByDescending(static load => load.Rating.Running?.Value.Value ?? 0)).Distinct();
        string?[] ways =
        [
            LeadRemedies.Wire(alone, cancellation),
            LeadRemedies.Length(alone, cancellation),
            OwnOutlet.Find(evidence.Circuit.Rig, feed, candidates, starts: false, cancellation),
        ];
        return Remedies.Text(ways, $"No wire and no length mends it, and no outlet is free that does: use a stronger outlet than {feed.OutletNames}, or fewer loads on it.");
    }

    private static string Millivolts(Volts volts) => new Volts(Math.Round(volts.Value, 3)).ToString();
}
