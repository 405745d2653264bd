namespace Loadmark.Core.Gear;

/// <summary>A current that lasts a while: what a load takes while it starts, or what an outlet bears for a moment.</summary>
/// <param name="Current">The current.</param>
/// <param name="Duration">How long it lasts; null when that is not known.</param>
public readonly record struct TimedCurrent(Amps Current, Seconds? Duration)
{
    /// <inheritdoc/>
    public override string ToString() => Duration is { } duration ? $"{Current} for {duration}" : $"{Current}";
}
