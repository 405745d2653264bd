namespace Loadmark.Simulation.Bounds;

/// <summary>Between which voltages a plug must be found, if the rig is built as drawn and its figures are within their spread.</summary>
/// <param name="Load">The load whose plug it is.</param>
/// <param name="Open">The voltage before any load is plugged in; null where it cannot be computed.</param>
/// <param name="Loaded">
/// The voltage with every load plugged in and running; null where it cannot be computed, or where a load on the same circuit drops out
/// within the spread, so that one pair of ends does not tell it.
/// </param>
public sealed record PlugBounds(string Load, QuantityRange<Volt>? Open, QuantityRange<Volt>? Loaded)
{
    /// <summary>Between which currents the load draws while all runs; null as for <see cref="Loaded"/>.</summary>
    public QuantityRange<Ampere>? Draw { get; init; }
}
