using Bunit;
using Loadmark.Core.Gear;
using Loadmark.Core.Readings;
using Loadmark.Files.Library;
using Loadmark.Web.Pages;
using Loadmark.Web.Parts;
using Loadmark.Workshop.Library;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.Extensions.DependencyInjection;

namespace Loadmark.Web.Tests.Library;

/// <summary>The library's pages, and the library on a rig's page.</summary>
public sealed class GearPagesTests : PageTest
{
    private const string Gear = """
        loads:
          drive-3: { name: Left of the pair, label: 9V DC 12mA, words: [drives, seaside] }
          delay-2: { name: Delay with the long tail, label: 9V DC 300mA }
        supplies:
          brick: { outlets: { 1: 9 V 150 mA, 2: 9 V 500 mA } }

        """;

    private LibraryEditor Editor => Services.GetRequiredService<LibraryEditor>();

    [Fact]
    public async Task The_list_is_searched_with_typos_and_filtered_by_kind_and_word()
    {
        await KeepAsync(Gear);
        var page = Render<GearPage>();
        page.WaitForAssertion(() => Assert.Equal(["delay-2", "drive-3", "brick"], Tags(page)));
        await page.InvokeAsync(() => page.Find("input[type=search]").InputAsync("dealy long"));
        Assert.Equal(["delay-2"], Tags(page));
        await page.InvokeAsync(() => page.Find("input[type=search]").InputAsync(""));
        await page.InvokeAsync(() => page.FindAll("select").First(static select => select.TextContent.Contains("supplies only", StringComparison.Ordinal)).ChangeAsync("Supply"));
        Assert.Equal(["brick"], Tags(page));
        await page.InvokeAsync(() => page.FindAll("select").First(static select => select.TextContent.Contains("supplies only", StringComparison.Ordinal)).ChangeAsync(""));
        await page.InvokeAsync(() => page.FindAll("select").First(static select => select.TextContent.Contains("any word", StringComparison.Ordinal)).ChangeAsync("drives"));
        Assert.Equal(["drive-3"], Tags(page));
    }

    [Fact]
    public async Task Gear_is_added_by_its_label_and_what_is_there_stays_as_it_is()
    {
        await KeepAsync(Gear);
        var page = Render<GearPage>();
        await page.InvokeAsync(() => page.Find("#gear-entry").InputAsync("chorus-1: 9V DC 45mA\ndrive-3: 9V DC 99mA"));
        page.WaitForAssertion(() => Assert.Contains("is in the library already", page.Find("#gear-entry-preview").TextContent, StringComparison.Ordinal));
        await page.InvokeAsync(() => Button(page, "Add to the library").ClickAsync(new()));
        page.WaitForAssertion(() => Assert.Contains("chorus-1", Tags(page)));
        var library = await Cache.NowAsync(Stop);
        Assert.Equal("9V DC 45mA", library.Find(GearKind.Load, "chorus-1")!.Piece!.Load!.Label!.Text);
        Assert.Equal("9V DC 12mA", library.Find(GearKind.Load, "drive-3")!.Piece!.Load!.Label!.Text);
    }

    [Fact]
    public async Task A_file_shows_what_it_would_do_and_changes_only_what_is_ticked()
    {
        await KeepAsync(Gear);
        var page = Render<GearPage>();
        const string File = "loads:\n  drive-3: { label: 9V DC 20mA }\n  delay-2: { label: 9V DC 250mA }\n  NEW-1: { label: 9V DC 5mA }\n  BAD: { colour: red }\n";
        page.FindComponents<InputFile>()[0].UploadFiles(InputFileContent.CreateFromText(File, "more.yaml"));
        page.WaitForAssertion(() => Assert.Contains("1 new, 0 the same, 2 that differ, 1 refused.", page.Find(".import").TextContent, StringComparison.Ordinal));
        Assert.Contains("9V DC 20mA, was 9V DC 12mA", page.Find(".import").TextContent, StringComparison.Ordinal);
        await page.InvokeAsync(() => page.FindAll(".import li").First(static row => row.TextContent.Contains("drive-3", StringComparison.Ordinal)).QuerySelector("input")!.ChangeAsync(new() { Value = true }));
        await page.InvokeAsync(() => Button(page, "Take 2 into the library").ClickAsync(new()));
        page.WaitForAssertion(() => Assert.Contains("1 added, 1 changed, 1 left as they are", page.Find(".import").TextContent, StringComparison.Ordinal));
        var library = await Cache.NowAsync(Stop);
        Assert.Equal(
            ["9V DC 20mA", "9V DC 300mA", "9V DC 5mA"],
            ((string[])["drive-3", "delay-2", "NEW-1"]).Select(tag => library.Find(GearKind.Load, tag)!.Piece!.Load!.Label!.Text));
    }

