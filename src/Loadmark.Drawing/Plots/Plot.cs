using System.Collections.Immutable;

namespace Loadmark.Drawing.Plots;

/// <summary>What a plot shows, in the units of its axes without prefix.</summary>
public sealed record Plot
{
    /// <summary>What the plot shows, in a few words.</summary>
    public required string Title { get; init; }

    /// <summary>The axis to the right.</summary>
    public required PlotAxis X { get; init; }

    /// <summary>The axis upwards.</summary>
    public required PlotAxis Y { get; init; }

    /// <summary>The width there is, in px.</summary>
    public double Width { get; init; } = 720;

    /// <summary>The height the plot is to have, in px.</summary>
    public double Height { get; init; } = 300;

    /// <summary>The lines, the most important first: where there is no room for all labels, the last go without.</summary>
    public ImmutableArray<PlotLine> Lines { get; init; } = [];

    /// <summary>Spreads, beneath the lines.</summary>
    public ImmutableArray<PlotBand> Bands { get; init; } = [];

    /// <summary>Levels: a limit, where the headroom begins, a threshold.</summary>
    public ImmutableArray<PlotMark> Marks { get; init; } = [];

    /// <summary>Single points of the plot.</summary>
    public ImmutableArray<PlotSpot> Spots { get; init; } = [];

    /// <summary>Where the cursor stands on the axis to the right; null for none. Labels then say the values there.</summary>
    public double? Cursor { get; init; }
}
