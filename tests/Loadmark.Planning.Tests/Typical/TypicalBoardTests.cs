using Loadmark.Core.Checks;

namespace Loadmark.Planning.Tests.Typical;

/// <summary>An ordinary board is not asked about what nobody would ask: it is good, or has one note of what was taken from practice.</summary>
public sealed class TypicalBoardTests
{
    private const int Boards = 400;

    [Fact]
    public void Ordinary_boards_are_good_or_have_a_note()
    {
        for (var seed = 1; seed <= Boards; seed++)
        {
            var text = new TypicalBoard(seed).Write();
            var check = NameplateCheck.Of(Rigs.Read(text));
            Assert.True(check.Verdict <= Severity.Note, $"{check.Verdict}: {string.Join('\n', check.Findings)}\n{text}");
            Assert.True(check.Findings.Count <= 1, $"{string.Join('\n', check.Findings)}\n{text}");
        }
    }

    /// <summary>Where something printed says otherwise, it is asked about: one label changed ends the note.</summary>
    [Theory]
    [InlineData("9V DC 30mA centre positive", Severity.Harm)]
    [InlineData("12V DC 30mA", Severity.Unsure)]
    [InlineData("9V AC 30mA", Severity.Harm)]
    [InlineData("30mA", Severity.Unsure)]
    [InlineData("9V DC 600mA", Severity.Fails)]
    public void One_label_that_says_otherwise_is_told(string label, Severity atLeast)
    {
        for (var seed = 1; seed <= Boards / 10; seed++)
        {
            var text = new TypicalBoard(seed).Write();
            var start = text.IndexOf("label: \"", StringComparison.Ordinal) + 8;
            var changed = text[..start] + label + text[text.IndexOf('"', start)..];
            Assert.True(NameplateCheck.Of(Rigs.Read(changed)).Verdict >= atLeast, changed);
        }
    }
}
