using System.Globalization;
using Loadmark.Terminal;
using Spectre.Console;

namespace Loadmark.Tests;

public sealed class CellWidthTests
{
    [Fact]
    public void The_short_cut_agrees_with_the_tables()
    {
        var narrow = Enumerable.Range(0, char.MaxValue + 1).Select(code => (char)code).Where(CellWidth.IsOne).ToList();
        Assert.True(narrow.Count > 500);
        Assert.All(narrow, character => Assert.Equal(1, character.ToString().GetCellWidth()));
        Assert.DoesNotContain(narrow, character => char.GetUnicodeCategory(character) is UnicodeCategory.Format or UnicodeCategory.Control);
    }

    [Theory]
    [InlineData("", 0)]
    [InlineData("9 V ⎓ 300 mA", 12)]
    [InlineData("電源", 4)]
    [InlineData("e\u0301", 1)]
    public void Wide_and_joining_characters_count_as_the_terminal_shows_them(string text, int cells) => Assert.Equal(cells, CellWidth.Of(text));
}
