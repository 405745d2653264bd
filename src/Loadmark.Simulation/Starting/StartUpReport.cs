using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Simulation.Figures;

namespace Loadmark.Simulation.Starting;

/// <summary>Writes a start-up down as a result.</summary>
internal static class StartUpReport
{
    /// <summary>What was seen, with quantities.</summary>
    public static StartUpResult Of(StartUpRun run, StartUpRecording recording, StartUpOptions options, CancellationToken cancellation)
    {
        var circuit = run.Circuit;
        var places = Enumerable.Range(0, circuit.Outlets.Length).ToDictionary(place => circuit.Outlets[place].Outlet);
        ValueList<StartedLoad> loads = [.. Enumerable.Range(0, circuit.Loads.Length).Select(place => Load(run, place))];
        var isUnsettled = !run.IsComplete || run.Repeats || loads.Items.Any(static load => load.Cycles);
        var events = recording.Events();
        var pulses = ChargingPulses.Of(run, events, options, cancellation);
        return new StartUpResult
        {
            Rig = circuit.Rig.Rig.Name,
            Duration = SiConversion.Seconds(run.ReachedSeconds),
            IsComplete = run.IsComplete,
            Loads = loads,
            Outlets = [.. circuit.Rig.Outlets.Items.Select(outlet => Outlet(run, outlet, places, pulses))],
            SettledAfter = isUnsettled ? null : SiConversion.Seconds(recording.SettledAfter()),
            Events = events,
            Totals = recording.Totals(),
            Assumptions = [.. circuit.Assumptions],
            Untold = [.. circuit.Untold],
            Waveforms = recording.Waveforms((double)options.Spacing.Value, run.ReachedSeconds),
        };
    }

    /// <summary>What was seen of a load.</summary>
    public static StartedLoad Load(StartUpRun run, int place)
    {
        var branch = run.Circuit.Loads[place];
        return new StartedLoad(
            branch.Id,
            run.LoadRunsAfter(place) is { } after ? SiConversion.Seconds(after) : null,
            run.LoadLowestVolts(place) is { } volts ? SiConversion.Volts(volts) : null,
            run.LoadRestarts(place),
            run.LoadState(place))
        {
            Cycles = run.LoadCycles(place),
            Because = branch.Because,
        };
    }

    private static StartedOutlet Outlet(StartUpRun run, WiredOutlet outlet, Dictionary<WiredOutlet, int> places, PulseRange?[] pulses)
    {
        var limit = outlet.Limit?.Value;
        if (!places.TryGetValue(outlet, out var place))
        {
            var isFree = outlet.Feeds.Count == 0;
            return new StartedOutlet(
                outlet.Rating.Reference, isFree ? default(Amps) : null, null, default)
            { Limit = limit, IsFree = isFree };
        }

        var (amps, seconds) = run.OutletPeak(place);
        return new StartedOutlet(
            outlet.Rating.Reference,
            SiConversion.Amps(amps),
            SiConversion.Seconds(seconds),
            SiConversion.Seconds(run.OutletSecondsOver(place)))
        {
            Limit = limit,
            Pulse = pulses[place],
            SurgeIsSpent = run.SurgeSpent[place],
        };
    }
}
