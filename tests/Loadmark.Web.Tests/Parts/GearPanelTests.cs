using Bunit;
using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using Loadmark.Files;
using Loadmark.Web.Parts;

namespace Loadmark.Web.Tests.Parts;

/// <summary>Loads, supplies and leads, typed in place.</summary>
public sealed class GearPanelTests : PageTest
{
    [Fact]
    public async Task Each_figure_shows_where_it_came_from()
    {
        var view = await OpenAsync("rig: r\nloads:\n  drive-3: { kind: analog drive, label: \"9V 2.7W\", run: 210 mA }\n  NEW: { kind: tuner }\n  W: { label: 9V DC 3W }\n");
        var part = Show<GearPanel>(view);
        var figures = await OpenedAsync(part, "drive-3");
        Assert.Contains("9 V, stated", figures);
        Assert.Contains("210 mA, measured", figures);
        Assert.Contains("centre negative, assumed", figures);
        Assert.Contains("plug 5.5x2.1, assumed", figures);
        Assert.Contains("333.3 mA, derived", await OpenedAsync(part, "W"));
        Assert.Equal(["voltage not known", "d.c. or a.c. not known", "draw not known", "polarity not known", "plug not known"], await OpenedAsync(part, "NEW"));
    }

    [Fact]
    public async Task Alternating_current_has_no_polarity_and_a_printed_positive_ground_shows()
    {
        var part = Show<GearPanel>(await OpenAsync("rig: r\nloads:\n  multi-2: { label: 9V AC 500mA }\n  fuzz-1: { label: \"9V DC 3mA centre positive, positive ground\" }\n"));
        Assert.Contains("9 V a.c., stated", await OpenedAsync(part, "multi-2"));
        Assert.DoesNotContain(Figures(part, "multi-2"), static figure => figure.Contains("centre", StringComparison.Ordinal) || figure.Contains("polarity", StringComparison.Ordinal));
        Assert.Contains("positive ground, stated", await OpenedAsync(part, "fuzz-1"));
    }

