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
        var wanted = view.Preview.Rig;
        Assert.NotEmpty(wanted.ToBuy);
        await part.InvokeAsync(() => Button(part, "Put these into the rig, wired so").ClickAsync(new()));
        Assert.Equal(wanted, view.Rig);
        Assert.Null(view.Preview);
        Assert.StartsWith("putting ", view.Session.Kept!.UndoWhat, StringComparison.Ordinal);
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
