namespace Loadmark.Planning.Problem;

/// <summary>One voltage that an outlet can be set to.</summary>
/// <param name="Volts">The voltage.</param>
/// <param name="Limit">The most current there, in amps; null when nothing tells.</param>
/// <param name="OpenVolts">The voltage with nothing drawn, where it differs; null otherwise.</param>
/// <param name="IsOpenAssumed">Whether <paramref name="OpenVolts"/> is only an assumption, on which no rule refuses.</param>
internal sealed record Setting(Volts Volts, decimal? Limit, Volts? OpenVolts, bool IsOpenAssumed)
{
    /// <summary>The voltage, or that with nothing drawn where it is known and higher.</summary>
    public Volts Highest => IsOpenAssumed || OpenVolts is not { } open ? Volts : Volts.Max(Volts, open);
}