    [Fact]
    public async Task What_was_not_read_of_a_label_shows()
    {
        var part = Show<GearPanel>(await OpenAsync("rig: r\nloads:\n  drive-3: { label: \"9V 12mA blue lamp\" }\n"));
        Assert.Contains("not read: blue lamp", part.Find("[data-gear='drive-3'] .marks").TextContent, StringComparison.Ordinal);
        await OpenedAsync(part, "drive-3");
        Assert.Contains("not read: blue lamp", part.Find("[data-gear='drive-3'] select.unread").TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Name", "blue lamp", null)]
    [InlineData("Kind", null, "blue lamp")]
    [InlineData("Nothing", null, null)]
    public async Task What_was_not_read_is_put_where_its_owner_says(string meaning, string? name, string? kind)
    {
        var view = await OpenAsync("rig: r\nloads:\n  drive-3: { label: \"9V 12mA blue lamp\" }\n");
        var part = Show<GearPanel>(view);
        await OpenedAsync(part, "drive-3");
        await part.InvokeAsync(() => part.Find("[data-gear='drive-3'] select.unread").ChangeAsync(new() { Value = meaning }));
        Assert.Equal(("9V 12mA", name, kind), (view.Rig.Loads[0].Label!.Text, view.Rig.Loads[0].Name, view.Rig.Loads[0].Kind?.Text));
    }

    [Theory]
    [InlineData("9V DC 12mA centre negative 5.5x2.1", null)]
    [InlineData("9V DC 2.7W", "2 assumed, 1 derived")]
    [InlineData("18V 40mA", "3 not known")]
    [InlineData("12V DC 40mA 5.5x2.1", "polarity not known")]
    [InlineData("9V DC 12mA blue lamp centre negative 5.5x2.1", "not read: blue lamp")]
    public async Task A_row_marks_only_what_is_not_simply_printed(string label, string? marks)
    {
        var part = Show<GearPanel>(await OpenAsync($"rig: r\nloads:\n  drive-3: {{ label: \"{label}\" }}\n"));
        Assert.Equal(marks, part.FindAll("[data-gear='drive-3'] .marks").SingleOrDefault()?.TextContent.Trim());
    }

    [Fact]
    public async Task A_label_is_changed_in_place_and_kept()
    {
        var view = await OpenAsync(SmallRig.Text);
        var part = Show<GearPanel>(view);
        await part.InvokeAsync(() => part.Find("[data-gear='drive-3'] .platelabel").ChangeAsync(new() { Value = "9V DC 25mA" }));
        Assert.Equal("9V DC 25mA", view.Rig.Loads[0].Label!.Text);
        Assert.Equal("editing the label of drive-3", view.Session.Kept!.UndoWhat);
        Assert.Contains("# loud", view.Session.Text, StringComparison.Ordinal);
        Assert.Contains("25 mA, stated", await OpenedAsync(part, "drive-3"));
    }

    [Fact]
    public async Task A_tag_is_changed_wherever_it_is_mentioned_and_a_taken_one_is_refused()
    {
        var view = await OpenAsync(SmallRig.Text);
        var part = Show<GearPanel>(view);
        await part.InvokeAsync(() => part.Find("[data-gear='drive-3'] input.tag").ChangeAsync(new() { Value = "delay-2" }));
        part.WaitForAssertion(() => Assert.Contains("delay-2", part.Find("[data-gear='drive-3'] [role=alert]").TextContent, StringComparison.Ordinal));
        Assert.Null(view.Session.Kept!.UndoWhat);

        await part.InvokeAsync(() => part.Find("[data-gear='drive-3'] input.tag").ChangeAsync(new() { Value = "" }));
        part.WaitForAssertion(() => Assert.Contains("it is empty", part.Find("[data-gear='drive-3'] [role=alert]").TextContent, StringComparison.Ordinal));

        await part.InvokeAsync(() => part.Find("[data-gear='drive-3'] input.tag").ChangeAsync(new() { Value = "drive-30" }));
        Assert.Equal("drive-30", view.Rig.Wired!.Value[0].To[0]);
        Assert.Equal(view.Rig, RigFileReader.Read(view.Session.Text, "").Rig);
        part.WaitForAssertion(() => Assert.Empty(part.FindAll("[data-gear='drive-30'] [role=alert]")));
    }

    [Fact]
    public async Task What_cannot_be_read_stays_in_its_field_with_the_reason_until_it_can()
    {
        var view = await OpenAsync(SmallRig.Text);
        var part = Show<GearPanel>(view);
        await part.InvokeAsync(() => part.Find("[data-gear='drive-3'] .more").ClickAsync(new()));
        await part.InvokeAsync(() => part.Find("#load-0-run").ChangeAsync(new() { Value = "210" }));

        Assert.Null(view.Rig.Loads[0].Run);
        Assert.Equal("210", part.Find("#load-0-run").GetAttribute("value"));
        Assert.Equal("true", part.Find("#load-0-run").GetAttribute("aria-invalid"));
        Assert.Contains("the unit is missing", part.Find("#load-0-run-about").TextContent, StringComparison.Ordinal);

        await part.InvokeAsync(() => part.Find("#load-0-run").ChangeAsync(new() { Value = "210mA" }));
        Assert.Equal(new Amps(0.21m), view.Rig.Loads[0].Run);
        part.WaitForAssertion(() => Assert.Equal("210 mA", part.Find("#load-0-run").GetAttribute("value")));
        Assert.Null(part.Find("#load-0-run").GetAttribute("aria-invalid"));
        Assert.DoesNotContain("missing", part.Find("#load-0-run-about").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_field_emptied_says_nothing_any_more_and_a_choice_is_kept()
    {
        var view = await OpenAsync(SmallRig.Text);
        var part = Show<GearPanel>(view);
        await part.InvokeAsync(() => part.Find("[data-gear='drive-3'] .more").ClickAsync(new()));
        await part.InvokeAsync(() => part.Find("#load-0-kind").ChangeAsync(new() { Value = "" }));
        Assert.Null(view.Rig.Loads[0].Kind);
        await part.InvokeAsync(() => part.Find("#load-0-ground").ChangeAsync(new() { Value = "positive" }));
        Assert.Equal(GroundSide.Positive, view.Rig.Loads[0].Ground);
        await part.InvokeAsync(() => part.Find("#load-0-isolate").ChangeAsync(new() { Value = "yes" }));
        Assert.True(view.Rig.Loads[0].Isolate);
        part.WaitForAssertion(() => Assert.Equal("yes", part.Find("#load-0-isolate").GetAttribute("value")));
    }

    [Fact]
    public async Task Loads_are_duplicated_moved_removed_and_found()
    {
        var view = await OpenAsync(SmallRig.Text);
        var part = Show<GearPanel>(view);
        await part.InvokeAsync(() => part.Find("[data-gear='drive-3'] .more").ClickAsync(new()));
        await part.InvokeAsync(() => Button(part, "Duplicate").ClickAsync(new()));
        Assert.Equal(["drive-3", "drive-4", "delay-2", "preamp-2"], view.Rig.Loads.Select(load => load.Id));
        await part.InvokeAsync(() => Button(part, "Move down").ClickAsync(new()));
        Assert.Equal(["drive-4", "drive-3", "delay-2", "preamp-2"], view.Rig.Loads.Select(load => load.Id));
        await part.InvokeAsync(() => Button(part, "Remove drive-3").ClickAsync(new()));
        Assert.Equal(["drive-4", "delay-2", "preamp-2"], view.Rig.Loads.Select(load => load.Id));
        Assert.DoesNotContain(view.Rig.Wired!.Value, feed => feed.To.Contains("drive-3"));
    }

    [Fact]
    public async Task Many_loads_can_be_searched()
    {
        var view = await OpenAsync(PageExamples.Read("festival"));
        Assert.True(view.Rig.Loads.Count > 8);
        var part = Show<GearPanel>(view);
        var one = view.Rig.Loads[3].Id;
        part.Find("input[type=search]").Input(one.ToLowerInvariant());
        Assert.All(part.FindAll(".gearlist[aria-labelledby=loads-title] > li"), row => Assert.Contains(one, row.GetAttribute("data-gear"), StringComparison.OrdinalIgnoreCase));
        part.Find("input[type=search]").Input("no such thing");
        Assert.Empty(part.FindAll(".gearlist[aria-labelledby=loads-title] > li"));
        Assert.Contains("no such thing", part.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Mains_and_headroom_are_typed_and_refused_like_any_field()
    {
        var view = await OpenAsync(SmallRig.Text);
        var part = Show<GearPanel>(view);
        await part.InvokeAsync(() => part.Find("#rig-headroom").ChangeAsync(new() { Value = "120 %" }));
        Assert.Contains("below 100 %", part.Find("#rig-headroom-about").TextContent, StringComparison.Ordinal);
        Assert.Null(view.Rig.Headroom);
        await part.InvokeAsync(() => part.Find("#rig-headroom").ChangeAsync(new() { Value = "20 %" }));
        Assert.Equal(0.2m, view.Rig.Headroom);
        await part.InvokeAsync(() => part.Find("#rig-name").ChangeAsync(new() { Value = " " }));
        Assert.Equal("Pier Theatre", view.Rig.Name);
        Assert.Contains("needs a name", part.Find("#rig-name-about").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_lead_is_added_changed_and_removed()
    {
        var view = await OpenAsync(SmallRig.Text);
        var part = Show<GearPanel>(view);
        await part.InvokeAsync(() => Button(part, "Add a lead").ClickAsync(new()));
        await part.InvokeAsync(() => Button(part, "Add a lead").ClickAsync(new()));
        Assert.Equal(["daisy chain", "daisy chain 2"], view.Rig.Leads.Select(lead => lead.Id));
        Assert.All(view.Rig.Leads, lead => Assert.Equal((LeadType.DaisyChain, 5), (lead.Type, lead.Plugs)));
        await part.InvokeAsync(() => part.Find("[data-gear='daisy chain'] .more").ClickAsync(new()));
        await part.InvokeAsync(() => part.Find("#lead-0-tail").ChangeAsync(new() { Value = "1.2 m" }));
        Assert.Equal(new Metres(1.2m), view.Rig.Leads[0].Tail);
        await part.InvokeAsync(() => Button(part, "Remove daisy chain").ClickAsync(new()));
        Assert.Equal("daisy chain 2", Assert.Single(view.Rig.Leads).Id);
    }

    private static async Task<IReadOnlyCollection<string>> OpenedAsync(IRenderedComponent<PartHost> part, string load)
    {
        await part.InvokeAsync(() => part.Find($"[data-gear='{load}'] .more").ClickAsync(new()));
        return [.. Figures(part, load)];
    }

    private static List<string> Figures(IRenderedComponent<PartHost> part, string id) =>
        [.. part.FindAll($"[data-gear='{id}'] > .figs .fig").Select(figure => figure.TextContent.Trim())];

    private static AngleSharp.Dom.IElement Button(IRenderedComponent<PartHost> part, string text) =>
        part.FindAll("button").First(button => button.TextContent.Trim() == text);
}
