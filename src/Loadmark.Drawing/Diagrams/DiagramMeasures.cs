namespace Loadmark.Drawing.Diagrams;

/// <summary>The columns of a diagram of some width.</summary>
internal sealed record DiagramMeasures
{
    public const double Margin = 14;
    public const double LinePitch = 13;
    public const double RailPitch = 5;

    public required double Width { get; init; }

    public required bool IsNarrow { get; init; }

    /// <summary>The mains' line.</summary>
    public required double BusX { get; init; }

    public required double SupplyX { get; init; }

    public required double SupplyWidth { get; init; }

    /// <summary>Where what an outlet has from its supply begins: the supply's edge, or a line down from it.</summary>
    public required double StubX { get; init; }

    /// <summary>The first line of shared returns; others are <see cref="RailPitch"/> to the left.</summary>
    public required double RailX { get; init; }

    public required double OutletX { get; init; }

    public required double OutletWidth { get; init; }

    /// <summary>Where leads that wander go up and down.</summary>
    public required double TrackX { get; init; }

    public required double TrackWidth { get; init; }

    /// <summary>Where a chain's pitches and forks go down.</summary>
    public required double TrunkX { get; init; }

    public required double LoadX { get; init; }

    public required double LoadWidth { get; init; }

    public required int OutletLines { get; init; }

    public required int LoadLines { get; init; }

    public double OutletRow => RowOf(OutletLines);

    public double LoadRow => RowOf(LoadLines);

    /// <summary>A row of a wide diagram, where an outlet and a load stand side by side.</summary>
    public double Row => Math.Max(OutletRow, LoadRow);

    /// <summary>The height of a row whose boxes have so many lines.</summary>
    public static double RowOf(int lines) => 29 + ((lines - 1) * LinePitch);

    /// <summary>Lays out the columns of a diagram of a width.</summary>
    /// <param name="width">The width there is, in px.</param>
    /// <param name="wandering">How many leads go up and down past the rows of others.</param>
    public static DiagramMeasures Of(double width, int wandering)
    {
        width = double.IsFinite(width) ? Math.Clamp(width, DiagramOptions.LeastWidth, 4000) : 1100;
        return width < DiagramOptions.NarrowBelow ? Narrow(width, wandering == 0 ? 0 : 8 + (12 * Math.Min(wandering, 4))) : Wide(width);
    }

    private static DiagramMeasures Wide(double width)
    {
        var extra = Math.Min(width - DiagramOptions.NarrowBelow, 700);
        var supply = 108 + (0.16 * extra);
        var outlet = 124 + (0.15 * extra);
        var load = 158 + (0.36 * extra);
        const double supplyX = Margin + 30;
        var outletX = supplyX + supply + 28;
        var loadX = width - Margin - load;
        var leads = loadX - outletX - outlet;
        var isWide = extra > 430;
        return new DiagramMeasures
        {
            Width = width,
            IsNarrow = false,
            BusX = Margin + 9,
            SupplyX = supplyX,
            SupplyWidth = supply,
            StubX = supplyX + supply,
            RailX = outletX - 10,
            OutletX = outletX,
            OutletWidth = outlet,
            TrackX = outletX + outlet + 12,
            TrackWidth = leads * 0.25,
            TrunkX = loadX - 18,
            LoadX = loadX,
            LoadWidth = load,
            OutletLines = isWide ? 2 : 3,
            LoadLines = load >= 250 ? 2 : 3,
        };
    }

    private static DiagramMeasures Narrow(double width, double tracks)
    {
        const double margin = 8;
        const double outletX = margin + 44;
        return new DiagramMeasures
        {
            Width = width,
            IsNarrow = true,
            BusX = margin + 6,
            SupplyX = margin + 18,
            SupplyWidth = width - margin - margin - 18 - tracks,
            StubX = margin + 30,
            RailX = outletX - 6,
            OutletX = outletX,
            OutletWidth = width - margin - outletX - tracks,
            TrackX = width - margin - tracks + 9,
            TrackWidth = Math.Max(0, tracks - 8),
            TrunkX = outletX + 16,
            LoadX = outletX + 34,
            LoadWidth = width - margin - outletX - 34 - tracks,
            OutletLines = 2,
            LoadLines = 2,
        };
    }
}
