using Loadmark.Core.Checks;
using Loadmark.Core.Display;
using Loadmark.Core.Gear;
using Loadmark.Core.LeadLists;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Drawing.Diagrams;
using Loadmark.Drawing.Paper;
using Loadmark.Drawing.Scenes;
using Loadmark.Drawing.Texts;

namespace Loadmark.Workshop.Sheets;

/// <summary>
/// The feed schedule: each outlet with its setting, lead and loads, what they draw of what it can give, the voltage that each gets, between
/// which ends it must be found, and a box for what was measured.
/// </summary>
internal sealed class FeedSchedule
{
    private const double BoxWidth = 15 * PaperSize.PxPerMm;

    private static readonly TableColumn[] Columns =
    [
        new("Outlet"), new("Set to"), new("Lead"), new("Load"), new("Draws"), new("Of outlet's limit"), new("Settled", TextAnchor.End),
        new("To expect at the plug"), new("Measured", LeastWidth: BoxWidth),
    ];

    private readonly SheetFigures _figures;
    private readonly Dictionary<OutletRef, OutletLoading> _loadings;
    private readonly Dictionary<string, Volts?> _settled;
    private readonly IReadOnlyDictionary<string, Severity> _worst;
    private readonly HashSet<string> _told = new(StringComparer.Ordinal);
    private readonly List<PaperTableRow> _rows = [];

    private FeedSchedule(SheetFigures figures)
    {
        _figures = figures;
        _worst = WorstBySubject.Of(figures.Analysis.Check);
        _loadings = figures.Analysis.Check.Outlets.Items.ToDictionary(static one => one.Outlet);
        _settled = figures.Analysis.Settled!.Loads.Items
            .ToDictionary(static one => one.Load, static one => one.Volts, StringComparer.Ordinal);
    }

    public static void Set(PageComposer composer, SheetFigures figures)
    {
        var schedule = new FeedSchedule(figures);
        schedule.AddRows();
        if (schedule._rows.Count > 0)
            composer.Table(new PaperTable([.. Columns], [.. schedule._rows]));
        else
            composer.Paragraph("The rig has no supplies and no loads yet.");
        composer.Paragraph(
            "Settled: the voltage at the load with everything running. To expect at the plug: between which ends the meter must read, "
            + "first with no load plugged in, then with all of them running, as far as outlets, draws and lengths may be from what the "
            + "rig says.",
            Ink.TextQuiet,
            TypeSize.Note);
    }

    private void AddRows()
    {
        foreach (var lead in _figures.Leads.Items.OrderBy(static lead => lead.Feed.Outlets[0].Index))
            AddFeed(lead);

        foreach (var outlet in _figures.Analysis.Wired.Outlets)
        {
            if (_told.Add(outlet.Name))
                AddFree(outlet);
        }

        foreach (var load in _figures.Analysis.Wired.Loads.Items.Where(static load => load.Feeds.Count == 0))
            _rows.Add(Row(TableCell.Of("not fed", Ink.TextQuiet), TableCell.Empty, TableCell.Empty, load, TableCell.Empty, null));
    }

    private void AddFeed(ListedLead lead)
    {
        for (var place = 0; place < lead.Feed.Loads.Length; place++)
        {
            var load = lead.Feed.Loads[place];
            if (place > 0)
            {
                var below = Row(TableCell.Empty, TableCell.Empty, TableCell.Empty, load, TableCell.Empty, lead);
                _rows.Add(below with { StaysWithAbove = true });
                continue;
            }

            foreach (var outlet in lead.Feed.Outlets)
                _told.Add(outlet.Name);
            var first = Row(OutletCell(lead.Feed), SettingCell(lead.Feed), LeadCell(lead), load, LimitCell(lead.Feed), lead);
            _rows.Add(first with { BeginsGroup = true });
        }
    }

    private void AddFree(WiredOutlet outlet)
    {
        var loading = _loadings[outlet.Rating.Reference];
        _rows.Add(new PaperTableRow(
        [
            TableCell.Of(outlet.Name, Ink.TextStrong),
            TableCell.Of(SetText(outlet)),
            TableCell.Empty,
            TableCell.Of(loading.GivesNothing ? "gives nothing: its supply is not fed" : "free", Ink.TextQuiet),
            TableCell.Empty,
            TableCell.Of(FigureDisplay.Printed(loading.Limit)),
            TableCell.Empty,
            TableCell.Empty,
            TableCell.Empty,
        ])
        { BeginsGroup = true });
    }

