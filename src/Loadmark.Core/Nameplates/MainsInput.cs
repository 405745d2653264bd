using System.Collections.Immutable;

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
    Place Place)
{
    /// <summary>The apparent input power; null when not printed.</summary>
    public VoltAmps? VoltAmps { get; init; }

    /// <summary>
    /// The voltages between which a selector or a tap chooses ("115/230 V"), when several are printed; empty when one
    /// voltage or one range is.
    /// </summary>
    public ImmutableArray<QuantityRange<Volt>> Choices { get; init; } = [];

    /// <summary>Whether both say the same, at the same place.</summary>
    public bool Equals(MainsInput? other) =>
        other is not null && (Volts, Hertz, Amps, Watts, VoltAmps, Place) == (
            other.Volts, other.Hertz, other.Amps, other.Watts, other.VoltAmps, other.Place)
        && Choices.AsSpan().SequenceEqual(other.Choices.AsSpan());

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Volts, Hertz, Amps, Watts, Place, Choices.Length);
}
