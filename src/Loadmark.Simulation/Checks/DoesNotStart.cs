using Loadmark.Core.Checks;
using Loadmark.Core.Ratings;
using Loadmark.Simulation.Starting;

namespace Loadmark.Simulation.Checks;

/// <summary>A load never comes up after switch-on, or starts and drops out over and over.</summary>
internal sealed class DoesNotStart : SimulationRule
{
    private const int MostTold = 5;

    /// <inheritdoc/>
    public override string Name => "does-not-start";

    /// <inheritdoc/>
    public override string Source => "Kirchhoff's laws over the first seconds (docs/theory/transient.md); how outlets and loads behave: common practice, no source";

    internal override IEnumerable<Finding> Judge(Evidence evidence, CancellationToken cancellation)
    {
        foreach (var (feed, loads) in evidence.Feeds(load => Fails(evidence, load) && !evidence.IsUnderVoltage(load)))
        {
            if (!evidence.IsOverloaded(feed))
                yield return Report(evidence, feed, loads, cancellation);
        }
    }

    /// <summary>
    /// Whether a load is off at the end, or stays low though there is a steady state in which it would run; where the first
    /// seconds were not computed, or not to the end, whether it is off in the steady state.
    /// </summary>
    private static bool Fails(Evidence evidence, int load)
    {
        var settled = evidence.Settled.Loads[load].State;
        if (evidence.Started is not { StoppedAt: null } started || started.Loads[load] is not { } seen)
            return settled == LoadState.Off;
        return seen.State is LoadState.Off || (seen.State is LoadState.Low && settled == LoadState.Runs);
    }

    private Finding Report(Evidence evidence, WiredFeed feed, List<int> places, CancellationToken cancellation) =>
        evidence.Started is { } started && places.TrueForAll(place => started.Loads[place] is { State: not LoadState.Runs })
            ? Report(evidence, started, feed, places, cancellation)
            : ReportSettled(evidence, feed, places, cancellation);

    /// <summary>What the steady state alone says.</summary>
    private Finding ReportSettled(Evidence evidence, WiredFeed feed, List<int> places, CancellationToken cancellation)
    {
        var names = places.ConvertAll(place => evidence.Circuit.Loads[place].Id);
        var why = places.Select(place => evidence.Settled.Loads[place].Because).OfType<string>().Distinct().ToList();
        return Make(
            [.. names, .. feed.Outlets.Select(static outlet => outlet.Name)],
            $"{Words.List(names)} {Words.Verb(names.Count, "does", "do")} not run.",
            why.Count > 0
                ? string.Join(" ", why)
                : $"{names[0]} drops out below {SiFigures.Volts(evidence.Circuit.Loads[places[0]].StopsBelow)}, and there is no steady state in which it has more",
            Remedy(evidence, feed, places, cancellation));
    }

    private Finding Report(Evidence evidence, SeenStart started, WiredFeed feed, List<int> places, CancellationToken cancellation)
    {
        var loads = places.ConvertAll(place => started.Loads[place]!);
        var names = loads.ConvertAll(static load => load.Load);
        var story = Story(started, feed, names);
        var over = loads.Where(static load => load.Cycles).ToList();
        var what = over.Count > 0
            ? $"{Words.List(names)} {Words.Verb(names.Count, "starts", "start")} and {Words.Verb(names.Count, "drops", "drop")} out over and over"
            : loads.Exists(static load => load.State == LoadState.Low)
                ? $"{Words.List(names)} {Words.Verb(names.Count, "comes", "come")} up only part of the way and {Words.Verb(names.Count, "stays", "stay")} there"
                : $"{Words.List(names)} {Words.Verb(names.Count, "does", "do")} not come up";
        return Make(
            [.. names, .. feed.Outlets.Select(static outlet => outlet.Name)],
            story.Length > 0 ? $"{what}. After switch-on: {story}." : $"{what}.",
            Working(evidence, started, places[0]),
            Remedy(evidence, feed, places, cancellation));
    }

    /// <summary>What leads to the first drop-out, in order.</summary>
    private static string Story(SeenStart started, WiredFeed feed, List<string> names)
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

        return string.Join("; ", told.TakeLast(MostTold).Select(static happening => $"at {Milliseconds(happening.Time)} {happening.Text.TrimEnd('.')}"));
    }

    private static string Working(Evidence evidence, SeenStart started, int place)
    {
        var (load, branch) = (started.Loads[place]!, evidence.Circuit.Loads[place]);
        if (load.LowestVolts is null)
            return $"{load.Load} starts from {SiFigures.Volts(branch.StartsAbove)} and does not get there in {started.Durations[place]}";
        return load.Restarts > 0
            ? $"{load.Load} drops out below {SiFigures.Volts(branch.StopsBelow)}: {load.Restarts} restarts in {started.Durations[place]}"
            : $"{load.Load} drops out below {SiFigures.Volts(branch.StopsBelow)}";
    }

    private static string Remedy(Evidence evidence, WiredFeed feed, List<int> places, CancellationToken cancellation)
    {
        var alone = new FeedAlone(evidence.Circuit.Rig, feed, starts: true);
        var candidates = places.Select(place => evidence.Circuit.Loads[place].Load)
            .Concat(feed.Loads).OrderByDescending(static load => load.Rating.Starting?.Value.Value ?? 0).Distinct();
        string?[] ways =
        [
            LeadRemedies.Wire(alone, cancellation),
            OwnOutlet.Find(evidence.Circuit.Rig, feed, candidates, starts: true, cancellation),
            LimitRemedy.Find(alone, feed, cancellation),
        ];
        return Remedies.Text(ways, $"Nothing on hand mends it: feed {Words.List([.. places.Select(place => evidence.Circuit.Loads[place].Id)])} from a stronger outlet.");
    }

    private static string Milliseconds(Seconds time) => new Seconds(Math.Round(time.Value, 4)).ToString();
}
