using Loadmark.Core.Checks;
using Loadmark.Core.Display;
using Loadmark.Core.Ratings;
using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Starting;

namespace Loadmark.Simulation.Checks;

/// <summary>A load never comes up after switch-on, or drops out again after it has started.</summary>
internal sealed class DoesNotStart : CircuitRule
{
    private const int MostTold = 5;

    /// <inheritdoc/>
    public override RuleId Id => RuleId.DoesNotStart;

    /// <inheritdoc/>
    public override string Source =>
        "Kirchhoff's laws over the first seconds (docs/theory/transient.md); how outlets and loads behave: common practice, no source";

    /// <inheritdoc/>
    public override void Judge(CircuitCase subject, Report report, CancellationToken cancellation)
    {
        foreach (var (feed, loads) in subject.Feeds(load => Fails(subject, load) && !subject.IsUnderVoltage(load)))
        {
            if (!subject.IsOverloaded(feed))
                Tell(report, subject, feed, loads, cancellation);
        }
    }

    /// <summary>
    /// Whether a load has started more than once, is off at the end, or stays low though there is a steady state in which it would run;
    /// where the first seconds were not computed, or not to the end, whether it is off in the steady state.
    /// </summary>
    private static bool Fails(CircuitCase evidence, int load)
    {
        var settled = evidence.Settled.Loads[load].State;
        if (evidence.Started is not { StoppedAt: null } started || started.Loads[load] is not { } seen)
            return settled == LoadState.Off;
        return IsSeenFailing(seen) || (seen.State is LoadState.Low && settled == LoadState.Runs);
    }

    private static bool IsSeenFailing(StartedLoad seen) => seen.State is LoadState.Off || seen.Restarts > 0;

    private void Tell(Report report, CircuitCase evidence, WiredFeed feed, List<int> places, CancellationToken cancellation)
    {
        if (evidence.Started is { } started
            && places.TrueForAll(place => started.Loads[place] is { } seen && (seen.State is not LoadState.Runs || IsSeenFailing(seen))))
            TellStarted(report, evidence, started, feed, places, cancellation);
        else
            TellSettled(report, evidence, feed, places, cancellation);
    }

    /// <summary>What the steady state alone says.</summary>
    private void TellSettled(Report report, CircuitCase evidence, WiredFeed feed, List<int> places, CancellationToken cancellation)
    {
        var names = places.ConvertAll(place => evidence.Circuit.Loads[place].Id);
        var why = places.Select(place => evidence.Settled.Loads[place].Because).OfType<string>().Distinct().ToList();
        report.Add(
            this,
            [.. names, .. feed.Outlets.Select(static outlet => outlet.Name)],
            $"{Phrases.List(names)} {Phrases.Verb(names.Count, "does", "do")} not run.",
            why.Count > 0
                ? string.Join(" ", why)
                : $"{names[0]} drops out below {SiConversion.Volts(evidence.Circuit.Loads[places[0]].StopsBelow)}, "
                    + "and there is no steady state in which it has more",
            Remedy(evidence, feed, places, cancellation));
    }

    private void TellStarted(
        Report report, CircuitCase evidence, StartUpSummary started, WiredFeed feed, List<int> places, CancellationToken cancellation)
    {
        var loads = places.ConvertAll(place => started.Loads[place]!);
        var names = loads.ConvertAll(static load => load.Load);
        var story = Story(started, feed, names);
        var over = loads.Where(static load => load.Cycles).ToList();
        var what = over.Count > 0
            ? $"{Phrases.List(names)} {Phrases.Verb(names.Count, "starts", "start")} and {Phrases.Verb(names.Count, "drops", "drop")} out "
                + "over and over"
            : loads.Exists(static load => load.State == LoadState.Off)
                ? $"{Phrases.List(names)} {Phrases.Verb(names.Count, "does", "do")} not come up"
                : loads.Exists(static load => load.State == LoadState.Low)
                    ? $"{Phrases.List(names)} {Phrases.Verb(names.Count, "comes", "come")} up only part of the way and "
                        + $"{Phrases.Verb(names.Count, "stays", "stay")} there"
                    : $"{Phrases.List(names)} {Phrases.Verb(names.Count, "starts", "start")} more than once before "
                        + $"{Phrases.Verb(names.Count, "it stays", "they stay")} on";
        report.Add(
            this,
            [.. names, .. feed.Outlets.Select(static outlet => outlet.Name)],
            story.Length > 0 ? $"{what}. After switch-on: {story}." : $"{what}.",
            Working(evidence, started, places[0]),
            Remedy(evidence, feed, places, cancellation));
    }

    /// <summary>What leads to the first drop-out, in order.</summary>
    private static string Story(StartUpSummary started, WiredFeed feed, List<string> names)
    {
        var told = new List<StartUpEvent>();
        foreach (var happening in started.Events)
        {
            if (!names.Contains(happening.Subject) && !feed.Outlets.Any(outlet => outlet.Name == happening.Subject))
                continue;
            told.Add(happening);
            if (happening.Kind is StartUpEventKind.DropsOut && names.Contains(happening.Subject))
                break;
        }

        return string.Join(
            "; ",
            told.TakeLast(MostTold)
                .Select(static happening => $"at {FigureDisplay.Computed(happening.Time)} {happening.Text.TrimEnd('.')}"));
    }

    private static string Working(CircuitCase evidence, StartUpSummary started, int place)
    {
        var (load, branch) = (started.Loads[place]!, evidence.Circuit.Loads[place]);
        if (load.LowestVolts is null)
            return $"{load.Load} starts from {SiConversion.Volts(branch.StartsAbove)} and does not get there in {started.Durations[place]}";
        return load.Restarts > 0
            ? $"{load.Load} drops out below {SiConversion.Volts(branch.StopsBelow)}: "
                + $"{load.Restarts} {Phrases.Verb(load.Restarts, "restart", "restarts")} in {started.Durations[place]}"
            : $"{load.Load} drops out below {SiConversion.Volts(branch.StopsBelow)}";
    }

    private static string Remedy(CircuitCase evidence, WiredFeed feed, List<int> places, CancellationToken cancellation)
    {
        if (!evidence.SeeksRemedies)
            return "";
        if (evidence.Budget.IsSpent)
            return Remedies.NotSought;
        var alone = new FeedAlone(evidence.Circuit.Rig, feed, starts: true, evidence.Budget);
        var candidates = places.Select(place => evidence.Circuit.Loads[place].Load)
            .Concat(feed.Loads).OrderByDescending(static load => load.Rating.Starting?.Value.Value ?? 0).Distinct();
        var (rig, whole) = (evidence.Circuit.Rig, new WholeCheck(evidence, feed));
        string?[] ways =
        [
            LeadRemedies.Wire(alone, rig, feed, whole, cancellation),
            OwnOutlet.Find(rig, feed, candidates, starts: true, whole, cancellation),
            LimitRemedy.Find(alone, rig, feed, whole, cancellation),
        ];
        return Remedies.Text(
            ways,
            evidence.Budget,
            "Nothing was found that passes the whole check: "
            + $"feed {Phrases.List([.. places.Select(place => evidence.Circuit.Loads[place].Id)])} from a stronger outlet.");
    }
}
