using Loadmark.Core.Display;
using Loadmark.Drawing.Paper;
using Loadmark.Drawing.Plots;
using Loadmark.Drawing.Scenes;
using Loadmark.Simulation.Starting;

namespace Loadmark.Workshop.Sheets;

/// <summary>The first seconds: whether it all comes up, what happens on the way, and the current of each outlet over time.</summary>
internal static class StartUpPages
{
    private const int MostEvents = 24;
    private const int Columns = 2;
    private const double Gap = 14;
    private const double PlotHeight = 150;
    private const double EndShare = 1.1;

    public static void Set(PageComposer composer, SheetFigures figures)
    {
        var started = figures.Started;
        composer.Paragraph(StartUpText.Verdict(started));
        composer.Table(new PaperTable(
            [new("Load"), new("Runs after", TextAnchor.End), new("Lowest", TextAnchor.End), new("Restarts", TextAnchor.End), new("State")],
            [
                .. started.Loads.Items.Select(static load => new PaperTableRow(
                [
                    TableCell.Of(load.Load, Ink.TextStrong),
                    TableCell.Of(load.RunsAfter is { } after ? FigureDisplay.Said(after) : "-", Ink.TextFigure),
                    TableCell.Of(load.LowestVolts is { } lowest ? FigureDisplay.Said(lowest) : "-", Ink.TextFigure),
                    TableCell.Of($"{load.Restarts}", Ink.TextFigure),
                    TableCell.Of(StartUpText.State(load)),
                ])),
            ]));
        var fed = started.Outlets.Items.Where(static outlet => !outlet.IsFree).ToList();
        composer.Table(new PaperTable(
            [
                new("Outlet"), new("Limit", TextAnchor.End), new("Peak", TextAnchor.End), new("At", TextAnchor.End),
                new("At its limit or over it for"),
            ],
            [
                .. fed.Select(static outlet => new PaperTableRow(
                [
                    TableCell.Of($"{outlet.Outlet}", Ink.TextStrong),
                    TableCell.Of(FigureDisplay.Printed(outlet.Limit), Ink.TextFigure),
                    TableCell.Of(StartUpText.Peak(outlet), Ink.TextFigure),
                    TableCell.Of(outlet.PeakAt is { } at ? FigureDisplay.Said(at) : "-", Ink.TextFigure),
                    TableCell.Of(StartUpText.OverLimit(outlet)),
                ])),
            ]));
        SetStory(composer, started);
        SetPlots(composer, figures, fed);
    }

    private static void SetStory(PageComposer composer, StartUpResult started)
    {
        if (started.Events.Count == 0)
            return;
        composer.Subheading("What happens");
        composer.Table(new PaperTable(
            [new("After", TextAnchor.End), new("What")],
            [
                .. started.Events.Items.Take(MostEvents).Select(static happening => new PaperTableRow(
                    [TableCell.Of(FigureDisplay.Said(happening.Time), Ink.TextFigure), TableCell.Of(happening.Text)])),
            ]));
        if (started.Events.Count > MostEvents)
            composer.Paragraph(
                $"And {started.Events.Count - MostEvents} more, the last after {FigureDisplay.Said(started.Events[^1].Time)}.");
    }

    private static void SetPlots(PageComposer composer, SheetFigures figures, List<StartedOutlet> fed)
    {
        var waves = figures.Started.Waveforms;
        var series = waves.Series.Where(static wave => wave.Unit == "A").ToDictionary(static wave => wave.Subject, StringComparer.Ordinal);
        var drawn = fed.Where(outlet => series.ContainsKey($"{outlet.Outlet}")).ToList();
        if (drawn.Count == 0 || waves.Seconds.Length < 2)
            return;
        composer.Subheading("Current of each outlet");
        var width = (composer.Body.Width - ((Columns - 1) * Gap)) / Columns;
        var end = (double)(figures.Started.SettledAfter is { } settled ? settled.Value : figures.Started.Duration.Value) * EndShare;
        foreach (var row in drawn.Chunk(Columns))
            composer.Figures([.. row.Select(outlet => PlotOf(figures, outlet, series[$"{outlet.Outlet}"], end, width))], Gap);
    }

    private static Scene PlotOf(SheetFigures figures, StartedOutlet outlet, Waveform wave, double end, double width)
    {
        var times = figures.Started.Waveforms.Seconds;
        return PlotDrawing.Draw(new Plot
        {
            Title = $"Current of {outlet.Outlet}",
            X = new PlotAxis("after switch-on", "s") { Low = 0, High = Math.Min(Math.Max(end, 1e-3), times[^1]) },
            Y = new PlotAxis("current", "A"),
            Width = width,
            Height = PlotHeight,
            Lines =
            [
                new PlotLine(
                    "current", [.. Enumerable.Range(0, times.Length).Select(index => new PlotValue(times[index], wave.Values[index]))]),
            ],
            Marks = outlet.Limit is { } limit ? [new PlotMark("limit", (double)limit.Value)] : [],
        });
    }
}
