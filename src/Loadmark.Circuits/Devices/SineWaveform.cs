namespace Loadmark.Circuits.Devices;

/// <summary>An offset and a sine from a given time on: offset + amplitude·sin(2π·f·(t − delay)).</summary>
/// <param name="Offset">Mean value, in the unit of its source.</param>
/// <param name="Amplitude">Peak value above the mean.</param>
/// <param name="Hertz">Frequency, over 0 Hz.</param>
/// <param name="DelaySeconds">Start of the sine, s, 0 or more.</param>
public sealed record SineWaveform(double Offset, double Amplitude, double Hertz, double DelaySeconds = 0) : SourceWaveform
{
    internal override IEnumerable<double> Figures => [Offset, Amplitude, Hertz, DelaySeconds];

    internal override bool IsWellFormed => Hertz > 0 && DelaySeconds >= 0;

    /// <summary>A fortieth of a period.</summary>
    public override double LongestStep => 1 / (40 * Hertz);

    /// <inheritdoc/>
    public override double At(double seconds) =>
        seconds <= DelaySeconds ? Offset : Offset + (Amplitude * Math.Sin(2 * Math.PI * Hertz * (seconds - DelaySeconds)));

    /// <inheritdoc/>
    public override double NextCorner(double seconds) => DelaySeconds > seconds ? DelaySeconds : double.PositiveInfinity;
}
