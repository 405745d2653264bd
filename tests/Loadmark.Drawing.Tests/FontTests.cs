using System.Text;
using Loadmark.Drawing.Fonts;

namespace Loadmark.Drawing.Tests;

/// <summary>The typeface of paper.</summary>
public sealed class FontTests
{
    /// <summary>The signs of IEC 60417 that Unicode has, comparison, units, arrows and marks, and letters of three scripts.</summary>
    private const string Needed = "⎓⏦∿≥≤≠≈±×÷−·…–—•“”‘’→²µΩ°√½✓✔☐⚠●■△áÄßñŁőşΩλДжІґẂ€";

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void The_typeface_has_every_sign_that_a_sheet_says(bool isBold) =>
        Assert.Empty(Needed.EnumerateRunes().Where(rune => !PaperFonts.Of(isBold).Has(rune)).Select(static rune => rune.ToString()));

    [Fact]
    public void What_the_typeface_lacks_is_told_once_and_has_the_width_of_a_box()
    {
        Assert.Equal(["日", "本", "🎸"], PaperFonts.MissingIn("a日b本c日🎸").Select(static rune => rune.ToString()));
        Assert.Equal(PaperFonts.Regular.WidthOf("日", 100), PaperFonts.Regular.WidthOf("🎸", 100));
        Assert.True(PaperFonts.Regular.WidthOf("日", 100) > 10);
    }

    /// <summary>Advance widths of Noto Sans Regular 2.004 as FontTools reads them from the table hmtx: A 639, i 258, 0 572, space 260.</summary>
    [Theory]
    [InlineData("A", 639)]
    [InlineData("i", 258)]
    [InlineData("0", 572)]
    [InlineData(" ", 260)]
    [InlineData("A0i", 639 + 572 + 258)]
    public void Widths_are_those_of_the_font(string text, double width) =>
        Assert.Equal(width, PaperFonts.Regular.WidthOf(text, 1000), 3);

    [Fact]
    public void The_licence_goes_with_the_font()
    {
        var text = File.ReadAllText(Repository.PathOf("src/Loadmark.Drawing/Fonts/OFL.txt"), Encoding.UTF8);
        Assert.Contains("SIL Open Font License, Version 1.1", text, StringComparison.Ordinal);
        Assert.Contains("Loadmark Sans", text, StringComparison.Ordinal);
    }
}
