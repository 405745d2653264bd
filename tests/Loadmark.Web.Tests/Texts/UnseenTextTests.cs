using AngleSharp.Dom;
using Bunit;
using Loadmark.Core.Texts;
using Loadmark.Files.Library;
using Loadmark.Web.Pages;
using Loadmark.Web.Parts;
using Loadmark.Workshop.Library;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.Extensions.DependencyInjection;

namespace Loadmark.Web.Tests.Texts;

/// <summary>
/// What a file says is shown with a sign for each character that is not seen, wherever the page shows it as text; the fields keep what is
/// typed in them as it is.
/// </summary>
public sealed class UnseenTextTests : PageTest
{
    private const string Turned = "\u202Edetrever";
    private const string Hidden = "with a\u200B gap";

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(90);

    private static string Rig => $$"""
        rig: "Pier {{Turned}}"
        mains: 230 V 50 Hz
        loads:
          drive{{Turned}}: { name: "{{Hidden}}", kind: "analog drive", label: "9V DC 12mA centre negative 5.5x2.1 {{Turned}}", board: "left {{Hidden}}" }
          delay{{Hidden}}: { name: "{{Turned}}", kind: digital, label: "9V DC 300mA 18V centre negative 5.5x2.1" }
          preamp-2: { name: "{{Turned}}", label: "18V DC 60mA centre negative 5.5x2.1" }
        supplies:
          brick{{Turned}}:
            name: "{{Hidden}}"
            label: "{{Turned}} INPUT 100-240V~ 50/60Hz 0.6A"
            outlets:
              left{{Hidden}}: { label: "9 V DC 150 mA", polarity: centre negative, plug: 5.5x2.1 }
              right{{Turned}}: { label: "9 V DC 500 mA {{Hidden}}; 18 V DC 250 mA", polarity: centre negative, plug: 5.5x2.1 }
          other{{Hidden}}: { name: "{{Turned}}", isolated: true, total: 10 W, outlets: { 1-2: "9 V DC 200 mA centre negative" } }
        leads:
          chain{{Turned}}: { type: daisy chain, plugs: 3 }
        wired:
          - { from: "brick{{Turned}}/left{{Hidden}}", lead: "chain{{Turned}}", to: ["drive{{Turned}}"] }
          - { from: "brick{{Turned}}/right{{Turned}}", at: 18 V, to: "delay{{Hidden}}" }
        signal: ["drive{{Turned}}", "amp{{Hidden}}"]

        """;

    [Theory]
    [InlineData(typeof(FindingsPanel))]
    [InlineData(typeof(GearPanel))]
    [InlineData(typeof(WirePanel))]
    [InlineData(typeof(PlanPanel))]
    [InlineData(typeof(StartPanel))]
    public async Task No_part_of_a_rigs_page_shows_unseen_characters(Type part)
    {
        var view = await OpenAsync(Rig);
        var shown = Render<PartHost>(host => host.Add(one => one.View, view).Add(one => one.Part, () => builder =>
        {
            builder.OpenComponent(0, part);
            builder.AddComponentParameter(1, "View", view);
            builder.CloseComponent();
        }));
        AssertNothingUnseen(shown);
        foreach (var button in Enumerable.Range(0, shown.FindAll("button[aria-expanded=false]").Count))
        {
            var closed = shown.FindAll("button[aria-expanded=false]");
            if (button >= closed.Count)
                break;
            await shown.InvokeAsync(() => closed[button].ClickAsync(new()));
            AssertNothingUnseen(shown);
        }
    }

    [Fact]
    public async Task A_rigs_page_shows_none_in_its_bar_its_title_and_its_diagram()
    {
        var view = await OpenAsync(Rig);
        var page = Render<RigPage>(page => page.Add(one => one.Id, view.Session.Kept!.Id).Add(one => one.Part, "wire"));
        page.WaitForAssertion(() => Assert.NotEmpty(page.FindComponents<RigDrawing>()));
        await page.FindComponent<RigDrawing>().Instance.SetWidthAsync(900);
        AssertNothingUnseen(page);
        Assert.Equal("Pier ·detrever", page.Find("h1").TextContent);
        await page.InvokeAsync(() => page.FindAll(".plugs button")[0].ClickAsync(new()));
        AssertNothingUnseen(page);
    }

