using System.Collections.Immutable;
using Loadmark.Core.Gear;

namespace Loadmark.Core.Nameplates;

/// <summary>
/// The low-voltage input of a thing that puts out a low voltage as well: a supply fed from an adaptor, a power bank, a
/// booster. It is never a setting of an outlet. The mains input is <see cref="MainsInput"/>; the one voltage of a load is a mode.
/// </summary>
/// <param name="Volts">The voltage, from the lowest to the highest where several are printed; null when only other figures are.</param>
/// <param name="Amps">The highest input current printed; null when none is.</param>
/// <param name="Watts">The highest input power printed; null when none is.</param>
/// <param name="Place">Where on the label it stands, from its first figure to its last.</param>
public sealed record LowVoltageInput(QuantityRange<Volt>? Volts, Amps? Amps, Watts? Watts, Place Place)
{
    /// <summary>The highest apparent input power printed; null when none is.</summary>
    public VoltAmps? VoltAmps { get; init; }

    /// <summary>Direct or alternating, where printed at the input.</summary>
    public Field<SupplyForm> Form { get; init; }

    /// <summary>
    /// The voltages the input takes one of, when several are printed ("5V⎓3A, 9V⎓2A"); empty when one voltage or one range is.
    /// </summary>
    public ImmutableArray<QuantityRange<Volt>> Choices { get; init; } = [];

    /// <summary>Whether both say the same, at the same place.</summary>
    public bool Equals(LowVoltageInput? other) =>
        other is not null && (Volts, Amps, Watts, VoltAmps, Place) == (other.Volts, other.Amps, other.Watts, other.VoltAmps, other.Place)
        && Form.Equals(other.Form) && Choices.AsSpan().SequenceEqual(other.Choices.AsSpan());

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Volts, Amps, Watts, Place, Choices.Length);
}
