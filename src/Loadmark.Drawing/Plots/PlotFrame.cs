using Loadmark.Drawing.Scenes;

namespace Loadmark.Drawing.Plots;

/// <summary>The frame of a plot: where a value stands, and the room around for ticks and labels.</summary>
internal sealed class PlotFrame
{
    /// <summary>From baseline to baseline of labels.</summary>
    public const double LabelPitch = 14;

    private const double Right = 18;
    private const double Below = 38;
    private const double TickGap = 7;

    private PlotFrame(Box box, AxisScale x, AxisScale y, double labelWidth)
    {
        Box = box;
        X = x;
        Y = y;
        LabelWidth = labelWidth;
    }

    public Box Box { get; }

    public AxisScale X { get; }

    public AxisScale Y { get; }

    /// <summary>The room for labels at the right.</summary>
    public double LabelWidth { get; }

    /// <summary>How many labels there is room for at the right.</summary>
    public int LabelCapacity => Math.Max(1, (int)((Box.Height + LabelPitch) / LabelPitch));

    /// <summary>Fits a frame into the width and height that a plot is to have.</summary>
    /// <param name="plot">The plot.</param>
    /// <param name="width">Its width, no less than can be drawn in.</param>
    /// <param name="height">Its height, no less than can be drawn in.</param>
    public static PlotFrame Of(Plot plot, double width, double height)
    {
        var top = plot.Cursor is null ? 44.0 : 58;
        var tall = height - top - Below;
        var y = AxisScale.Of(plot.Y, Ends(YValues(plot)), Math.Max(2, (int)(tall / 34) + 1), isTight: false);
        var labels = PlotLabels.WidestOf(plot, y);
        var labelWidth = labels > 0 ? Math.Min(labels + 18, width * 0.34) : 0;
        var left = 8 + WidestTick(y) + TickGap;
        var wide = Math.Max(40, width - left - labelWidth - Right);

        // Fewer ticks until their texts stand apart.
        var most = Math.Max(2, (int)(wide / 44));
        var ends = Ends(XValues(plot));
        var x = AxisScale.Of(plot.X, ends, most, plot.Spots.IsEmpty);
        while (most > 2 && x.Ticks.Length > 1 && WidestTick(x) + 12 > (x.Ticks[1] - x.Ticks[0]) / (x.High - x.Low) * wide)
            x = AxisScale.Of(plot.X, ends, --most, plot.Spots.IsEmpty);
        return new PlotFrame(new Box(left, top, wide, tall), x, y, labelWidth);
    }

    public double Across(double value) => Box.X + ((value - X.Low) / (X.High - X.Low) * Box.Width);

    public double Up(double value) => Box.Bottom - ((value - Y.Low) / (Y.High - Y.Low) * Box.Height);

    public Point At(double x, double y) => new(Across(x), Up(y));

    private static double WidestTick(AxisScale scale) =>
        scale.Ticks.Select(tick => TextWidth.Of(scale.TickText(tick), TextRole.Small, isBold: false)).DefaultIfEmpty(0).Max();

    /// <summary>The least and the largest of many values; none where none is a number.</summary>
    private static double[] Ends(IEnumerable<double> values)
    {
        var (low, high) = (double.MaxValue, double.MinValue);
        foreach (var value in values)
        {
            if (AxisScale.CanShow(value))
                (low, high) = (Math.Min(low, value), Math.Max(high, value));
        }

        return low <= high ? [low, high] : [];
    }

    private static IEnumerable<double> XValues(Plot plot) =>
        plot.Lines.SelectMany(static line => line.Values).Select(static value => value.X)
            .Concat(plot.Bands.SelectMany(static band => band.Values).Select(static value => value.X))
            .Concat(plot.Spots.Select(static spot => spot.X));

    private static IEnumerable<double> YValues(Plot plot) =>
        plot.Lines.SelectMany(static line => line.Values).Select(static value => value.Y)
            .Concat(plot.Bands.SelectMany(static band => band.Values).SelectMany(static value => new[] { value.Low, value.High }))
            .Concat(plot.Spots.Select(static spot => spot.Y))
            .Concat(plot.Marks.Select(static mark => mark.At));
}