    [Fact]
    public async Task Readings_make_the_figure_and_an_outlier_is_marked_and_left_out()
    {
        var gear = await KeepAsync(Gear);
        foreach (var amps in (decimal[])[0.0100m, 0.0101m, 0.0099m, 0.0100m, 0.0500m])
            await Editor.MeasureAsync(gear.Id, new DrawReading { Current = new Amps(amps), Taken = DateTimeOffset.UnixEpoch }, Stop);
        var page = Render<GearItemPage>(parameters => parameters.Add(one => one.Id, gear.Id));
        page.WaitForAssertion(() => Assert.Equal(5, page.FindAll("tbody tr").Count));
        Assert.Contains("outlier", page.FindAll("tbody tr")[4].TextContent, StringComparison.Ordinal);
        Assert.Contains("mean of 4 readings; 1 left out", page.Find("dl.keys").TextContent, StringComparison.Ordinal);

        await page.InvokeAsync(() => Button(page, "Add the reading").ClickAsync(new()));
        page.WaitForAssertion(() => Assert.Contains("Type a current such as 210 mA", page.Find("#reading-fault").TextContent, StringComparison.Ordinal));
        await page.InvokeAsync(() => page.Find(".readingform input").ChangeAsync(new() { Value = "10.2 mA" }));
        await page.InvokeAsync(() => page.Find(".readingform").SubmitAsync(EventArgs.Empty));
        page.WaitForAssertion(() => Assert.Equal(6, page.FindAll("tbody tr").Count));
        Assert.Equal(new Amps(0.01004m), (await Cache.NowAsync(Stop)).Gear.Single(one => one.Id == gear.Id).Piece!.Load!.Run);
        Assert.StartsWith("10.04 mA", page.Find("dl.keys dd").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_field_is_changed_told_in_the_history_and_taken_back()
    {
        var gear = await KeepAsync(Gear);
        var page = Render<GearItemPage>(parameters => parameters.Add(one => one.Id, gear.Id));
        page.WaitForAssertion(() => Assert.NotNull(page.Find("#gear-label")));
        await page.InvokeAsync(() => page.Find("#gear-label").ChangeAsync(new() { Value = "9V DC 20mA" }));
        page.WaitForAssertion(() => Assert.Contains("Label, as printed: 9V DC 20mA, was 9V DC 12mA", page.Find(".history").TextContent, StringComparison.Ordinal));
        await page.InvokeAsync(() => page.Find("#gear-words").ChangeAsync(new() { Value = "drives, loud" }));
        page.WaitForAssertion(() => Assert.Contains("Filed under: drives, loud, was drives, seaside", page.Find(".history").TextContent, StringComparison.Ordinal));
        await page.InvokeAsync(() => Button(page, "Take this change back").ClickAsync(new()));
        page.WaitForAssertion(() => Assert.Equal(4, page.FindAll(".history > li").Count));
        Assert.Equal("drives, seaside", page.Find("#gear-words").GetAttribute("value"));
        Assert.Equal("9V DC 20mA", page.Find("#gear-label").GetAttribute("value"));

        await page.InvokeAsync(() => page.Find("#gear-tag").ChangeAsync(new() { Value = "DELAY-2" }));
        page.WaitForAssertion(() => Assert.Contains("Another piece of gear is called DELAY-2.", page.Find("#gear-tag-about").TextContent, StringComparison.Ordinal));
        await page.InvokeAsync(() => Button(page, "Remove drive-3 from the library").ClickAsync(new()));
        page.WaitForAssertion(() => Assert.Null(page.FindAll("#gear-label").SingleOrDefault()));
        await page.InvokeAsync(() => Button(page, "Put it back").ClickAsync(new()));
        page.WaitForAssertion(() => Assert.NotNull(page.Find("#gear-label")));
    }

    [Fact]
    public async Task Rigs_that_a_change_means_something_to_are_told_with_verdicts_and_take_or_keep()
    {
        var gear = await KeepAsync("loads:\n  drive-3: { label: 9V DC 12mA }\n");
        foreach (var name in (string[])["Harbour", "Pier"])
            await Store.AddAsync(name, $"rig: {name}\nloads:\n  drive-3: {{ label: 9V DC 12mA }}\nsupplies:\n  brick: {{ outlets: {{ 1: 9 V DC 100 mA }} }}\nwired:\n  - {{ from: brick/1, to: drive-3 }}\n", Stop);
        await KeepAsync("loads:\n  drive-3: { label: 9V DC 200mA }\n");

        var page = Render<GearItemPage>(parameters => parameters.Add(one => one.Id, gear.Id));
        page.WaitForAssertion(() => Assert.Equal(2, page.FindAll(".affectedrows .beforeafter").Count));
        Assert.Matches("(?s)Unsure.*Fails", page.Find(".affectedrows .beforeafter").TextContent);
        await page.InvokeAsync(() => page.FindAll("button").First(static button => button.GetAttribute("aria-label") == "Take the new figure in Harbour").ClickAsync(new()));
        page.WaitForAssertion(() => Assert.Single(page.FindAll(".affectedrows li")));
        await page.InvokeAsync(() => page.FindAll("button").First(static button => button.GetAttribute("aria-label") == "Keep the old in Pier").ClickAsync(new()));
        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".affectedrows li")));
        var texts = new Dictionary<string, string>();
        foreach (var rig in await Store.ListAsync(Stop))
            texts[rig.Name] = (await Store.FindAsync(rig.Id, Stop))!.Text;
        Assert.Contains("200mA", texts["Harbour"], StringComparison.Ordinal);
        Assert.Contains("12mA", texts["Pier"], StringComparison.Ordinal);
        Assert.Equal(["Harbour", "Pier"], page.FindAll("section[aria-labelledby='used-title'] a").Select(static link => link.TextContent).Order());
    }

    [Fact]
    public async Task On_a_rig_gear_is_added_with_the_keyboard_and_goes_on_coming_from_the_library()
    {
        await KeepAsync(Gear);
        var view = await OpenAsync("rig: r\n");
        var part = Show<LibraryPicker>(view);
        await part.InvokeAsync(() => part.Find("input[role=combobox]").InputAsync("d"));
        part.WaitForAssertion(() => Assert.NotEmpty(part.FindAll("[role=option]")));
        await part.InvokeAsync(() => part.Find("input[role=combobox]").InputAsync("delay"));
        part.WaitForAssertion(() => Assert.Contains("delay-2", part.Find("[role=option]").TextContent, StringComparison.Ordinal));
        await part.InvokeAsync(() => part.Find("input[role=combobox]").KeyDownAsync("ArrowDown"));
        await part.InvokeAsync(() => part.Find("input[role=combobox]").KeyDownAsync("Enter"));
        part.WaitForAssertion(() => Assert.Contains("delay-2 is added.", part.Markup, StringComparison.Ordinal));
        Assert.NotNull(Assert.Single(view.Rig.Loads).FromLibrary);
        Assert.Contains("from: library", view.Session.Text, StringComparison.Ordinal);

        await part.InvokeAsync(() => part.Find("input[type=checkbox]").ChangeAsync(new() { Value = false }));
        await part.InvokeAsync(() => part.Find("input[role=combobox]").InputAsync("brick"));
        part.WaitForAssertion(() => Assert.NotEmpty(part.FindAll("[role=option]")));
        await part.InvokeAsync(() => part.Find("input[role=combobox]").KeyDownAsync("Enter"));
        part.WaitForAssertion(() => Assert.Single(view.Rig.Supplies));
        Assert.Null(view.Rig.Supplies[0].FromLibrary);
    }

    [Fact]
    public async Task A_load_of_a_rig_is_kept_in_the_library_and_a_difference_told()
    {
        var view = await OpenAsync(SmallRig.Text);
        var part = Show<GearPanel>(view);
        await part.InvokeAsync(() => part.FindAll("button").First(static button => button.GetAttribute("aria-label") == "More about delay-2").ClickAsync(new()));
        part.WaitForAssertion(() => Assert.NotNull(Button(part, "Keep in the library")));
        await part.InvokeAsync(() => Button(part, "Keep in the library").ClickAsync(new()));
        part.WaitForAssertion(() => Assert.Contains("says the same there", part.Find(".librarykeep").TextContent, StringComparison.Ordinal));
        Assert.Equal(view.Rig.Loads[1], (await Cache.NowAsync(Stop)).Find(GearKind.Load, "delay-2")!.Piece!.Load);

        await part.InvokeAsync(() => part.Find("[data-gear='delay-2'] .platelabel").ChangeAsync(new() { Value = "9V DC 250mA" }));
        part.WaitForAssertion(() => Assert.Contains("It says otherwise there", part.Find(".librarykeep").TextContent, StringComparison.Ordinal));
        await part.InvokeAsync(() => Button(part, "Keep these figures there").ClickAsync(new()));
        part.WaitForAssertion(() => Assert.Contains("says the same there", part.Find(".librarykeep").TextContent, StringComparison.Ordinal));
        Assert.Equal(2, (await Whole.Gear.HistoryAsync((await Cache.NowAsync(Stop)).Find(GearKind.Load, "delay-2")!.Id, Stop)).Length);
    }

    private static AngleSharp.Dom.IElement Button<T>(IRenderedComponent<T> part, string text)
        where T : Microsoft.AspNetCore.Components.IComponent => part.FindAll("button").First(button => button.TextContent == text);

    private static List<string> Tags(IRenderedComponent<GearPage> page) => [.. page.FindAll(".gearrows a").Select(static link => link.TextContent)];

    private async Task<LibraryGear> KeepAsync(string yaml)
    {
        var preview = ImportPreview.Of(await Cache.NowAsync(Stop), GearFileReader.Read(yaml, "gear.yaml"));
        Assert.Empty((await Editor.TakeAsync(preview, static _ => true, "test", Stop)).Overtaken);
        return (await Cache.NowAsync(Stop)).Find(preview.Rows[0].Kind!.Value, preview.Rows[0].Tag)!;
    }
}
