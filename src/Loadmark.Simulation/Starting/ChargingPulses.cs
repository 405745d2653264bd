using Loadmark.Core.Rigs;
using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Starting;

/// <summary>
/// Computes the first seconds again with assumed capacitances and resistances at half and at double, where a peak comes of charging.
/// </summary>
internal static class ChargingPulses
{
    private const double Factor = 2;

    /// <summary>Two peaks that differ by less than this share of them are one.</summary>
    private const double SameShare = 0.01;

    /// <summary>
    /// For each outlet of the circuit its range; null where charging does not decide its peak, or nothing that it depends on is assumed.
    /// </summary>
    /// <param name="run">The run with the figures as they are.</param>
    /// <param name="events">What happened in it.</param>
    /// <param name="options">How it was computed.</param>
    /// <param name="cancellation">Stops the computation.</param>
    public static PulseRange?[] Of(StartUpRun run, ValueList<StartUpEvent> events, StartUpOptions options, CancellationToken cancellation)
    {
        var circuit = run.Circuit;
        var ranges = new PulseRange?[circuit.Outlets.Length];
        for (var part = 0; part < circuit.Parts.Length; part++)
        {
            var pulsing = circuit.Parts[part].Outlets.Where(outlet => MayBePulse(run, part, outlet, events)).ToList();
            if (pulsing.Count == 0 || !circuit.Assumed.Any(figure => figure.Part == part))
                continue;
            try
            {
                var (mild, hard) = (
                    Run(circuit, part, 1 / Factor, options, cancellation), Run(circuit, part, Factor, options, cancellation));
                foreach (var outlet in pulsing)
                    ranges[outlet] = Range(circuit, part, outlet, mild, hard);
            }
            finally
            {
                circuit.SetPulse(part, 1);
            }
        }

        return ranges;
    }

    /// <summary>
    /// Whether charging may decide an outlet's peak: it came before any load had started, or is neither at the outlet's limit nor over what
    /// the capacitors would take at double.
    /// </summary>
    private static bool MayBePulse(StartUpRun run, int part, int outlet, ValueList<StartUpEvent> events)
    {
        var (circuit, branch) = (run.Circuit, run.Circuit.Outlets[outlet]);
        var (amps, seconds) = run.OutletPeak(outlet);
        var loads = circuit.Parts[part].Loads.Select(load => circuit.Loads[load]).Where(static load => load.Device is not null).ToList();
        var first = events.Items.FirstOrDefault(
            happening => happening.Kind == StartUpEventKind.Starts && loads.Exists(load => load.Id == happening.Subject));
        if (first is null || seconds < (double)first.Time.Value)
            return amps > 0;

        // As long as nothing limits it, what charges is the capacitance times the slope of the outlet's rise, and less behind a resistance.
        var charging =
            loads.Sum(static load => LoadModel.FaradsOf(load.Load.Rating)) * branch.Volts / CircuitDefaults.SoftStartSeconds.Value;
        return amps < Factor * charging && (branch.Overload is null || amps < circuit.Limit(outlet) * (1 - SameShare));
    }

    private static StartUpRun Run(RigCircuit circuit, int part, double factor, StartUpOptions options, CancellationToken cancellation)
    {
        circuit.SetPulse(part, factor);
        var run = StartUpRun.OfPart(circuit, part, options);
        run.Run(cancellation);
        return run;
    }

    private static PulseRange? Range(RigCircuit circuit, int part, int outlet, StartUpRun mild, StartUpRun hard)
    {
        var (least, most) = (mild.OutletPeak(outlet).Amps, hard.OutletPeak(outlet).Amps);
        if (most - least < SameShare * most)
            return null;
        var kinds = circuit.Assumed.Where(figure => figure.Part == part)
            .Select(static figure => figure.IsSource ? "source resistance" : "input capacitance").Distinct();
        return new PulseRange(
            SiConversion.Amps(least) ?? default,
            SiConversion.Amps(most) ?? default,
            SiConversion.Seconds(mild.OutletSecondsOver(outlet)),
            SiConversion.Seconds(hard.OutletSecondsOver(outlet)),
            [.. kinds.Order(StringComparer.Ordinal)]);
    }
}
