namespace Loadmark.Core.Nameplates;

/// <summary>The mains input printed on a supply.</summary>
/// <param name="Volts">The voltage range; null when only other input figures are printed.</param>
/// <param name="Hertz">The frequency range; null when not printed.</param>
/// <param name="Amps">The input current; null when not printed.</param>
/// <param name="Watts">The input power; null when not printed.</param>
/// <param name="Place">Where on the label it stands, from its first figure to its last.</param>
public sealed record MainsInput(
    QuantityRange<Volt>? Volts,
    QuantityRange<Hertz>? Hertz,
    Amps? Amps,
    Watts? Watts,
    Place Place);
