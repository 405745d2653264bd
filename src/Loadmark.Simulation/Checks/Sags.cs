using Loadmark.Core.Checks;
using Loadmark.Core.Display;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Settling;

namespace Loadmark.Simulation.Checks;

/// <summary>
/// A load settles under 0.90 of its lowest printed voltage, though the nameplates suit: leads or outlet cost too much. An analog load runs
/// on half of it, with less headroom in its sound.
/// </summary>
internal sealed class Sags : CircuitRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.Sags;

    /// <inheritdoc/>
    public override string Source =>
        "Ohm's and Kirchhoff's laws; resistivity of copper: IEC 60028; the 10 % and the half: common practice, no source";

    /// <inheritdoc/>
    public override void Judge(CircuitCase subject, Report report, CancellationToken cancellation)
    {
        // Loads of one feed that fare differently badly are told apart; what mends the feed is sought once, for all of them.
        var remedies = new Dictionary<WiredFeed, string>();
        foreach (var severity in (ReadOnlySpan<Severity>)[Severity, Severity.Margin])
        {
            foreach (var (feed, loads) in subject.Feeds(load => SeverityOf(subject, load) == severity))
            {
                if (subject.IsOverloaded(feed))
                    continue;
                if (!remedies.TryGetValue(feed, out var remedy))
                    remedies.Add(feed, remedy = subject.SeeksRemedies ? Remedy(subject, feed, loads, cancellation) : "");
                Tell(report, severity, subject, feed, loads, remedy);
            }
        }
    }

    /// <summary>How bad a settled voltage is for a load; good where it is not low, or where the nameplates say as much.</summary>
    private Severity SeverityOf(CircuitCase subject, int load)
    {
        if (subject.Settled.Loads[load] is not { State: LoadState.Low, Volts: { } volts } settled || subject.IsUnderVoltage(load))
            return Severity.Good;
        if (!VoltageBand.IsAnalog(subject.Circuit.Loads[load].Load.Rating))
            return Severity;

        // An analog load that its nameplates starve is not starved again by what any lead costs, though that takes it under the mark.
        var isNew = !subject.IsVoltageLow(load) || volts < subject.Circuit.Loads[load].Feed!.Volts!.Value * (1 - VoltageBand.Allowed);
        if (volts < settled.LowestPrinted * VoltageBand.Starved)
            return isNew ? Severity : Severity.Good;
        return subject.IsVoltageLow(load) ? Severity.Good : Severity.Margin;
    }

    private void Tell(Report report, Severity severity, CircuitCase evidence, WiredFeed feed, List<int> places, string remedy)
    {
        var loads = places.ConvertAll(place => evidence.Settled.Loads[place]);
        var worst = places.MinBy(place => evidence.Settled.Loads[place].Volts!.Value / evidence.Settled.Loads[place].LowestPrinted);
        var (volts, printed) = (evidence.Settled.Loads[worst].Volts!.Value, evidence.Settled.Loads[worst].LowestPrinted);
        var names = Phrases.List([.. loads.Select(static load => $"{load.Load} ({FigureDisplay.Computed(load.Volts!.Value)})")]);
        var given = Given(evidence.Settled, feed);
        var (byOutlet, byLead) = (feed.Volts!.Value - given, given - volts);
        var lead = feed.Lead is { } listed ? $"the lead {listed.Id}" : "the lead";
        var costs = byLead >= byOutlet
            ? $"{lead} costs {FigureDisplay.Computed(byLead)} of the {FigureDisplay.Computed(byLead + byOutlet)} lost"
            : $"{feed.OutletNames} is down to {FigureDisplay.Computed(given)}, {FigureDisplay.Computed(byOutlet)} of the "
                + $"{FigureDisplay.Computed(byLead + byOutlet)} lost";
        var isStarved = severity == Severity.Margin;
        report.Add(
            this,
            severity,
            [
                .. loads.Select(static load => load.Load),
                .. feed.Outlets.Select(static outlet => outlet.Name),
                .. feed.Lead is { } named ? [named.Id] : Array.Empty<string>(),
            ],
            $"{names} {Phrases.Verb(loads.Count, "settles", "settle")} more than 10 % under what is printed: {costs}."
            + (isStarved ? $" {Phrases.Verb(loads.Count, "An analog load runs", "Analog loads run")} on that, "
                + $"with less headroom in {Phrases.Verb(loads.Count, "its", "their")} sound." : ""),
            Working(evidence.Circuit.Loads[worst].Load, volts, printed, isStarved),
            remedy);
    }

    private static string Working(WiredLoad load, Volts volts, Volts printed, bool isStarved)
    {
        var (allowed, half) = (
            $"0.90 × {printed} = {printed * (1 - VoltageBand.Allowed)}", $"0.50 × {printed} = {printed * VoltageBand.Starved}");
        if (isStarved)
            return $"{load.Id}: {half} ≤ {FigureDisplay.Computed(volts)} < {allowed}";
        return $"{load.Id}: {FigureDisplay.Computed(volts)} < {(VoltageBand.IsAnalog(load.Rating) ? half : allowed)}";
    }

    /// <summary>The voltage at the outlets' contacts together.</summary>
    private static Volts Given(SettleResult settled, WiredFeed feed)
    {
        var volts = feed.Outlets.Select(outlet => settled.Outlets[outlet.Index].Volts ?? default);
        return feed.Joined == Joint.Series ? volts.Aggregate(static (sum, next) => sum + next) : volts.Aggregate(Volts.Max);
    }

    private static string Remedy(CircuitCase evidence, WiredFeed feed, List<int> places, CancellationToken cancellation)
    {
        if (evidence.Budget.IsSpent)
            return Remedies.NotSought;
        var alone = new FeedAlone(evidence.Circuit.Rig, feed, starts: false, evidence.Budget);
        var candidates = places.Select(place => evidence.Circuit.Loads[place].Load)
            .Concat(feed.Loads.OrderByDescending(static load => load.Rating.Running?.Value.Value ?? 0)).Distinct();
        var (rig, whole) = (evidence.Circuit.Rig, new WholeCheck(evidence, feed));
        string?[] ways =
        [
            LeadRemedies.Wire(alone, rig, feed, whole, cancellation),
            LeadRemedies.Length(alone, rig, feed, whole, cancellation),
            OwnOutlet.Find(rig, feed, candidates, starts: false, whole, cancellation),
        ];
        return Remedies.Text(
            ways,
            evidence.Budget,
            $"No wire, no length and no free outlet was found that passes the whole check: use a stronger outlet than {feed.OutletNames}, "
            + "or fewer loads on it.");
    }
}
