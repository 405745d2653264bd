using System.Collections.Frozen;
using Loadmark.Core.Display;
using Loadmark.Core.Rigs;
using Loadmark.Drawing.Diagrams;
using Loadmark.Simulation.Starting;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Web.Views;

/// <summary>The first seconds of a rig, to look at moment by moment.</summary>
public sealed class StartAnswer
{
    private readonly FrozenDictionary<string, Waveform> _series;
    private readonly FrozenDictionary<string, (double Starts, double Stops)> _thresholds;

    /// <summary>Keeps a result with what belongs to it.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="circuit">Its circuit.</param>
    /// <param name="result">Its first seconds.</param>
    public StartAnswer(Rig rig, RigCircuit circuit, StartUpResult result)
    {
        ArgumentNullException.ThrowIfNull(circuit);
        ArgumentNullException.ThrowIfNull(result);
        (Rig, Result) = (rig, result);
        _series = result.Waveforms.Series.ToFrozenDictionary(static series => $"{series.Unit} {series.Subject}", StringComparer.Ordinal);
        _thresholds = circuit.Loads.Where(static load => load.Device is not null)
            .ToFrozenDictionary(static load => load.Id, static load => (load.StartsAbove, load.StopsBelow), StringComparer.Ordinal);
    }

    /// <summary>The rig that was started.</summary>
    public Rig Rig { get; }

    /// <summary>What was computed.</summary>
    public StartUpResult Result { get; }

    /// <summary>How long was computed, s.</summary>
    public double Seconds => (double)Result.Duration.Value;

    /// <summary>The current of an outlet over time, A; null where it was not computed.</summary>
    public Waveform? AmpsOf(string outlet) => _series.GetValueOrDefault($"A {outlet}");

    /// <summary>The voltage at a load's jack over time, V; null where it was not computed.</summary>
    public Waveform? VoltsOf(string load) => _series.GetValueOrDefault($"V {load}");

    /// <summary>From which voltage a load starts, and below which it stops, V; null where it is not in the circuit.</summary>
    public (double Starts, double Stops)? ThresholdsOf(string load) => _thresholds.TryGetValue(load, out var found) ? found : null;

    /// <summary>A quantity at a moment: the value before a jump at the jump itself.</summary>
    /// <param name="series">The quantity.</param>
    /// <param name="seconds">When, s after switch-on.</param>
    public double At(Waveform series, double seconds)
    {
        ArgumentNullException.ThrowIfNull(series);
        var times = Result.Waveforms.Seconds;
        if (times.IsEmpty)
            return 0;
        var index = times.AsSpan().BinarySearch(seconds);
        if (index >= 0)
            return series.Values[index];
        var after = ~index;
        if (after == 0)
            return series.Values[0];
        if (after >= times.Length)
            return series.Values[^1];
        var share = (seconds - times[after - 1]) / (times[after] - times[after - 1]);
        return series.Values[after - 1] + (share * (series.Values[after] - series.Values[after - 1]));
    }

    /// <summary>What the diagram shows at a moment.</summary>
    /// <param name="seconds">When, s after switch-on.</param>
    public DiagramValues ReadingsAt(double seconds)
    {
        var outlets = new Dictionary<string, OutletValues>(StringComparer.Ordinal);
        foreach (var outlet in Result.Outlets.Items.Where(static outlet => !outlet.IsFree))
        {
            if (AmpsOf(outlet.Outlet.ToString()) is { } amps)
                outlets[outlet.Outlet.ToString()] = new OutletValues(new Amps(Rounded(At(amps, seconds))));
        }

        var loads = new Dictionary<string, LoadValues>(StringComparer.Ordinal);
        foreach (var load in Result.Loads)
        {
            if (VoltsOf(load.Load) is { } volts)
                loads[load.Load] = new LoadValues(new Volts(Rounded(At(volts, seconds))));
        }

        return new DiagramValues { Outlets = outlets, Loads = loads };
    }

    private static decimal Rounded(double value) => double.IsFinite(value) ? (decimal)Math.Round(value, FigureDisplay.AmpDecimals) : 0;
}
