namespace Loadmark.Core.Rigs;

/// <summary>A conductor's size, by area or by gauge number.</summary>
public readonly record struct Wire
{
    private Wire(SquareMetres area, int? gauge)
    {
        Area = area;
        Gauge = gauge;
    }

    /// <summary>The conductor's cross-section.</summary>
    public SquareMetres Area { get; }

    /// <summary>The American wire gauge number it was given as; null when it was given by area.</summary>
    public int? Gauge { get; }

    /// <summary>A wire of a given cross-section.</summary>
    public static Wire OfArea(SquareMetres area) => new(area, null);

    /// <summary>A wire of an American wire gauge.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The gauge is not one that <see cref="WireGauge"/> takes.</exception>
    public static Wire OfGauge(int gauge) => new(WireGauge.Area(gauge), gauge);

    /// <inheritdoc/>
    public override string ToString() => Gauge is { } gauge ? $"AWG {gauge}" : Area.ToExactString();
}
