namespace Loadmark.Planning.Problem;

/// <summary>
/// A limit that a feed's loads must keep together. In millionths of a watt at the outlet's own voltage rather than in
/// amps: a label that prints watts then gives whole numbers, and two loads of 3 W are exactly the 6 W that a limit bears.
/// </summary>
internal sealed class SourceLimit
{
    /// <summary>Scales a limit.</summary>
    /// <param name="volts">The outlet's voltage.</param>
    /// <param name="amps">The limit.</param>
    /// <param name="headroom">The share of it that is to stay free.</param>
    /// <param name="surge">What it bears for a moment, in amps; null when not stated.</param>
    /// <param name="surgeDuration">How long it bears that; null when not stated.</param>
    public SourceLimit(Volts volts, decimal amps, decimal headroom, decimal? surge, Seconds? surgeDuration)
    {
        Scale = new DrawScale(volts, surge is null ? null : surgeDuration);
        Most = MicroUnits.Limit(amps * Scale.Factor);
        Usable = MicroUnits.Limit(amps * (1 - headroom) * Scale.Factor);
        Peak = surge is { } bears ? Math.Max(Most, MicroUnits.Limit(bears * Scale.Factor)) : Most;
    }

    /// <summary>How draws are counted against the limit.</summary>
    public DrawScale Scale { get; }

    /// <summary>The limit itself, in whole units, rounded to the safe side.</summary>
    public long Most { get; }

    /// <summary>The limit less the headroom.</summary>
    public long Usable { get; }

    /// <summary>What the limit bears while loads start; the limit itself where no surge is stated.</summary>
    public long Peak { get; }

    /// <summary>Whether the limit bears a load alone that is fed <paramref name="fed"/>.</summary>
    public bool Bears(LoadGroup load, Volts fed) =>
        Scale.RunOf(load, fed) <= Most && Scale.StartOf(load, fed) <= Peak && Scale.AfterSurgeOf(load, fed) <= Most;

    /// <summary>Whether a load alone leaves less free than the headroom.</summary>
    public bool IsThin(LoadGroup load, Volts fed) => Scale.RunOf(load, fed) > Usable;
}
