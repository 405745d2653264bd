namespace Loadmark.Planning.Problem;

/// <summary>Counts draws in whole millionths of a watt at an outlet's voltage.</summary>
/// <param name="Volts">The outlet's voltage.</param>
/// <param name="SurgeDuration">How long the outlet bears its surge; null when it has none or nothing tells.</param>
internal sealed record DrawScale(Volts Volts, Seconds? SurgeDuration)
{
    /// <summary>By what amps are multiplied.</summary>
    public decimal Factor => Volts.Value > 0 ? Volts.Value : 1;

    /// <summary>A load's running draw when it is fed <paramref name="fed"/>.</summary>
    public long RunOf(LoadGroup load, Volts fed) => MicroUnits.Draw(load.DrawAt(fed).Run * Factor);

    /// <summary>A load's starting draw.</summary>
    public long StartOf(LoadGroup load, Volts fed) => MicroUnits.Draw(load.DrawAt(fed).Start * Factor);

    /// <summary>What a load draws when the surge is over: still its starting draw where it takes longer to start.</summary>
    public long AfterSurgeOf(LoadGroup load, Volts fed)
    {
        var outlasts = SurgeDuration is { } bears && load.Rating.StartDuration is { } takes && takes > bears;
        return outlasts ? StartOf(load, fed) : RunOf(load, fed);
    }
}
