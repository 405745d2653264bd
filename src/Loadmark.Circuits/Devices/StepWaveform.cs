namespace Loadmark.Circuits.Devices;

/// <summary>One value before an instant, another from then on.</summary>
/// <param name="Before">Value before, in the unit of its source.</param>
/// <param name="After">Value from the instant on.</param>
/// <param name="Seconds">The instant, s.</param>
public sealed record StepWaveform(double Before, double After, double Seconds) : SourceWaveform
{
    internal override IEnumerable<double> Figures => [Before, After, Seconds];

    /// <inheritdoc/>
    public override double At(double seconds) => seconds >= Seconds ? After : Before;

    /// <inheritdoc/>
    public override double NextCorner(double seconds) => Seconds > seconds ? Seconds : double.PositiveInfinity;
}
