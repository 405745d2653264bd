using System.Collections.Immutable;

namespace Loadmark.Simulation.Starting;

/// <summary>
/// Voltages and currents over time: evenly spaced, and before and after each event. What repeats is told as it repeats.
/// </summary>
/// <param name="Seconds">The times, s, ascending; equal where something jumps.</param>
/// <param name="Series">What was recorded.</param>
public sealed record Waveforms(ImmutableArray<double> Seconds, ImmutableArray<Waveform> Series);
