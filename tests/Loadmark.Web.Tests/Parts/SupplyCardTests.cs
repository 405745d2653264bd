using Bunit;
using Loadmark.Files;
using Loadmark.Web.Parts;
using Loadmark.Web.Views;

namespace Loadmark.Web.Tests.Parts;

/// <summary>A supply and its outlets, typed in place. Whatever is typed, what is kept reads again.</summary>
public sealed class SupplyCardTests : PageTest
{
    [Fact]
    public async Task Outlets_are_added_by_a_line_and_a_refused_line_stays()
    {
        var view = await OpenAsync(SmallRig.Text);
        var part = Show<GearPanel>(view);
        await part.InvokeAsync(() => part.Find("[data-gear=brick] .more").ClickAsync(new()));
        await part.InvokeAsync(() => part.Find("#more-0").ChangeAsync(new() { Value = "3-4: 9 V 1 A" }));
        await part.InvokeAsync(() => part.Find("form.addoutlet").SubmitAsync());
        Assert.Equal("There is an outlet 3 already.", part.Find("form.addoutlet [role=alert]").TextContent);
        Assert.Equal("3-4: 9 V 1 A", part.Find("#more-0").GetAttribute("value"));
        Assert.Equal(3, view.Rig.Supplies[0].Outlets.Count);

        await part.InvokeAsync(() => part.Find("#more-0").ChangeAsync(new() { Value = "4-6: 9 V 1 A" }));
        await part.InvokeAsync(() => part.Find("form.addoutlet").SubmitAsync());
        Assert.Equal(["1", "2", "3", "4", "5", "6"], view.Rig.Supplies[0].Outlets.Select(outlet => outlet.Id));
        AssertReads(view);
    }

    [Fact]
    public async Task A_renamed_supply_keeps_its_feeds()
    {
        var view = await OpenAsync(SmallRig.Text);
        var part = Show<GearPanel>(view);
        await part.InvokeAsync(() => part.Find("[data-gear=brick] input.tag").ChangeAsync(new() { Value = "a/b" }));
        part.WaitForAssertion(() => Assert.Contains("'/'", part.Find("[data-gear=brick] [role=alert]").TextContent, StringComparison.Ordinal));
        await part.InvokeAsync(() => part.Find("[data-gear=brick] input.tag").ChangeAsync(new() { Value = "block" }));
        Assert.All(view.Rig.Wired!.Value, feed => Assert.Equal("block", feed.From[0].Supply));
        AssertReads(view);
    }

    [Fact]
    public async Task A_removed_outlet_takes_its_feed_with_it()
    {
        var view = await OpenAsync(SmallRig.Text);
        var part = Show<GearPanel>(view);
        await part.InvokeAsync(() => part.Find("[aria-label='More about outlet brick/2']").ClickAsync(new()));
        await part.InvokeAsync(() => part.FindAll("button").First(button => button.TextContent.Trim() == "Remove outlet brick/2").ClickAsync(new()));
        Assert.Equal(["1", "3"], view.Rig.Supplies[0].Outlets.Select(outlet => outlet.Id));
        Assert.Single(view.Rig.Wired!.Value);
        AssertReads(view);
    }

    [Fact]
    public async Task An_outlet_is_relabelled_and_its_fields_are_kept()
    {
        var view = await OpenAsync(SmallRig.Text);
        var part = Show<GearPanel>(view);
        await part.InvokeAsync(() => part.Find("[aria-label='Label of outlet brick/1']").ChangeAsync(new() { Value = "9 V DC 200 mA" }));
        Assert.Equal("9 V DC 200 mA", view.Rig.Supplies[0].Outlets[0].Label.Text);
        await part.InvokeAsync(() => part.Find("[aria-label='More about outlet brick/1']").ClickAsync(new()));
        await part.InvokeAsync(() => part.Find("#outlet-0-0-source_ohms").ChangeAsync(new() { Value = "0.1 Ω" }));
        Assert.Equal(new Ohms(0.1m), view.Rig.Supplies[0].Outlets[0].SourceOhms);
        AssertReads(view);
    }

    [Fact]
    public async Task A_new_label_without_the_voltage_that_the_outlet_is_set_to_keeps_the_rig_whole()
    {
        var view = await OpenAsync(SmallRig.Text);
        var part = Show<GearPanel>(view);
        await part.InvokeAsync(() => part.Find("[aria-label='Label of outlet brick/2']").ChangeAsync(new() { Value = "12 V DC 500 mA" }));
        Assert.Equal("12 V DC 500 mA", view.Rig.Supplies[0].Outlets[1].Label.Text);
        AssertReads(view);
    }

    [Fact]
    public async Task An_outlet_that_leaves_its_bank_keeps_the_file_readable()
    {
        var view = await OpenAsync("rig: r\nsupplies:\n  twin:\n    outlets:\n      1: { label: 9 V 1 A, bank: left }\n      2: { label: 9 V 1 A }\n    banks: { left: 500 mA }\n");
        var part = Show<GearPanel>(view);
        await part.InvokeAsync(() => part.Find("[aria-label='More about outlet twin/1']").ClickAsync(new()));
        await part.InvokeAsync(() => part.Find("#outlet-0-0-bank").ChangeAsync(new() { Value = "" }));
        Assert.Null(view.Rig.Supplies[0].Outlets[0].Bank);
        AssertReads(view);
    }

