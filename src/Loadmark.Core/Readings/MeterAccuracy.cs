namespace Loadmark.Core.Readings;

/// <summary>
/// How far a meter may be off, as makers of meters state it: a share of the reading, and so many amperes on top (of "counts", their
/// number times the least step of the display).
/// </summary>
/// <param name="Share">The share of the reading, 0 to below 1: 0.01 for 1 %.</param>
/// <param name="Plus">What is added whatever the reading.</param>
public readonly record struct MeterAccuracy(decimal Share, Amps Plus)
{
    /// <summary>The most that a reading may be off, to either side.</summary>
    /// <param name="reading">What the meter showed.</param>
    public Amps Within(Amps reading) => (Share * reading) + Plus;

    /// <inheritdoc/>
    public override string ToString() => Plus == Amps.Zero ? Percent : Share == 0 ? $"{Plus}" : $"{Percent} + {Plus}";

    private string Percent => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Share * 100:0.#####} %");
}
