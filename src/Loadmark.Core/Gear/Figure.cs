namespace Loadmark.Core.Gear;

/// <summary>A value together with where it came from. A figure that is not known is null, never zero.</summary>
/// <typeparam name="T">The value's type, usually a quantity.</typeparam>
/// <param name="Value">The value.</param>
/// <param name="Origin">Where it came from.</param>
public readonly record struct Figure<T>(T Value, Origin Origin)
    where T : struct
{
    /// <summary>Whether something else stood in for this figure: a convention, or a value that only lets a computation go on.</summary>
    public bool IsAssumed => Origin >= Origin.Assumed;

    /// <summary>
    /// Whether the figure may be judged by: it was printed, measured or computed, or a convention of the trade stands for it.
    /// </summary>
    public bool IsKnown => Origin != Origin.Unknown;

    /// <inheritdoc/>
    public override string ToString() => Origin switch
    {
        Origin.Assumed => $"{Value} (assumed)",
        Origin.Unknown => "not known",
        _ => $"{Value}",
    };
}
