namespace Loadmark.Core.Gear;

/// <summary>A value together with where it came from. A figure that is not known is null, never zero.</summary>
/// <typeparam name="T">The value's type, usually a quantity.</typeparam>
/// <param name="Value">The value.</param>
/// <param name="Origin">Where it came from.</param>
public readonly record struct Figure<T>(T Value, Origin Origin)
    where T : struct
{
    /// <summary>Whether a default stood in for this figure.</summary>
    public bool IsAssumed => Origin == Origin.Assumed;

    /// <inheritdoc/>
    public override string ToString() => IsAssumed ? $"{Value} (assumed)" : $"{Value}";
}
