using Bunit;
using Loadmark.Web.Parts;

namespace Loadmark.Web.Tests.Parts;

/// <summary>What is chosen on the sheet before anybody chooses.</summary>
public sealed class SheetPanelTests : PageTest
{
    [Theory]
    [InlineData("", false)]
    [InlineData("leads:\n  flip: { type: reversing, to_buy: yes }\n", true)]
    public async Task The_shopping_list_is_chosen_where_something_is_to_be_bought(string leads, bool isChosen)
    {
        var part = Show<SheetPanel>(await OpenAsync(SmallRig.Text + leads));
        Assert.Equal(isChosen, part.Find("input[value=shopping]").HasAttribute("checked"));
        Assert.True(part.Find("input[value=leads]").HasAttribute("checked"));
    }
}