    private PaperTableRow Row(TableCell outlet, TableCell set, TableCell lead, WiredLoad load, TableCell limit, ListedLead? on) => new(
    [
        outlet, set, lead, LoadCell(load), DrawCell(load), limit,
        TableCell.Of(on is null ? "" : FigureDisplay.Said(_settled.GetValueOrDefault(load.Id)), Ink.TextFigure),
        on is null ? TableCell.Empty : ExpectCell(load, on),
        on is null ? TableCell.Empty : TableCell.Box,
    ]);

    private static TableCell OutletCell(WiredFeed feed) => new(
    [
        .. feed.Outlets.Select(static outlet => new TableText(ToBuyMark.On(outlet.Name, outlet.Rating.Supply.ToBuy), Ink.TextStrong)),
        .. feed.Joined == Joint.None ? [] : (TableText[])[new TableText($"in {feed.Joined.ToString().ToLowerInvariant()}")],
    ]);

    private static TableCell SettingCell(WiredFeed feed) => new(
    [
        .. feed.Outlets.Select(static outlet => new TableText(SetText(outlet), Ink.TextFigure)),
        .. feed.Joined == Joint.Series ? (TableText[])[new TableText($"= {FigureDisplay.Printed(feed.Volts)}", Ink.TextFigure)] : [],
    ]);

    /// <summary>The setting of an outlet's switch where it has one, else what it gives.</summary>
    private static string SetText(WiredOutlet outlet)
    {
        var volts = $"{FigureDisplay.Printed(outlet.Volts)} {FormSigns.Of(outlet.Rating.Form)}";
        return outlet.Rating.Modes.Length <= 1 ? volts : outlet.SettingIsStated ? $"switch: {volts}" : $"switch: {volts} (assumed)";
    }

    private static TableCell LeadCell(ListedLead lead) => new(
    [
        new TableText($"{lead.Number}", Ink.TextStrong),
        new TableText(lead.Lead is { } listed ? ToBuyMark.On(listed.Id, listed.ToBuy) : "straight") { Size = TypeSize.Note },
    ]);

    private TableCell LoadCell(WiredLoad load) => new(
    [
        new TableText(load.Id, Ink.TextStrong),
        .. load.Rating.Load.Name is { } name ? (TableText[])[new TableText(name) { Size = TypeSize.Note }] : [],
        .. _worst.TryGetValue(load.Id, out var worst)
            ? (TableText[])[new TableText(SignShapes.WordOf(worst), SignShapes.InkOf(worst)) { Sign = worst, Size = TypeSize.Note }]
            : [],
    ]);

    private static TableCell DrawCell(WiredLoad load)
    {
        var rating = load.Rating;
        var run = rating.Running is { } running ? $"{(running.IsAssumed ? "~ " : "")}{running.Value}" : "not known";
        return new TableCell(
        [
            new TableText(run, Ink.TextFigure),
            .. rating.StartIsGiven && rating.Starting is { } start && start.Value != rating.Running?.Value
                ? (TableText[])[new TableText($"start {start.Value}") { Size = TypeSize.Note }]
                : [],
        ]);
    }

    private TableCell LimitCell(WiredFeed feed)
    {
        var texts = new List<TableText>();
        foreach (var outlet in feed.Outlets)
        {
            var loading = _loadings[outlet.Rating.Reference];
            texts.Add(new TableText(
                AmountText.Of(loading.Run, loading.Limit).Replace(' ', WrappedText.Tie), Ink.TextFigure));
            if (loading is { Run: { } run, Limit: { } limit })
                texts.Add(new TableText(
                    run <= limit ? $"{FigureDisplay.Spare(limit - run)} free" : $"{FigureDisplay.Said(run - limit)} too much",
                    run <= limit ? Ink.TextQuiet : Ink.TextStrong)
                { Size = TypeSize.Note });
            if (loading.Start is { } start && start != loading.Run)
                texts.Add(new TableText($"start {FigureDisplay.Said(start, loading.Limit)}") { Size = TypeSize.Note });
        }

        return new TableCell([.. texts]);
    }

    private TableCell ExpectCell(WiredLoad load, ListedLead lead)
    {
        var bounds = _figures.BoundsOf(load.Id);
        var texts = new List<TableText>
        {
            new($"open{WrappedText.Tie}{RangeText.Of(bounds?.Open)}", Ink.TextFigure),
            new($"loaded{WrappedText.Tie}{RangeText.Of(bounds?.Loaded)}", Ink.TextFigure),
        };
        var polarity = lead.Point.Polarity;
        if (lead.Point.Form is not { IsKnown: true, Value: SupplyForm.Direct })
            return new TableCell([.. texts]);
        if (!polarity.IsKnown)
            return new TableCell([.. texts, new TableText("polarity not known: measure") { Size = TypeSize.Note }]);
        return PolarityCell.Of(polarity.Value, [.. texts]);
    }

}
