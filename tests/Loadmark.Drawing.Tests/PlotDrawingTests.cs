using CsCheck;
using Loadmark.Drawing.Plots;
using Loadmark.Drawing.Scenes;

namespace Loadmark.Drawing.Tests;

/// <summary>Plots of any data at any size.</summary>
public sealed class PlotDrawingTests
{
    private static readonly Gen<double> Value = Gen.Frequency((20, Gen.Double[-1, 5]), (3, Gen.Double[-1e6, 1e6]), (1, Gen.Const(double.NaN)), (1, Gen.Const(double.PositiveInfinity)), (2, Gen.Double[1e-9, 1e-6]));

    private static readonly Gen<PlotLine> Line = Gen.Select(
        Rigs.HostileText,
        Gen.Select(Gen.Double[0, 3], Value).Array[0, 60],
        Gen.Bool,
        static (name, values, isStep) => new PlotLine(name, [.. values.OrderBy(value => value.Item1).Select(value => new PlotValue(value.Item1, value.Item2))], isStep));

    private static readonly Gen<Plot> Any =
        from title in Rigs.HostileText
        from lines in Line.Array[0, 24]
        from marks in Gen.Select(Rigs.HostileText, Gen.Double[-1, 6]).Array[0, 4]
        from spots in Gen.Select(Rigs.HostileText, Gen.Double[0, 500], Gen.Double[0, 60], Gen.Double[0, 3000], Gen.Bool).Array[0, 20]
        from cursor in Gen.Double[-1, 4]
        from width in Gen.Double[200, 1400]
        from height in Gen.Double[100, 600]
        select new Plot
        {
            Title = title,
            X = new PlotAxis("time", "s") { TakesPrefix = width > 500 },
            Y = new PlotAxis(title, "A") { FromZero = height > 300 },
            Width = width,
            Height = height,
            Lines = [.. lines],
            Marks = [.. marks.Select(mark => new PlotMark(mark.Item1, mark.Item2))],
            Bands = [.. lines.Take(2).Select((line, index) => new PlotBand("5 % to 95 %", [.. line.Values.Select(value => new PlotSpread(value.X, value.Y - 0.1, value.Y + 0.1))], index))],
            Spots = [.. spots.Select(spot => new PlotSpot(spot.Item1, spot.Item2, spot.Item3, spot.Item4, spot.Item5))],
            Cursor = cursor < 0 ? null : cursor,
        };

    [Fact]
    public void Any_plot_is_drawn_soundly() => Any.Sample(static plot => SceneAssert.IsSound(PlotDrawing.Draw(plot)), iter: 200);

    [Theory]
    [InlineData(0.52, 0.6, "mA")]
    [InlineData(2.3, 2.5, "A")]
    [InlineData(0.00034, 0.0004, "µA")]
    [InlineData(12_000, 12_000, "kA")]
    public void Ticks_stand_at_round_numbers_with_the_prefix_that_fits(double most, double end, string unit)
    {
        var scale = AxisScale.Of(new PlotAxis("current", "A"), [0, most], 7, isTight: false);
        Assert.Equal(unit, scale.Unit);
        Assert.Equal(end, scale.High, 12);
        Assert.Equal("0", scale.TickText(0).TrimEnd('0', '.') is "" ? "0" : scale.TickText(0));
        Assert.InRange(scale.Ticks.Length, 3, 8);
    }

    [Fact]
    public void The_values_at_the_cursor_stand_beside_the_names()
    {
        var plot = Plot() with { Cursor = 0.5 };
        var line = Assert.Single(PlotDrawing.Draw(plot).Groups, group => group.Subject == "brick/5");
        Assert.Contains(line.Shapes, shape => shape is TextShape { Text: "250 mA" });
        Assert.Contains("250 mA at 0.500 s", line.Title, StringComparison.Ordinal);
    }

