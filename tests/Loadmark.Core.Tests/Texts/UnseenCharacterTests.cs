using System.Text;
using Loadmark.Core.Texts;

namespace Loadmark.Core.Tests.Texts;

/// <summary>Which characters are not seen: by the categories of the Unicode Character Database (UnicodeData.txt).</summary>
public sealed class UnseenCharacterTests
{
    [Theory]
    [InlineData(0x0000)] // Cc
    [InlineData(0x0009)] // Cc, a tab
    [InlineData(0x001B)] // Cc, with which a terminal is driven
    [InlineData(0x0085)] // Cc
    [InlineData(0x00AD)] // Cf, a soft hyphen
    [InlineData(0x200B)] // Cf, a space of no width
    [InlineData(0x200D)] // Cf, a joiner
    [InlineData(0x2028)] // Zl
    [InlineData(0x2029)] // Zp
    [InlineData(0x202E)] // Cf, turns the line around
    [InlineData(0x2066)] // Cf
    [InlineData(0xE000)] // Co
    [InlineData(0xFEFF)] // Cf, a byte order mark
    [InlineData(0xE0041)] // Cf, a tag
    [InlineData(0xFFFFE)] // Cn
    public void Controls_formats_and_characters_without_meaning_are_not_seen(int character) => Assert.True(UnseenCharacter.Is(new Rune(character)));

    [Theory]
    [InlineData(' ')]
    [InlineData('a')]
    [InlineData(0x0301)] // an accent that stands on another letter
    [InlineData(0x0430)]
    [InlineData(0x2393)]
    [InlineData(0xFFFD)]
    [InlineData(0x1F3B8)] // a guitar
    public void All_else_is_seen(int character) => Assert.False(UnseenCharacter.Is(new Rune(character)));

    [Fact]
    public void What_stands_in_the_place_is_seen_itself() => Assert.False(UnseenCharacter.Is(new Rune(UnseenCharacter.Sign)));
}
