using Loadmark.Drawing.Scenes;
using Loadmark.Drawing.Texts;

namespace Loadmark.Drawing.Tests;

/// <summary>Texts from files are made harmless and fitted to their place.</summary>
public sealed class SafeTextTests
{
    [Theory]
    [InlineData("plain", "plain")]
    [InlineData("a\tb\nc", "a b c")]
    [InlineData("\u202Eevil\u202C", "·evil·")]
    [InlineData("\u0000x\u001b[31m\u0085", "·x·[31m·")]
    [InlineData("a\u0301\u0302\u0303\u0304b", "a\u0301\u0302b")]
    [InlineData("9 V ⎓ Ω", "9 V ⎓ Ω")]
    public void Text_is_cleaned(string text, string clean) => Assert.Equal(clean, SafeText.Clean(text));

    [Fact]
    public void Half_a_character_becomes_a_sign_of_its_own() => Assert.Equal("\uFFFD alone", SafeText.Clean("\uD83C alone"));

    [Fact]
    public void Text_is_shortened_between_characters_never_within_one()
    {
        for (var width = 0.0; width < 120; width += 0.5)
        {
            var fitted = FittedText.Of("Gitarre 🎸🎸 und 長い名前", TextRole.Body, isBold: false, width);
            Assert.True(TextWidth.Of(fitted, TextRole.Body, isBold: false) <= width + 1e-9);
            Assert.Equal(fitted, SafeText.Clean(fitted));
        }
    }

    [Fact]
    public void Text_that_fits_is_left_alone() => Assert.Equal("fits", FittedText.Of("fits", TextRole.Body, isBold: false, TextWidth.Of("fits", TextRole.Body, isBold: false)));
}
