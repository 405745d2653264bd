using Loadmark.Core.Display;
using System.Globalization;
using Bunit;
using Loadmark.Web.Parts;

namespace Loadmark.Web.Tests.Parts;

/// <summary>Switched on in computation: settled, over time, and with other leads.</summary>
public sealed class StartPanelTests : PageTest
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task Settled_volts_are_in_a_table_and_in_the_diagram_when_asked_for()
    {
        var view = await OpenAsync(SmallRig.Text);
        var part = Show<StartPanel>(view);
        var rows = part.FindAll("table tbody")[0].Children.Select(row => row.Children.Select(cell => cell.TextContent).ToArray()).ToList();
        Assert.Equal(["drive-3", "delay-2", "preamp-2"], rows.Select(row => row[0]));
        Assert.Matches(@"^(8\.9\d*|9) V$", rows[0][1]);
        Assert.Equal("runs", rows[0][3]);
        Assert.StartsWith("off", rows[2][3], StringComparison.Ordinal);

        Assert.Null(view.Readings);
        await part.InvokeAsync(() => Button(part, "Show it in the diagram").ClickAsync(new()));
        Assert.Equal(rows[0][1], FigureDisplay.Said(view.Readings!.Loads["drive-3"].Volts));
        Assert.Contains("brick/1", view.Readings.Outlets.Keys);
    }

    [Fact]
    public async Task A_longer_lead_solves_anew_and_is_put_into_the_rig_only_when_asked()
    {
        var view = await OpenAsync(SmallRig.Text);
        var part = Show<StartPanel>(view);
        var before = Volts(part, 1);

        // What is solved aside may draw the part anew at any time: each field is looked for in the same turn that it is typed into.
        await part.InvokeAsync(() => part.Find("#trial-length").InputAsync(new() { Value = "10" }));
        await part.InvokeAsync(() => part.Find("#trial-wire").ChangeAsync(new() { Value = "0.08 mm²" }));
        Assert.True(Volts(part, 1) < before - 0.1m, $"{Volts(part, 1)} {before}");
        Assert.Empty(view.Rig.Leads);
        await part.InvokeAsync(() => Button(part, "Back to the rig's own").ClickAsync(new()));
        Assert.Equal(before, Volts(part, 1));

        await part.InvokeAsync(() => part.Find("#trial-length").InputAsync(new() { Value = "3" }));
        await part.InvokeAsync(() => part.Find("#trial-headroom").InputAsync(new() { Value = "25" }));
        await part.InvokeAsync(() => Button(part, "Put it into the rig").ClickAsync(new()));
        Assert.Equal(0.25m, view.Rig.Headroom);
        Assert.Equal(new Metres(3), Assert.Single(view.Rig.Leads).Length);
    }

    [Fact]
    public async Task The_first_seconds_are_drawn_and_the_moment_moves_the_readings()
    {
        var view = await OpenAsync(PageExamples.Read("chain-start"));
        var part = Show<StartPanel>(view);
        await part.InvokeAsync(() => Button(part, "Switch on").ClickAsync(new()));
        part.WaitForAssertion(() => Assert.NotEmpty(part.FindAll("#start-time")), Patience);
        Assert.Contains("Not everything comes up", part.Find(".answer strong").TextContent, StringComparison.Ordinal);

        await part.InvokeAsync(() => part.Find("#start-time").InputAsync(new() { Value = "0" }));
        var first = view.Readings!;
        Assert.Contains("0 s after switch-on", view.ReadingsOf, StringComparison.Ordinal);
        await part.InvokeAsync(() => part.Find("#start-time").InputAsync(new() { Value = "0.5" }));
        Assert.NotEqual(first.Outlets["wall/1"].Amps, view.Readings!.Outlets["wall/1"].Amps);
        Assert.Contains("500 ms after switch-on", view.ReadingsOf, StringComparison.Ordinal);

        var plots = part.FindComponents<PlotView>();
        Assert.Equal(2, plots.Count);
        foreach (var plot in plots)
            await plot.Instance.SetWidthAsync(600);
        Assert.Equal(2, part.FindAll("svg.scene").Count);
        Assert.Contains(part.FindAll("svg.scene text"), text => text.TextContent.Contains("limit", StringComparison.Ordinal));

        // The pointer over the plot moves the moment, the wheel comes closer.
        await plots[0].Instance.PointAsync(0.5);
        Assert.DoesNotContain("500 ms after", view.ReadingsOf, StringComparison.Ordinal);
        var whole = part.Find("#start-time").GetAttribute("max");
        await plots[0].Instance.ZoomAsync(0.5, 0.5);
        Assert.NotEqual(whole, part.Find("#start-time").GetAttribute("max"));
        await part.InvokeAsync(() => Button(part, "All of it").ClickAsync(new()));
        Assert.Equal(whole, part.Find("#start-time").GetAttribute("max"));
        Assert.Contains("wall/1 and its loads over time", part.FindAll("table caption").Select(caption => caption.TextContent));
    }

    /// <summary>delay-2 charges 220 µF, assumed, over 10 ms to 9 V: 198 mA, and 99 mA to 396 mA where it is half or double that.</summary>
    [Fact]
    public async Task A_peak_that_rests_on_an_assumed_capacitor_is_a_range_and_says_so()
    {
        var view = await OpenAsync(
            """
            rig: One
            loads: { delay-2: { kind: digital, label: "9V DC 90mA centre negative", starts_below: 8.9 V, stops_below: 5 V } }
            supplies: { brick: { isolated: true, outlets: { 1: 9 V 300 mA centre negative } } }
            wired: [ { from: brick/1, to: delay-2 } ]
            """);
        var part = Show<StartPanel>(view);
        await part.InvokeAsync(() => Button(part, "Switch on").ClickAsync(new()));
        part.WaitForAssertion(() => Assert.NotEmpty(part.FindAll("#start-outlet")), Patience);
        Assert.Matches(@"^brick/1: peak 99 mA to 300 mA, at its limit of 300 mA for up to 1[0-9.]+ ms\.$", part.Find(".peak").TextContent);
        Assert.Matches(
            "^The peak of brick/1 is a range: .*input capacitance.* at half and at double.* At its limit of 300 mA or over it for 0 s to 1[0-9.]+ ms. The curve is",
            part.Find(".pulse").TextContent);
    }

    [Fact]
    public async Task It_opens_where_it_tells_most_and_plays_until_it_is_paused_or_over()
    {
        var view = await OpenAsync(PageExamples.Read("pit"));
        var part = Show<StartPanel>(view);
        await part.InvokeAsync(() => Button(part, "Switch on").ClickAsync(new()));
        part.WaitForAssertion(() => Assert.NotEmpty(part.FindAll("#start-time")), Patience);

        // Not in the first microseconds, in which every gauge is full.
        Assert.InRange(Moment(part), 0.005, 10);

        // Each outlet's peak, with how long it is at its limit, or when it is.
        var peaks = part.FindAll(".peaks li").Select(static peak => peak.TextContent.Trim()).ToList();
        Assert.Contains("brick/5: peak 423 mA, 109 ms after switch-on; limit 500 mA.", peaks);
        Assert.Contains("brick/6: peak 400 mA, at its limit of 400 mA or over it for 15 s.", peaks);

        await part.InvokeAsync(() => part.Find("#start-time").InputAsync(new() { Value = "0" }));
        await part.InvokeAsync(() => part.Find("#start-pace").ChangeAsync(new() { Value = "30" }));
        var film = part.InvokeAsync(() => Button(part, "Play").ClickAsync(new()));
        part.WaitForAssertion(() => Assert.True(Moment(part) > 0), Patience);
        await part.InvokeAsync(() => Button(part, "Pause").ClickAsync(new()));
        await film.WaitAsync(Patience, Stop);
        var paused = Moment(part);
        Assert.NotEqual(End(part), paused);
        await Task.Delay(300, Stop);
        Assert.Equal(paused, Moment(part));
        Assert.Equal("Play", Button(part, "Play").TextContent);

        // From near its end it comes to the end by itself, and then begins anew.
        await part.InvokeAsync(() => part.Find("#start-pace").ChangeAsync(new() { Value = "5" }));
        await part.InvokeAsync(() => part.Find("#start-time").InputAsync(new() { Value = (End(part) * 0.95).ToString(CultureInfo.InvariantCulture) }));
        await part.InvokeAsync(() => Button(part, "Play").ClickAsync(new())).WaitAsync(Patience, Stop);
        Assert.Equal(End(part), Moment(part), 4);
        film = part.InvokeAsync(() => Button(part, "Play").ClickAsync(new()));
        part.WaitForAssertion(() => Assert.InRange(Moment(part), 0, End(part) / 2), Patience);
        await part.InvokeAsync(() => part.Find("#start-time").InputAsync(new() { Value = "0" })); // by hand: paused
        await film.WaitAsync(Patience, Stop);
    }

    [Fact]
    public async Task Sampling_says_in_how_many_every_load_runs()
    {
        var view = await OpenAsync(SmallRig.Text);
        var part = Show<StartPanel>(view);
        part.Find("#spread-samples").Change("200");
        await part.InvokeAsync(() => Button(part, "Sample").ClickAsync(new()));
        part.WaitForAssertion(() => Assert.Contains("of 200 samples", part.Find(".answer strong").TextContent, StringComparison.Ordinal), Patience);
    }

    [Fact]
    public async Task A_rig_without_wiring_is_led_to_the_plan()
    {
        var view = await OpenAsync(SmallRig.Text[..SmallRig.Text.IndexOf("wired:", StringComparison.Ordinal)]);
        Assert.Contains("/plan", Show<StartPanel>(view).Markup, StringComparison.Ordinal);
    }

    private static decimal Volts(IRenderedComponent<PartHost> part, int row)
    {
        var text = part.FindAll("table tbody")[0].Children[row].Children[1].TextContent;
        return decimal.Parse(text.Split(' ')[0], CultureInfo.InvariantCulture);
    }

    private static double Moment(IRenderedComponent<PartHost> part) => Number(part.Find("#start-time").GetAttribute("value"));

    private static double End(IRenderedComponent<PartHost> part) => Number(part.Find("#start-time").GetAttribute("max"));

    private static double Number(string? text) => double.Parse(text!, CultureInfo.InvariantCulture);

    private static AngleSharp.Dom.IElement Button(IRenderedComponent<PartHost> part, string text) =>
        part.FindAll("button").First(button => button.TextContent == text);
}
