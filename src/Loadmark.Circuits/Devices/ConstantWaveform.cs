namespace Loadmark.Circuits.Devices;

/// <summary>The same value at all times.</summary>
/// <param name="Value">The value, in the unit of its source.</param>
public sealed record ConstantWaveform(double Value) : SourceWaveform
{
    internal override IEnumerable<double> Figures => [Value];

    /// <inheritdoc/>
    public override double At(double seconds) => Value;

    /// <inheritdoc/>
    public override double NextCorner(double seconds) => double.PositiveInfinity;
}
