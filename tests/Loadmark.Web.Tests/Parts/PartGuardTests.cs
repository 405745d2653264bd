using Bunit;
using Loadmark.Web.Parts;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;
using Microsoft.Extensions.DependencyInjection;

namespace Loadmark.Web.Tests.Parts;

/// <summary>A part that stops says so, alone.</summary>
public sealed class PartGuardTests : PageTest
{
    private bool _isBroken = true;

    [Fact]
    public void A_part_that_throws_says_so_and_comes_back_and_the_others_stay()
    {
        var page = Render(Page);
        var alert = page.Find("[role=alert]");
        Assert.Contains("This part of the page stopped: diagram", alert.TextContent, StringComparison.Ordinal);
        Assert.Contains("the <b>scale</b> is gone", alert.TextContent, StringComparison.Ordinal);
        Assert.Contains($"by this id: {Services.GetRequiredService<Loadmark.Web.RequestIds.PageRequestId>().Id}", alert.TextContent, StringComparison.Ordinal);
        Assert.Equal("still here", page.Find("#other").TextContent);

        _isBroken = false;
        page.Find("[role=alert] button").Click();
        page.WaitForAssertion(() => Assert.Empty(page.FindAll("[role=alert]")));
        Assert.Contains("well again", page.Markup, StringComparison.Ordinal);
        Assert.Equal("still here", page.Find("#other").TextContent);
    }

    [Fact]
    public void A_part_that_is_still_broken_says_so_again()
    {
        var page = Render(Page);
        page.Find("[role=alert] button").Click();
        page.WaitForAssertion(() => Assert.Single(page.FindAll("[role=alert] button")));
    }

    private void Page(RenderTreeBuilder builder)
    {
        builder.OpenComponent<PartGuard>(0);
        builder.AddComponentParameter(1, "Name", "diagram");
        builder.AddComponentParameter(2, "ChildContent", (RenderFragment)(inner =>
        {
            inner.OpenComponent<Part>(0);
            inner.AddComponentParameter(1, "Draw", (Func<RenderFragment>)Fragile);
            inner.CloseComponent();
        }));
        builder.CloseComponent();
        builder.OpenComponent<PartGuard>(3);
        builder.AddComponentParameter(4, "Name", "findings");
        builder.AddComponentParameter(5, "ChildContent", (RenderFragment)(inner => inner.AddMarkupContent(0, "<p id='other'>still here</p>")));
        builder.CloseComponent();
    }

    private RenderFragment Fragile() => builder =>
    {
        if (_isBroken)
            throw new InvalidOperationException("the <b>scale</b> is gone");
        builder.AddContent(0, "well again");
    };

    private sealed class Part : ComponentBase
    {
        [Parameter] public Func<RenderFragment> Draw { get; set; } = null!;

        protected override void BuildRenderTree(RenderTreeBuilder builder) => Draw()(builder);
    }
}