    [Fact]
    public void A_step_holds_its_value_until_the_next()
    {
        var line = new PlotLine("x", [new(0, 1), new(1, 3)], IsStep: true);
        Assert.Equal(1, line.At(0.99));
        Assert.Equal(3, line.At(1));
        Assert.Null(line.At(1.01));
        Assert.Equal(2, (line with { IsStep = false }).At(0.5));
        Assert.Null(new PlotLine("none", []).At(0));
    }

    [Fact]
    public void A_line_of_a_million_points_becomes_no_more_than_pixels_can_show()
    {
        var values = Enumerable.Range(0, 1_000_000).Select(index => new PlotValue(index * 1e-6, index == 123_456 ? 0.45 : 0.2 + (0.01 * (index % 2))));
        var plot = Plot() with { Lines = [new PlotLine("long", [.. values])] };
        var line = Assert.Single(PlotDrawing.Draw(plot).Groups, group => group.Subject == "long");
        var points = line.Shapes.OfType<PathShape>().SelectMany(path => path.Points).ToList();
        Assert.InRange(points.Count, 500, 4 * 720);

        // The one point that stands out is still there: 0.45 of 0.5 A is nine tenths of the way up.
        var ground = points.Max(point => point.Y);
        Assert.Contains(points, point => point.Y < ground - 60);
    }

    [Fact]
    public void Lines_leave_the_frame_cut_not_bent()
    {
        var plot = Plot() with { Y = new PlotAxis("current", "A") { Low = 0, High = 0.5 }, Lines = [new PlotLine("steep", [new(0, 0), new(1, 1)])], Marks = [] };
        var scene = PlotDrawing.Draw(plot);
        var path = Assert.Single(scene.Groups, group => group.Subject == "steep").Shapes.OfType<PathShape>().First();
        var axis = scene.Groups[0].Shapes.OfType<LineShape>().Last(line => line.Ink == Ink.Axis);
        Assert.Equal((axis.From.X + axis.To.X) / 2, path.Points[^1].X, 6);
    }

    [Fact]
    public void Labels_are_moved_apart_no_further_than_needed() => Gen.Double[0, 300].Array[1, 15].Sample(
        static wanted =>
        {
            Array.Sort(wanted);
            var places = LabelColumn.Spread(wanted, 14, 0, 300);
            for (var index = 1; index < places.Length; index++)
                Assert.True(places[index] - places[index - 1] >= 14 - 1e-9);
            Assert.True(places[0] >= -1e-9 && places[^1] <= 300 + 1e-9);

            // No run of labels can be moved a little so that they come closer to what they name.
            double Cost(double[] at) => at.Zip(wanted, static (place, wish) => (place - wish) * (place - wish)).Sum();
            for (var first = 0; first < places.Length; first++)
            {
                for (var last = first; last < places.Length; last++)
                {
                    foreach (var step in (double[])[-0.1, 0.1])
                    {
                        var moved = places.Select((place, index) => index >= first && index <= last ? place + step : place).ToArray();
                        if (moved[0] >= 0 && moved[^1] <= 300 && moved.Zip(moved.Skip(1)).All(pair => pair.Second - pair.First >= 14 - 1e-9))
                            Assert.True(Cost(moved) >= Cost(places) - 1e-6, $"{string.Join(' ', wanted)} at {string.Join(' ', places)}");
                    }
                }
            }

            if (wanted.Zip(wanted.Skip(1)).All(pair => pair.Second - pair.First >= 14))
                Assert.Equal(wanted, places.Select((place, index) => Math.Abs(place - wanted[index]) < 1e-9 ? wanted[index] : place));
        },
        iter: 1000);

    private static Plot Plot() => new()
    {
        Title = "Currents",
        X = new PlotAxis("time", "s"),
        Y = new PlotAxis("current", "A"),
        Lines = [new PlotLine("brick/5", [new(0, 0), new(1, 0.5)])],
        Marks = [new PlotMark("limit", 0.5)],
    };
}
