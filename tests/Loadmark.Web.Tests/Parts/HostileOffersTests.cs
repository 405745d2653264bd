using Bunit;
using Loadmark.Files;
using Loadmark.Web.Parts;
using Microsoft.AspNetCore.Components.Forms;

namespace Loadmark.Web.Tests.Parts;

/// <summary>A price list that somebody else made, on the page: refused with the line, or shown as text with a sign for what is not seen.</summary>
public sealed class HostileOffersTests : PageTest
{
    private const string Header = "supply,price,outlets\n";
    private const string Outlets = "1-4: 9 V 500 mA centre negative 5.5x2.1";
    private const string Rig = "rig: Board\nmains: 230 V 50 Hz\nloads:\n  drive-1: 9V DC 12mA centre negative 5.5x2.1\n  delay-2: 9V DC 300mA centre negative 5.5x2.1\nsupplies: {}\n";

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(90);

    [Theory]
    [InlineData("Line 2: price: expected a price", Header + "twin-1,=1+1," + Outlets)]
    [InlineData("Line 2: price: expected a price", Header + "twin-1,-1," + Outlets)]
    [InlineData("it is too large", Header + "twin-1,1000000000," + Outlets)]
    [InlineData("found \"2·0\"", Header + "twin-1,2\u200B0," + Outlets)]
    [InlineData("Line 2: '../x' cannot be the id", Header + "../x,20," + Outlets)]
    [InlineData("Line 2: '<script>alert(1)</script>' cannot be the id", Header + "<script>alert(1)</script>,20," + Outlets)]
    [InlineData("Line 2: the character U+0000 has no place", Header + "tw\0in,20," + Outlets)]
    [InlineData("Line 1: the column 'price' stands here a second time", "supply,price,price,outlets\ntwin-1,20,20," + Outlets)]
    [InlineData("Line 1: 'supply·' is not a column", "supply\u202E,price,outlets\ntwin-1,20," + Outlets)]
    public async Task What_no_list_can_have_is_refused_with_its_line(string message, string prices)
    {
        var part = Show<BuyPanel>(await OpenAsync(Rig));
        Choose(part, prices);
        part.WaitForAssertion(() => Assert.NotEmpty(part.FindAll(".faults li")));
        Assert.Contains(message, part.Find(".faults").TextContent, StringComparison.Ordinal);
        Assert.True(Button(part, "Choose supplies").HasAttribute("disabled"));
        Assert.Empty(part.FindAll("script"));
    }

    [Fact]
    public async Task A_cell_as_large_as_a_file_is_refused_in_a_few_words()
    {
        var part = Show<BuyPanel>(await OpenAsync(Rig));
        Choose(part, Header + new string('a', 1_000_000) + ",20," + Outlets);
        part.WaitForAssertion(() => Assert.Contains("it is longer than 64 characters", part.Find(".faults").TextContent, StringComparison.Ordinal), Patience);
        Assert.InRange(part.Find(".faults").TextContent.Length, 1, 500);
        Choose(part, Header + new string('a', 1_100_000));
        part.WaitForAssertion(() => Assert.Contains("the file is over 1 MiB", part.Find(".faults").TextContent, StringComparison.Ordinal), Patience);
    }

    [Theory]
    [InlineData("1-4", "1-4")]
    [InlineData("..", "..")]
    [InlineData("=cmd|calc!A0", "=cmd|calc!A0")]
    [InlineData("<b>twin", "<b>twin")]
    [InlineData("twin\u202E1", "twin·1")]
    [InlineData("twin\u200B1", "twin·1")]
    public async Task An_id_that_looks_like_something_else_is_shown_as_text_and_comes_into_the_rig_as_it_is(string id, string shown)
    {
        var view = await OpenAsync(Rig);
        var part = Show<BuyPanel>(view);
        Choose(part, $"{Header}{id},20,{Outlets}\n");
        part.WaitForAssertion(() => Assert.False(Button(part, "Choose supplies").HasAttribute("disabled")));
        await part.InvokeAsync(() => Button(part, "Choose supplies").ClickAsync(new()));
        part.WaitForAssertion(() => Assert.NotEmpty(part.FindAll(".option .opened")), Patience);
        Assert.Contains(shown, part.Find(".option .finding").TextContent, StringComparison.Ordinal);
        Assert.StartsWith($"{shown}/1", part.Find(".feedtable tbody th").TextContent, StringComparison.Ordinal);
        Assert.Empty(part.FindAll("b"));
        await part.InvokeAsync(() => Button(part, "Put these into the rig, wired so").ClickAsync(new()));
        Assert.Equal([id], RigFileReader.Read((await Store.FindAsync(view.Session.Kept!.Id, Stop))!.Text, "").Rig!.Supplies.Items.Select(static supply => supply.Id));
    }

    private static void Choose(IRenderedComponent<PartHost> part, string prices) =>
        part.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText(prices, "list.csv"));

    private static AngleSharp.Dom.IElement Button(IRenderedComponent<PartHost> part, string text) =>
        part.FindAll("button").First(button => button.TextContent.Trim() == text);
}
