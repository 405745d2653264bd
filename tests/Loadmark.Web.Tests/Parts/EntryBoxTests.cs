using Bunit;
using Loadmark.Files;
using Loadmark.Files.Entry;
using Loadmark.Web.Parts;
using Loadmark.Web.Views;
using Microsoft.AspNetCore.Components.Forms;

namespace Loadmark.Web.Tests.Parts;

/// <summary>Many things at once, shown as they read before they are taken.</summary>
public sealed class EntryBoxTests : PageTest
{
    [Fact]
    public async Task Lines_show_how_they_read_and_the_button_counts()
    {
        var (view, part) = await ShowAsync(EntryKind.Loads, "rig: r\n");
        Assert.True(Add(part).HasAttribute("disabled"));
        part.Find("textarea").Input("drive-3: 9V DC 12mA centre negative\ndelay-2: 9V 2.7W");
        Assert.Equal("Add 2 loads", Add(part).TextContent);
        var preview = part.FindAll(".preview li").Select(line => line.TextContent).ToList();
        Assert.Contains("9 V, 12 mA, centre negative", preview[0], StringComparison.Ordinal);
        Assert.Contains("300 mA derived", preview[1], StringComparison.Ordinal);

        part.Find("textarea").Input("drive-3: 9V DC 12mA");
        Assert.Equal("Add 1 load", Add(part).TextContent);
        Assert.Empty(view.Rig.Loads);

        await Add(part).ClickAsync(new());
        Assert.Equal("drive-3", Assert.Single(view.Rig.Loads).Id);
        Assert.Equal("adding 1 load", view.Session.Kept!.UndoWhat);
        Assert.Equal("", part.Find("textarea").GetAttribute("value") ?? "");
        Assert.Contains("adding 1 load", part.Find("[role=status]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_a_line_does_not_tell_reads_as_not_known()
    {
        var (_, part) = await ShowAsync(EntryKind.Loads, "rig: r\n");
        part.Find("textarea").Input("valve-1: 12V 600mA\nmulti-2: 9V AC 500mA\ntuner-1: 40mA");
        var preview = part.FindAll(".preview li").Select(line => line.TextContent).ToList();
        Assert.Contains("12 V, d.c. or a.c. not known, 600 mA, polarity not known, plug not known", preview[0], StringComparison.Ordinal);
        Assert.Contains("9 V a.c., 500 mA, plug", preview[1], StringComparison.Ordinal);
        Assert.Contains("voltage not known, ", preview[2], StringComparison.Ordinal);
        Assert.DoesNotContain("9 V", preview[2], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Refused_lines_stay_and_say_why()
    {
        var (view, part) = await ShowAsync(EntryKind.Loads, "rig: r\n");
        part.Find("textarea").Input("drive-3: 9V 12mA\ndrive-3: 9V 15mA\ndelay-2: 9V 300mA");
        Assert.Contains("1 line cannot be taken", part.Markup, StringComparison.Ordinal);
        Assert.Equal("Add 2 loads", Add(part).TextContent);
        await Add(part).ClickAsync(new());
        Assert.Equal(["drive-3", "delay-2"], view.Rig.Loads.Select(load => load.Id));
        Assert.Equal("drive-3: 9V 15mA", part.Find("textarea").GetAttribute("value"));
    }

    [Fact]
    public async Task No_tag_is_proposed_that_gear_of_another_rig_has()
    {
        await Store.AddAsync("other", "rig: other\nloads:\n  L-01: { label: 9V 12mA }\n", Stop);
        var (_, part) = await ShowAsync(EntryKind.Loads, "rig: r\n");

        // The other rigs are looked at aside, in a moment.
        var proposed = "";
        for (var time = 0; time < 600 && proposed != "L-02"; time++)
        {
            part.Find("textarea").Input("9V 3mA");
            proposed = part.Find(".preview li strong").TextContent;
            await Task.Delay(100, Stop);
        }

        Assert.Equal("L-02", proposed);
    }

    [Fact]
    public async Task Unread_pieces_of_a_line_show()
    {
        var (_, part) = await ShowAsync(EntryKind.Loads, "rig: r\n");
        part.Find("textarea").Input("drive-3: 9V 12mA blue lamp");
        Assert.Contains("lamp", part.Find(".preview .unread").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_a_piece_is_said_to_be_holds_for_every_line_that_has_it_and_can_be_taken_back()
    {
        var (view, part) = await ShowAsync(EntryKind.Loads, "rig: r\n");
        part.Find("textarea").Input("drive-3: 9V 12mA blue lamp\n9V 3mA treble mender\ndelay-2: 9V 300mA blue lamp");
        await part.InvokeAsync(() => part.FindAll(".preview select")[0].ChangeAsync(new() { Value = "Nothing" }));
        await part.InvokeAsync(() => part.FindAll(".preview select")[1].ChangeAsync(new() { Value = "Name" }));
        await part.InvokeAsync(() => part.FindAll(".preview select")[2].ChangeAsync(new() { Value = "Kind" }));
        await part.InvokeAsync(() => part.FindAll(".preview select")[2].ChangeAsync(new() { Value = "" }));
        await part.InvokeAsync(() => part.FindAll(".preview select")[0].ChangeAsync(new() { Value = "Nothing" }));
        Assert.Equal(["drive-3", "treble mender", "delay-2"], part.FindAll(".preview li strong").Select(static tag => tag.TextContent));
        await Add(part).ClickAsync(new());
        Assert.Equal(["9V 12mA", "9V 3mA", "9V 300mA"], view.Rig.Loads.Select(static load => load.Label!.Text));
        Assert.All(view.Rig.Loads, static load => Assert.Equal((null, null), (load.Name, load.Kind)));
    }

    [Fact]
    public async Task What_a_line_comes_to_stands_on_the_same_row()
    {
        var (_, part) = await ShowAsync(EntryKind.Supplies, "rig: r\n");
        part.Find("textarea").Input("\nbrick: INPUT 100-240V~\n  1-4: 9 V 150 mA\n\n  5: 12 V\nqwerty\nwall: 9V 2A");
        Assert.Equal(
            ["", "brick", "1-4", "", "5", "qwerty", "wall"],
            part.FindAll(".preview li").Select(static line => line.TextContent.Contains("qwerty", StringComparison.Ordinal) ? "qwerty" : line.QuerySelector("strong")?.TextContent ?? ""));
        Assert.Equal("8", part.Find("textarea").GetAttribute("rows"));
    }

    [Theory]
    [InlineData("true", true)]
    [InlineData("false", false)]
    [InlineData("", null)]
    public async Task Isolation_is_asked_with_a_supply_of_several_outlets(string answer, bool? isIsolated)
    {
        var (view, part) = await ShowAsync(EntryKind.Supplies, "rig: r\n");
        part.Find("textarea").Input("brick: INPUT 100-240V~\n  1-4: 9 V 150 mA\nrow: isolated outputs 1-4 9V 100mA\nwall: 9V 2A");
        await part.InvokeAsync(() => Assert.Single(part.FindAll(".preview select")).ChangeAsync(new() { Value = answer }));
        await Add(part).ClickAsync(new());
        Assert.Equal([isIsolated, null, null], view.Rig.Supplies.Select(static supply => supply.Isolated));
    }

    [Fact]
    public async Task Supplies_are_read_with_their_outlets()
    {
        var (view, part) = await ShowAsync(EntryKind.Supplies, "rig: r\n");
        part.Find("textarea").Input("brick: INPUT 100-240V~ 50/60Hz\n  1-4: 9 V 150 mA\n  5: 9 V 500 mA; 12 V 400 mA");
        Assert.Contains("5 outlets", part.Find(".preview li").TextContent, StringComparison.Ordinal);
        Assert.Equal("Add 1 supply", Add(part).TextContent);
        await Add(part).ClickAsync(new());
        Assert.Equal(5, Assert.Single(view.Rig.Supplies).Outlets.Count);
    }

    [Fact]
    public async Task A_supply_entered_again_takes_its_feeds_along_where_it_has_their_outlets()
    {
        var (view, part) = await ShowAsync(EntryKind.Supplies, SmallRig.Text);
        part.Find("textarea").Input("brick: INPUT 100-240V~ 50/60Hz\n  1: 9 V 150 mA");
        if (!Add(part).HasAttribute("disabled"))
            await Add(part).ClickAsync(new());
        Assert.Equal(view.Rig, RigFileReader.Read(view.Session.Text, "").Rig);
        Assert.All(view.Rig.Wired!.Value, feed => Assert.Contains(view.Rig.Supplies.Single(one => one.Id == feed.From[0].Supply).Outlets, outlet => outlet.Id == feed.From[0].Outlet));
    }

    [Fact]
    public async Task A_supply_entered_again_with_other_voltages_keeps_the_rig_whole()
    {
        var (view, part) = await ShowAsync(EntryKind.Supplies, SmallRig.Text);
        part.Find("textarea").Input("brick: INPUT 100-240V~ 50/60Hz\n  1-3: 12 V 150 mA");
        Assert.Contains("replaces", part.Find(".preview").TextContent, StringComparison.Ordinal);
        await Add(part).ClickAsync(new());
        Assert.Equal("12 V 150 mA", view.Rig.Supplies[0].Outlets[1].Label.Text);
        Assert.Equal(view.Rig, RigFileReader.Read(view.Session.Text, "").Rig);
    }

    [Fact]
    public async Task A_table_shows_what_each_column_became()
    {
        var (view, part) = await ShowAsync(EntryKind.Loads, "rig: r\n");
        part.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText("tag,label,colour\ndrive-3,9V 12mA,blue\ndelay-2,9V 300mA,red\n", "loads.csv"));
        part.WaitForAssertion(() => Assert.Equal("Add 2 loads", Add(part).TextContent));
        Assert.Contains("colour → left out", part.Markup, StringComparison.Ordinal);
        await Add(part).ClickAsync(new());
        Assert.Equal(2, view.Rig.Loads.Count);
    }

    [Fact]
    public async Task A_file_that_is_no_text_is_refused()
    {
        var (view, part) = await ShowAsync(EntryKind.Loads, "rig: r\n");
        part.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromBinary([0xFF, 0xFE, 0x00, 0xC3], "loads.csv"));
        part.WaitForAssertion(() => Assert.Contains("loads.csv is over 1 MiB, or is not a text", part.Find("[role=status]").TextContent, StringComparison.Ordinal));
        Assert.Empty(view.Rig.Loads);
    }

    [Fact]
    public async Task Hostile_lines_are_text()
    {
        var (_, part) = await ShowAsync(EntryKind.Loads, "rig: r\n");
        part.Find("textarea").Input("<script>alert(1)</script>: 9V 12mA <b>x</b>");
        Assert.Empty(part.FindAll("script"));
        Assert.Empty(part.FindAll("b"));
        Assert.Contains("<script>alert(1)</script>", part.Find(".preview").TextContent, StringComparison.Ordinal);
    }

    private async Task<(RigView View, IRenderedComponent<PartHost> Part)> ShowAsync(EntryKind kind, string text)
    {
        var view = await OpenAsync(text);
        return (view, Show<EntryBox>(view, ("Kind", kind)));
    }

    private static AngleSharp.Dom.IElement Add(IRenderedComponent<PartHost> part) => part.FindAll(".entry .row > button")[0];
}
