using AngleSharp.Html.Parser;
using Loadmark.Core.Checks;
using Loadmark.Simulation.Checks;
using Loadmark.Web.Views;

namespace Loadmark.Web.Tests.Views;

/// <summary>What the page shows of the rules' pages is text for people, and not the signs that it is written with.</summary>
public sealed class RulePagesTests
{
    private static readonly string[] Signs = ["|", "**", "`", "](", "##", "---", "<", "&"];

    public static TheoryData<string> Rules => [.. RuleBook.Rules.Select(rule => rule.Id.Name), .. CircuitRules.Rules.Select(rule => rule.Id.Name)];

    [Theory]
    [MemberData(nameof(Rules))]
    public void Every_rule_says_why_without_a_sign_of_its_file(string rule)
    {
        var shown = Shown(RulePages.WhyOf(rule));
        Assert.True(shown.Length > 40, $"{rule}: '{shown}'");
        Assert.All(Signs, sign => Assert.DoesNotContain(sign, shown, StringComparison.Ordinal));
    }

    [Fact]
    public void Every_page_is_of_a_rule() => Assert.Equal(Rules.Select(static rule => rule.Data).Order(StringComparer.Ordinal), RulePages.Rules.Order(StringComparer.Ordinal));

    [Fact]
    public void A_rule_that_there_is_not_has_no_why() => Assert.Equal("", RulePages.WhyOf("no-such-rule"));

    [Theory]
    [InlineData("One line\nand *the* next: `a|b`.", "<p>One line\nand <em>the</em> next: <code>a|b</code>.</p>")]
    [InlineData("**Never**\n\n- one\n- two", "<p><strong>Never</strong></p>\n<ul>\n<li>one</li>\n<li>two</li>\n</ul>")]
    [InlineData("See [the *other*](other.md) and [this](https://rigs.example/a).", "<p>See the <em>other</em> and <a href=\"https://rigs.example/a\">this</a>.</p>")]
    [InlineData("A ![picture](a.png), a [trap](javascript:alert(1)).", "<p>A picture, a trap.</p>")]
    [InlineData("<b onclick=\"x\">bold</b>", "<p>&lt;b onclick=&quot;x&quot;&gt;bold&lt;/b&gt;</p>")]
    public void Markdown_is_written_as_the_page_shows_it(string markdown, string html) => Assert.Equal(html, PageMarkdown.ToHtml(PageMarkdown.Read(markdown)));

    [Fact]
    public void A_table_is_a_table()
    {
        var html = PageMarkdown.ToHtml(PageMarkdown.Read("Before:\n\n| class | draw |\n| --- | --- |\n| analog | 20 mA |\n"));
        var table = new HtmlParser().ParseDocument(html).QuerySelector("table")!;
        Assert.Equal(["class", "draw"], table.QuerySelectorAll("thead th").Select(static cell => cell.TextContent));
        Assert.Equal(["analog", "20 mA"], table.QuerySelectorAll("tbody td").Select(static cell => cell.TextContent));
    }

    private static string Shown(string html) => new HtmlParser().ParseDocument(html).Body!.TextContent;
}