    [Fact]
    public async Task A_new_label_of_a_supply_whose_outlets_say_nothing_keeps_the_rig_whole()
    {
        var view = await OpenAsync("rig: r\nloads: { drive-3: { label: 9V 12mA } }\nsupplies:\n  wall: { label: OUTPUT 9V 1A, outlets: { 1: '' } }\nwired:\n  - { from: wall/1, at: 9 V, to: drive-3 }\n");
        var part = Show<GearPanel>(view);
        await part.InvokeAsync(() => part.Find("[aria-label='Label of wall']").ChangeAsync(new() { Value = "OUTPUT 12V 1A" }));
        Assert.Equal("OUTPUT 12V 1A", view.Rig.Supplies[0].Label!.Text);
        AssertReads(view);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Outlets_that_came_from_the_label_are_those_of_the_new_one_and_feeds_of_the_others_go(bool byForm)
    {
        var view = await OpenAsync(
            """
            rig: r
            loads: { drive-3: { label: 9V 12mA }, delay-2: { label: 9V 90mA } }
            supplies: { brick: "OUTPUTS 1-4 9V 100mA" }
            wired: [ { from: brick/1, to: drive-3 }, { from: brick/4, to: delay-2 } ]
            """);
        var part = Show<GearPanel>(view);
        if (byForm)
            await part.InvokeAsync(() => part.Find("[data-gear=brick] .more").ClickAsync(new()));
        var field = byForm ? "#supply-0-label" : "[aria-label='Label of brick']";
        await part.InvokeAsync(() => part.Find(field).ChangeAsync(new() { Value = "OUTPUTS 1-2 9V 100mA, 3 12V 400mA" }));
        Assert.Equal(["1", "2", "3"], view.Rig.Supplies[0].Outlets.Select(outlet => outlet.Id));
        Assert.Equal(["drive-3"], Assert.Single(view.Rig.Wired!.Value).To);
        AssertReads(view);
    }

    [Fact]
    public async Task What_a_label_does_not_tell_shows_as_not_known_and_never_as_what_is_computed_with()
    {
        var view = await OpenAsync("rig: r\nsupplies: { wall: { label: OUTPUT 12V 1A, outlets: { 1: '' } }, blank: { label: '', outlets: { 1: '', 2: 9 V } }, row: \"isolated outputs 1-4 9V 100mA\" }\n");
        var part = Show<GearPanel>(view);
        Assert.Equal(["12 V, 1 A, stated", "d.c. or a.c. not known", "polarity not known"], await OpenedAsync(part, "wall/1"));
        Assert.Equal(["voltage not known", "limit not known", "d.c. or a.c. not known", "polarity not known"], await OpenedAsync(part, "blank/1"));
        Assert.Equal(["9 V, stated", "limit not known"], await OpenedAsync(part, "blank/2"));
        await part.InvokeAsync(() => part.Find("[data-gear=row] .more").ClickAsync(new()));
        Assert.Equal("isolated outlets, stated", part.Find("[aria-label='Figures of row'] .fig").TextContent.Trim());
    }

    [Theory]
    [InlineData("The outlets of brick are isolated", true)]
    [InlineData("The outlets of brick share a return", false)]
    public async Task Isolation_is_asked_until_it_is_answered(string answer, bool isIsolated)
    {
        var view = await OpenAsync("rig: r\nsupplies:\n  brick: { outlets: { 1-2: 9 V 100 mA } }\n  told: { isolated: yes, outlets: { 1-2: 9 V 100 mA } }\n  wall: { label: 9V 1A, outlets: { 1: '' } }\n");
        var part = Show<GearPanel>(view);
        Assert.Equal(2, part.FindAll(".asked button").Count);
        await part.InvokeAsync(() => part.Find($"[aria-label='{answer}']").ClickAsync(new()));
        Assert.Equal(isIsolated, view.Rig.Supplies[0].Isolated);
        part.WaitForAssertion(() => Assert.Empty(part.FindAll(".asked")));
        AssertReads(view);
    }

    [Fact]
    public async Task A_removed_supply_leaves_its_loads()
    {
        var view = await OpenAsync(SmallRig.Text);
        var part = Show<GearPanel>(view);
        await part.InvokeAsync(() => part.Find("[data-gear=brick] .more").ClickAsync(new()));
        await part.InvokeAsync(() => part.FindAll("button").First(button => button.TextContent.Trim() == "Remove brick").ClickAsync(new()));
        Assert.Empty(view.Rig.Supplies);
        Assert.Equal(3, view.Rig.Loads.Count);
        AssertReads(view);
    }

    private static async Task<IEnumerable<string>> OpenedAsync(IRenderedComponent<PartHost> part, string outlet)
    {
        await part.InvokeAsync(() => part.Find($"[aria-label='More about outlet {outlet}']").ClickAsync(new()));
        return Figures(part, outlet);
    }

    private static IEnumerable<string> Figures(IRenderedComponent<PartHost> part, string outlet) =>
        part.FindAll($"[aria-label='Figures of outlet {outlet}'] .fig").Select(static figure => figure.TextContent.Trim());

    private static void AssertReads(RigView view)
    {
        var reading = RigFileReader.Read(view.Session.Text, "");
        Assert.Empty(reading.Errors);
        Assert.Equal(view.Rig, reading.Rig);
    }
}
