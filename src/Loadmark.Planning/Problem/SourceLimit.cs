namespace Loadmark.Planning.Problem;

/// <summary>
/// A limit that a feed's loads must keep together. In millionths of a watt at the outlet's own voltage rather than in
/// amps: a label that prints watts then gives whole numbers, and two loads of 3 W are exactly the 6 W that a limit bears.
/// </summary>
internal sealed class SourceLimit
{
    private readonly decimal _factor;
    private readonly Seconds? _surgeDuration;

    /// <summary>Scales a limit.</summary>
    /// <param name="volts">The outlet's voltage.</param>
    /// <param name="amps">The limit.</param>
    /// <param name="headroom">The share of it that is to stay free.</param>
    /// <param name="surge">What it bears for a moment, in amps; null when not stated.</param>
    /// <param name="surgeDuration">How long it bears that; null when not stated.</param>
    public SourceLimit(decimal volts, decimal amps, decimal headroom, decimal? surge, Seconds? surgeDuration)
    {
        _factor = volts > 0 ? volts : 1;
        _surgeDuration = surgeDuration;
        Most = MicroUnits.Limit(amps * _factor);
        Usable = MicroUnits.Limit(amps * (1 - headroom) * _factor);
        Peak = surge is { } bears ? Math.Max(Most, MicroUnits.Limit(bears * _factor)) : Most;
    }

    /// <summary>The limit.</summary>
    public long Most { get; }

    /// <summary>The limit less the headroom.</summary>
    public long Usable { get; }

    /// <summary>What it bears while loads start; the limit itself where no surge is stated.</summary>
    public long Peak { get; }

    /// <summary>A load's running draw on this limit.</summary>
    public long RunOf(LoadGroup load) => MicroUnits.Draw(load.Run * _factor);

    /// <summary>A load's starting draw on this limit.</summary>
    public long StartOf(LoadGroup load) => MicroUnits.Draw(load.Start * _factor);

    /// <summary>Whether a load takes longer to start than the surge is borne, so that the sum must keep the limit itself.</summary>
    public bool Outlasts(LoadGroup load) =>
        _surgeDuration is { } bears && load.Start > load.Run && load.Rating.StartDuration is { } takes && takes > bears;

    /// <summary>Whether it bears a load alone.</summary>
    public bool Bears(LoadGroup load) => RunOf(load) <= Most && StartOf(load) <= (Outlasts(load) ? Most : Peak);

    /// <summary>Whether a load alone leaves less free than the headroom.</summary>
    public bool IsThin(LoadGroup load) => RunOf(load) > Usable;
}
