using System.Collections.Immutable;
using Loadmark.Core.Rigs;
using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Starting;

/// <summary>What a judgement of the first seconds goes by.</summary>
/// <param name="Loads">All loads in the order of the rig; null for one that was not computed because nothing can go wrong with it.</param>
/// <param name="Events">What happened, in order.</param>
/// <param name="StoppedAt">Where the computation did not come to its end, the first time at which it broke off; null where it did.</param>
/// <param name="Durations">For each load how long was computed.</param>
internal sealed record StartUpSummary(
    ImmutableArray<StartedLoad?> Loads, ValueList<StartUpEvent> Events, Seconds? StoppedAt, ImmutableArray<Seconds> Durations)
{
    /// <summary>What a full result says.</summary>
    public static StartUpSummary Of(StartUpResult result) =>
        new(
            [.. result.Loads],
            result.Events,
            result.IsComplete ? null : result.Duration,
            [.. result.Loads.Items.Select(_ => result.Duration)]);

    /// <summary>Runs some parts of a circuit and keeps what counts.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="parts">The parts, by their place.</param>
    /// <param name="cancellation">Stops it.</param>
    public static StartUpSummary Of(RigCircuit circuit, IReadOnlyList<int> parts, CancellationToken cancellation)
    {
        var loads = new StartedLoad?[circuit.Loads.Length];
        var durations = new Seconds[loads.Length];
        var stories = new List<StartUpStory>();
        Seconds? stoppedAt = null;
        foreach (var part in parts)
        {
            var run = StartUpRun.OfPart(circuit, part);
            StartUpStory? story = null;
            var isComplete = run.Run(_ => story = new StartUpStory(circuit, circuit.Parts[part]), cancellation);
            var reached = SiConversion.Seconds(run.ReachedSeconds);
            if (!isComplete && !(stoppedAt <= reached))
                stoppedAt = reached;
            stories.Add(story!);
            foreach (var load in circuit.Parts[part].Loads)
                (loads[load], durations[load]) = (StartUpReport.Load(run, load), reached);
        }

        return new StartUpSummary(
            [.. loads], InOrder(stories), stoppedAt, [.. durations]);
    }

    private static ValueList<StartUpEvent> InOrder(List<StartUpStory> stories) => stories switch
    {
        [] => [],
        [var only] => [.. only.Events],
        _ => [.. stories.SelectMany(static story => story.Events).OrderBy(static happening => happening.Time.Value)],
    };
}
