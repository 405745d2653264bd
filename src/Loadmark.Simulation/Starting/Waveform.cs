using System.Collections.Immutable;

namespace Loadmark.Simulation.Starting;

/// <summary>One quantity over time, a value for each moment that was recorded.</summary>
/// <param name="Subject">The load or outlet it is of.</param>
/// <param name="Unit">V or A.</param>
/// <param name="Values">The quantity's values at the times of the waveforms, in that unit.</param>
public sealed record Waveform(string Subject, string Unit, ImmutableArray<double> Values);
