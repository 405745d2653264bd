namespace Loadmark.Core.Gear;

/// <summary>What a supply or a bank can give in all, in amps or watts as it is printed; either may be null, not both.</summary>
/// <param name="Amps">The most current over all its outlets; null when not printed.</param>
/// <param name="Watts">The most power over all its outlets; null when not printed.</param>
public sealed record SupplyTotal(Amps? Amps, Watts? Watts)
{
    /// <inheritdoc/>
    public override string ToString() => (Amps, Watts) switch
    {
        ({ } amps, { } watts) => $"{amps}, {watts}",
        ({ } amps, null) => $"{amps}",
        _ => $"{Watts}",
    };
}
