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
        if (evidence.Started is not { } started)
            yield break;
        foreach (var (feed, loads) in evidence.Feeds(load => Fails(evidence, started, load) && !evidence.IsUnderVoltage(load)))
        {
            if (!evidence.IsOverloaded(feed))
                yield return Report(evidence, started, feed, loads, cancellation);
        }
    }

    /// <summary>Whether a load is off at the end, or stays low though there is a steady state in which it would run.</summary>
    private static bool Fails(Evidence evidence, SeenStart started, int load) =>
        started.Loads[load]?.State is LoadState.Off || (started.Loads[load]?.State is LoadState.Low && evidence.Settled.Loads[load].State == LoadState.Runs);

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
