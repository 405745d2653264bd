using Bunit;
using Loadmark.Web.Parts;
using Microsoft.AspNetCore.Components.Forms;

namespace Loadmark.Web.Tests.Parts;

/// <summary>Supplies chosen from a price list.</summary>
public sealed class BuyPanelTests : PageTest
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(90);

    [Fact]
    public async Task From_the_example_list_supplies_are_chosen_compared_and_taken()
    {
        var view = await OpenAsync(PageExamples.Read("to-buy"));
        var part = Show<BuyPanel>(view);
        Assert.True(Button(part, "Choose supplies").HasAttribute("disabled"));
        Button(part, "Try it with the example list").Click();
        Assert.Contains("The example list:", part.Find("[role=status]").TextContent, StringComparison.Ordinal);
        await part.InvokeAsync(() => Button(part, "Choose supplies").ClickAsync(new()));
        part.WaitForAssertion(() => Assert.NotEmpty(part.FindAll(".option")), Patience);

        // The cheapest is open and on trial; each point has a plan of its own.
        Assert.NotNull(view.Preview);
        var prices = part.FindAll(".option .finding > strong").Select(price => decimal.Parse(price.TextContent, System.Globalization.CultureInfo.InvariantCulture)).ToList();
        Assert.Equal(prices.Order(), prices);
        var front = part.FindComponents<PlotView>();
        Assert.Equal(prices.Count > 1 ? 1 : 0, front.Count);
        if (prices.Count > 1)
        {
            await front[0].Instance.SetWidthAsync(500);
            Assert.Equal("0 0 500 260", part.Find("svg.scene").GetAttribute("viewBox"));
            await part.InvokeAsync(() => part.FindAll(".option > button")[1].ClickAsync(new()));
            Assert.Single(part.FindAll(".option .opened"));
        }

        // Each says how it is judged, and what stands out among them is said first.
        Assert.All(part.FindAll(".option"), static option => Assert.NotEmpty(option.QuerySelectorAll(".finding .sev")));
        // It is proven where the answer says so, which on a busy machine it may not.
        var isProven = part.Find(".answer strong").TextContent.Contains("proven, as far as the list tells", StringComparison.Ordinal);
        Assert.StartsWith(isProven ? "Cheapest of all, proven: " : "Cheapest of those found: ", part.Find(".firsts li").TextContent, StringComparison.Ordinal);
        Assert.StartsWith("Cheapest of ", part.FindAll(".firsts li")[1].TextContent, StringComparison.Ordinal);
        Assert.Contains(" that is quiet", part.FindAll(".firsts li")[1].TextContent, StringComparison.Ordinal);
        var wanted = view.Preview.Rig;
        Assert.NotEmpty(wanted.ToBuy);
        await part.InvokeAsync(() => Button(part, "Put these into the rig, wired so").ClickAsync(new()));
        Assert.Equal(wanted, view.Rig);
        Assert.Null(view.Preview);
        Assert.StartsWith("putting ", view.Session.Kept!.UndoWhat, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_cheapest_that_is_quiet_is_listed_though_it_is_dear()
    {
        var view = await OpenAsync("rig: Board\nmains: 230 V 50 Hz\nloads:\n  delay-1: { kind: digital, label: 9V DC 50mA centre negative 5.5x2.1 }\n"
            + "  delay-2: { kind: digital, label: 9V DC 50mA centre negative 5.5x2.1 }\nsupplies: {}\n");
        var part = Show<BuyPanel>(view);
        part.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText("supply,price,outlets\ntwin-1,20,1-2: 9 V DC 500 mA centre negative 5.5x2.1\n", "list.csv"));
        part.WaitForAssertion(() => Assert.False(Button(part, "Choose supplies").HasAttribute("disabled")));
        await part.InvokeAsync(() => Button(part, "Choose supplies").ClickAsync(new()));
        part.WaitForAssertion(() => Assert.Equal(2, part.FindAll(".option").Count), Patience);
        Assert.Equal("Cheapest of all that is quiet, proven: 2 × twin-1, 40.00", part.FindAll(".firsts li")[1].TextContent);
        await part.InvokeAsync(() => part.FindAll(".option > button")[1].ClickAsync(new()));
        Assert.Equal(2, view.Preview!.Rig.Supplies.Count);
    }

    [Fact]
    public async Task What_a_plan_could_not_feed_is_carried_over()
    {
        var view = await OpenAsync(PageExamples.Read("to-buy"));
        Assert.Empty(Show<BuyPanel>(view).FindAll(".shortage"));
        view.Shortage = new Loadmark.Web.Views.Shortage([new Loadmark.Planning.Explaining.DarkLoad("synth-1", "12 V d.c. 400 mA")], null, AcrossBoards: false);
        Assert.Equal("12 V d.c. 400 mA: synth-1", Show<BuyPanel>(view).Find(".shortage li").TextContent);
    }

    [Fact]
    public async Task Boards_help_each_other_only_where_that_is_chosen()
    {
        const string Rig = "rig: Two boards\nmains: 230 V 50 Hz\nloads:\n  drive-1: { label: 9V DC 50mA centre negative 5.5x2.1, board: left }\nsupplies:\n"
            + "  own: { label: OUTPUT 9V DC 500mA centre negative 5.5x2.1, board: right }\n";
        var view = await OpenAsync(Rig);
        var part = Show<BuyPanel>(view);
        part.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText("supply,price,label\nwall-1,20,OUTPUT 9V DC 500mA centre negative 5.5x2.1\n", "list.csv"));
        part.WaitForAssertion(() => Assert.False(Button(part, "Choose supplies").HasAttribute("disabled")));
        Assert.False(part.Find("label.check input").HasAttribute("checked"));
        await part.InvokeAsync(() => Button(part, "Choose supplies").ClickAsync(new()));
        part.WaitForAssertion(() => Assert.Contains("20.00", part.Find(".option").TextContent, StringComparison.Ordinal), Patience);
        part.Find("label.check input").Change(true);
        await part.InvokeAsync(() => Button(part, "Choose supplies").ClickAsync(new()));
        part.WaitForAssertion(() => Assert.Contains("nothing: what is here suffices", part.Find(".option").TextContent, StringComparison.Ordinal), Patience);

        // Without a choice here, what the plan that fell short was allowed.
        view.Shortage = new Loadmark.Web.Views.Shortage([new Loadmark.Planning.Explaining.DarkLoad("drive-1", "9 V")], null, AcrossBoards: true);
        Assert.True(Show<BuyPanel>(view).Find("label.check input").HasAttribute("checked"));
        Assert.Empty(Show<BuyPanel>(await OpenAsync(PageExamples.Read("to-buy"))).FindAll("label.check"));
    }

    [Fact]
    public async Task Leads_that_an_option_needs_are_named()
    {
        var view = await OpenAsync("rig: Board\nmains: 230 V 50 Hz\nloads:\n  drive-1: { label: 9V DC 50mA centre positive 5.5x2.1 }\nsupplies: {}\n");
        var part = Show<BuyPanel>(view);
        part.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText("supply,price,label,lead,type\nwall-1,20,OUTPUT 9V DC 500mA centre negative 5.5x2.1,,\n,3,,flip-1,reversing\n", "list.csv"));
        part.WaitForAssertion(() => Assert.Contains("list.csv: supplies 1, leads 1.", part.Markup, StringComparison.Ordinal));
        await part.InvokeAsync(() => Button(part, "Choose supplies").ClickAsync(new()));
        part.WaitForAssertion(() => Assert.Equal("Its wiring needs leads that are to buy: 1 reversing lead.", part.Find(".opened .leadsneeded").TextContent), Patience);
        Assert.Contains("23.00", part.Find(".option").TextContent, StringComparison.Ordinal);
        await part.InvokeAsync(() => Button(part, "Put these into the rig, wired so").ClickAsync(new()));
        Assert.Equal(["wall-1", "flip-1"], view.Rig.ToBuy);
    }

    [Fact]
    public async Task A_list_that_cannot_be_read_says_where()
    {
        var part = Show<BuyPanel>(await OpenAsync(PageExamples.Read("to-buy")));
        part.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText("supply,price,label,outlets\nbrick,cheap,INPUT 230V~,1: 9 V 1 A\n", "list.csv"));
        part.WaitForAssertion(() => Assert.Contains("Line 2:", part.Find(".faults").TextContent, StringComparison.Ordinal));
        Assert.Contains("list.csv cannot be read", part.Markup, StringComparison.Ordinal);
        Assert.True(Button(part, "Choose supplies").HasAttribute("disabled"));
    }

    [Fact]
    public async Task Room_that_says_too_little_is_refused()
    {
        var part = Show<BuyPanel>(await OpenAsync(PageExamples.Read("to-buy")));
        Button(part, "Try it with the example list").Click();
        part.Find("#buy-room").Change("9 V");
        await part.InvokeAsync(() => Button(part, "Choose supplies").ClickAsync(new()));
        Assert.Contains("“9 V” does not tell a voltage and a current", part.Find("#buy-room-about").TextContent, StringComparison.Ordinal);
        Assert.Empty(part.FindAll(".answer"));
    }

    private static AngleSharp.Dom.IElement Button(IRenderedComponent<PartHost> part, string text) =>
        part.FindAll("button").First(button => button.TextContent == text);
}
