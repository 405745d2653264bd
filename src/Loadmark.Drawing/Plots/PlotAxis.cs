namespace Loadmark.Drawing.Plots;

/// <summary>An axis of a plot: what it is of, and its unit.</summary>
/// <param name="Label">What it measures: "current".</param>
/// <param name="Unit">The axis' unit without prefix: "A"; empty for a plain number.</param>
public sealed record PlotAxis(string Label, string Unit)
{
    /// <summary>Where the axis begins; null for what the data need, zero included.</summary>
    public double? Low { get; init; }

    /// <summary>Where the axis ends; null for what the data need. Above <see cref="Low"/>.</summary>
    public double? High { get; init; }

    /// <summary>Whether the unit takes a prefix: amperes do, a price does not.</summary>
    public bool TakesPrefix { get; init; } = true;

    /// <summary>Whether zero is shown even where no value is near zero.</summary>
    public bool FromZero { get; init; } = true;
}
