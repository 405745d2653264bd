using System.Diagnostics;
using Loadmark.Core.Checks;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Drawing.Diagrams;
using Loadmark.Drawing.Plots;
using Loadmark.Drawing.Scenes;
using Loadmark.Drawing.Svg;
using Loadmark.Files;

namespace Loadmark.Bench;

/// <summary>Times the drawing of rigs and plots: the scene, and the scene with its SVG, beside the check of the same rig.</summary>
internal static class DrawingBench
{
    public static int Run()
    {
        var table = new ResultTable(
            "Drawing",
            $"One thread, Release, 1100 px wide, the fastest of nine rounds of at least 0.2 s each, for others worked on the machine meanwhile. {ResultTable.Machine}",
            "what", "scene", "scene and SVG", "SVG", "shapes", "check of the same rig");

        Add(table, "festival.rig.yaml, 40 loads", RigFileReader.Read(File.ReadAllText("examples/festival.rig.yaml"), "festival").Rig!);
        foreach (var size in new[] { 12, 40, 500, 10_000 })
            Add(table, $"{size} loads", SampleRig.OfLoads(size));

        foreach (var points in new[] { 1_000, 100_000 })
        {
            var plot = SamplePlot(points);
            Add(table, $"plot of 6 lines of {points} points", () => PlotDrawing.Draw(plot), "");
        }

        table.Write("drawing.md");
        return 0;
    }

    private static void Add(ResultTable table, string what, Rig rig)
    {
        var check = NameplateCheck.Of(rig);
        Add(table, what, () => RigDiagram.Draw(rig, check), $"{Fastest(() => NameplateCheck.Of(WiredRig.Of(rig))) * 1e3:F2} ms");
    }

    private static void Add(ResultTable table, string what, Func<Scene> draw, string check)
    {
        var scene = draw();
        table.Add(
            what, $"{Fastest(() => draw()) * 1e3:F2} ms", $"{Fastest(() => SvgWriter.Write(draw(), SvgStyle.Paper)) * 1e3:F2} ms",
            $"{SvgWriter.Write(scene, SvgStyle.Paper).Length / 1024} KiB", $"{scene.Groups.Sum(static group => group.Shapes.Length)}", check);
    }

    private static Plot SamplePlot(int points) => new()
    {
        Title = "Current of each outlet",
        X = new PlotAxis("time", "s"),
        Y = new PlotAxis("current", "A"),
        Lines = [.. Enumerable.Range(0, 6).Select(line => new PlotLine($"brick/{line + 1}", [.. Enumerable.Range(0, points).Select(point => new PlotValue(point / (double)points, 0.1 * (line + Math.Sin(point * 0.01))))]))],
        Marks = [new PlotMark("limit", 0.5)],
        Cursor = 0.5,
    };

    private static double Fastest(Action action)
    {
        var times = new List<double>();
        for (var round = -2; round < 9; round++)
        {
            var count = 0;
            var clock = Stopwatch.StartNew();
            do
            {
                action();
                count++;
            }
            while (clock.Elapsed.TotalSeconds < 0.2);
            if (round >= 0)
                times.Add(clock.Elapsed.TotalSeconds / count);
        }

        return times.Min();
    }
}