    [Fact]
    public async Task Plans_starts_and_what_to_buy_show_none()
    {
        var view = await OpenAsync(Rig);
        var plan = Show<PlanPanel>(view);
        await plan.InvokeAsync(() => Button(plan, "Plan").ClickAsync(new()));
        plan.WaitForAssertion(() => Assert.NotEmpty(plan.FindAll(".answer")), Patience);
        AssertNothingUnseen(plan);

        var start = Show<StartPanel>(view);
        await start.InvokeAsync(() => Button(start, "Switch on").ClickAsync(new()));
        await start.InvokeAsync(() => Button(start, "Sample").ClickAsync(new()));
        start.WaitForAssertion(() => Assert.NotEmpty(start.FindAll("#start-time")), Patience);
        start.WaitForAssertion(() => Assert.NotEmpty(start.FindAll("table.spread")), Patience);
        AssertNothingUnseen(start);

        var buy = Show<BuyPanel>(view);
        buy.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText(
            $"supply,price,outlets\ntwin{Turned},20,1-3: 18 V DC 500 mA centre negative 5.5x2.1\nsmall{Hidden},5,1: 9 V 1 mA\n", $"list{Turned}.csv"));
        buy.WaitForAssertion(() => Assert.False(Button(buy, "Choose supplies").HasAttribute("disabled")));
        AssertNothingUnseen(buy);
        await buy.InvokeAsync(() => Button(buy, "Choose supplies").ClickAsync(new()));
        buy.WaitForAssertion(() => Assert.NotEmpty(buy.FindAll(".option")), Patience);
        AssertNothingUnseen(buy);
    }

    [Fact]
    public async Task The_lists_of_rigs_and_of_gear_show_none()
    {
        var view = await OpenAsync(Rig);
        var rigs = Render<RigsPage>();
        rigs.WaitForAssertion(() => Assert.NotEmpty(rigs.FindAll(".rigname")));
        await rigs.InvokeAsync(() => rigs.Find("#ask-loads").InputAsync($"drive{Turned}: 9V DC 12mA {Hidden}"));
        await rigs.InvokeAsync(() => rigs.Find("#ask-supplies").InputAsync($"wall{Hidden}: 9V DC 2A {Turned}"));
        rigs.WaitForAssertion(() => Assert.NotEmpty(rigs.FindAll(".points dt")));
        AssertNothingUnseen(rigs);
        Assert.Equal("Pier ·detrever", rigs.Find(".rigname").TextContent);

        var editor = Services.GetRequiredService<LibraryEditor>();
        foreach (var row in GearFileReader.Read(Rig, "hidden.yaml").Rows)
            await editor.AddAsync(row.Piece!, [Hidden], "typed", Stop);
        var gear = Render<GearPage>();
        gear.WaitForAssertion(() => Assert.NotEmpty(gear.FindAll(".rigname")));
        gear.FindComponents<InputFile>()[0].UploadFiles(InputFileContent.CreateFromText(Rig.Replace("12mA", "13mA", StringComparison.Ordinal), $"more{Turned}.yaml"));
        gear.WaitForAssertion(() => Assert.NotEmpty(gear.FindAll(".import")));
        AssertNothingUnseen(gear);
        foreach (var piece in (await Cache.NowAsync(Stop)).Gear)
        {
            var item = Render<GearItemPage>(page => page.Add(one => one.Id, piece.Id));
            item.WaitForAssertion(() => Assert.NotEmpty(item.FindAll(".history li")));
            AssertNothingUnseen(item);
        }

        var panel = Show<GearPanel>(view);
        await panel.InvokeAsync(() => panel.Find("#library-find").InputAsync("drive"));
        panel.WaitForAssertion(() => Assert.NotEmpty(panel.FindAll("#library-options li")));
        await panel.InvokeAsync(() => panel.Find("#enter-loads").InputAsync($"fuzz{Turned}: 9V DC 10mA {Hidden}\nname{Hidden}, nothing"));
        AssertNothingUnseen(panel);
    }

    [Fact]
    public async Task What_can_be_edited_stays_as_it_is()
    {
        var view = await OpenAsync(Rig);
        var panel = Show<GearPanel>(view);
        Assert.Contains($"drive{Turned}", panel.FindAll("input").Select(static field => field.GetAttribute("value")));
        Assert.Contains($"chain{Turned}", panel.FindAll("input").Select(static field => field.GetAttribute("value")));
        await panel.InvokeAsync(() => panel.FindAll(".more")[0].ClickAsync(new()));
        Assert.Contains(Hidden, panel.FindAll("input").Select(static field => field.GetAttribute("value")));
        var list = Render<RigsPage>();
        list.WaitForAssertion(() => Assert.NotEmpty(list.FindAll(".rigname")));
        await list.InvokeAsync(() => Button(list, "Duplicate").ClickAsync(new()));
        Assert.Contains($"Pier {Turned}, copy", (await Store.ListAsync(Stop)).Select(static rig => rig.Name));
    }

    private static IElement Button<T>(IRenderedComponent<T> part, string text)
        where T : IComponent => part.FindAll("button").First(button => button.TextContent.Trim() == text);

    private static void AssertNothingUnseen<T>(IRenderedComponent<T> part)
        where T : IComponent
    {
        var shown = part.Nodes.SelectMany(static node => node.DescendantsAndSelf()).SelectMany(Shown).ToList();
        Assert.NotEmpty(shown);
        Assert.All(shown, static text => Assert.DoesNotContain(text.EnumerateRunes(), static rune => rune.Value is not ('\n' or '\r' or '\t') && UnseenCharacter.Is(rune)));
    }

    /// <summary>What is seen or heard of a node; not what can be edited or is for the program alone.</summary>
    private static IEnumerable<string> Shown(INode node) => node switch
    {
        IText { Parent: IElement { LocalName: "textarea" } } => [],
        IText text => [text.Data],
        IElement element => ((string[])["title", "aria-label", "aria-valuetext", "placeholder", "alt"]).Select(name => element.GetAttribute(name)).OfType<string>(),
        _ => [],
    };
}
