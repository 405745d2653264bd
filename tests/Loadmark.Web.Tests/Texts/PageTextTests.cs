namespace Loadmark.Web.Tests.Texts;

/// <summary>A translator has every text of the page in one file, and no other.</summary>
public sealed class PageTextTests
{
    /// <summary>LOADMARK_UPDATE_EXPECTED=1 writes the file anew.</summary>
    [Fact]
    public void The_file_of_texts_lists_what_the_page_uses_and_no_more()
    {
        // Of two that differ in capitals alone a resource file holds one; see below.
        var all = PageTexts.All().DistinctBy(static text => text.ToUpperInvariant()).ToList();
        if (Environment.GetEnvironmentVariable("LOADMARK_UPDATE_EXPECTED") == "1")
            PageTexts.Write(PageTexts.ListPath, all.Select(static text => (text, text)));
        Assert.True(all.Count > 300, $"{all.Count}");
        Assert.Equal(all, PageTexts.Listed().Select(static text => text.Name));
        Assert.All(PageTexts.Listed(), static text => Assert.Equal(text.Name, text.Value));
    }

    /// <summary>A resource file holds no two names that differ in capitals alone.</summary>
    [Fact]
    public void No_two_texts_differ_in_capitals_alone() =>
        Assert.Empty(PageTexts.All().GroupBy(static text => text, StringComparer.OrdinalIgnoreCase).Where(static twins => twins.Count() > 1).Select(static twins => string.Join(" / ", twins)));

    [Fact]
    public void A_text_that_is_computed_is_one_whose_texts_are_known() =>
        Assert.Equal(
            PageTexts.Computed.Order(StringComparer.Ordinal),
            PageTexts.Uses().Where(static use => use.Texts.IsEmpty).Select(static use => use.Expression).Distinct().Order(StringComparer.Ordinal));

    [Fact]
    public void Every_place_in_a_text_is_filled_by_number()
    {
        foreach (var text in PageTexts.All())
        {
            for (var place = 0; place < 9; place++)
            {
                if (text.Contains($"{{{place + 1}}}", StringComparison.Ordinal))
                    Assert.Contains($"{{{place}}}", text, StringComparison.Ordinal);
            }
        }
    }

    [Theory]
    [InlineData("@T[\"a\"]", "a")]
    [InlineData("T[x == \"q\" ? \"a\" : \"b {0}\", y[\"no\"]]", "a|b {0}")]
    [InlineData("T[\"say \\\"so\\\"\"]", "say \"so\"")]
    [InlineData("Volt[\"a\"]", null)]
    public void Uses_are_found_in_source(string source, string? texts) =>
        Assert.Equal(texts, TextUse.Find(source).Select(static use => string.Join('|', use.Texts)).SingleOrDefault());
}
