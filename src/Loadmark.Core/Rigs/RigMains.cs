namespace Loadmark.Core.Rigs;

/// <summary>The mains where the rig is played.</summary>
/// <param name="Volts">The nominal voltage.</param>
/// <param name="Hertz">The nominal frequency; null when not given.</param>
public sealed record RigMains(Volts Volts, Frequency? Hertz)
{
    /// <inheritdoc/>
    public override string ToString() => Hertz is { } hertz ? $"{Volts} {hertz}" : $"{Volts}";
}
