using Loadmark.Simulation.Starting;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Spreading;

/// <summary>
/// Asks what becomes of a rig's answer when its figures are not known exactly: draws, outlet voltages and lead lengths are drawn
/// from what they may be, again and again, and each time the circuit is solved (the Monte Carlo method).
/// </summary>
public static class RigSpread
{
    /// <summary>Of the steady state.</summary>
    /// <param name="circuit">The circuit, with the figures of the rig; it is left as it is.</param>
    /// <param name="options">How to sample; null for the usual way.</param>
    /// <param name="cancellation">Ends it: the result is then of what was sampled by that time.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number of samples or of threads is out of range.</exception>
    public static SpreadResult Settle(RigCircuit circuit, SpreadOptions? options = null, CancellationToken cancellation = default) =>
        SpreadSampling.Run(circuit, options ?? new SpreadOptions(), isStartUp: false, static copy => new SettleSampler(copy), cancellation);

    /// <summary>Of the first seconds.</summary>
    /// <param name="circuit">The circuit, with the figures of the rig; it is left as it is.</param>
    /// <param name="options">How to sample; null for the usual way.</param>
    /// <param name="startUp">How to compute each of them; null for the usual way.</param>
    /// <param name="cancellation">Ends it: the result is then of what was sampled by that time.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number of samples or of threads, or the duration, is out of range.</exception>
    public static SpreadResult StartUp(
        RigCircuit circuit, SpreadOptions? options = null, StartUpOptions? startUp = null, CancellationToken cancellation = default) =>
        SpreadSampling.Run(
            circuit, options ?? new SpreadOptions(), isStartUp: true, copy => new StartUpSampler(copy, startUp), cancellation);
}
