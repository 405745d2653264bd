namespace Loadmark.Core.Tests.Checks.Rules;

/// <summary>Tags that one takes for another are told, and no others.</summary>
public sealed class NamesAlikeTests
{
    /// <summary>Pairs from Unicode Technical Standard #39, confusables.txt, and what an invisible character does.</summary>
    [Theory]
    [InlineData("delay-2", "delаy-2", "a (U+0061) ≠ а (U+0430)")]
    [InlineData("delay-2", "delay\u20102", "- (U+002D) ≠ ‐ (U+2010)")]
    [InlineData("delay-2", "ｄelay-2", "d (U+0064) ≠ ｄ (U+FF44)")]
    [InlineData("delay-2", "delay-\U0001D7D0", "2 (U+0032) ≠ 𝟐 (U+1D7D0)")]
    [InlineData("delay-1", "delay-l", "1 (U+0031) ≠ l (U+006C)")]
    [InlineData("drive-0", "drive-O", "0 (U+0030) ≠ O (U+004F)")]
    [InlineData("comp", "cornp", "m (U+006D) ≠ r (U+0072)")]
    [InlineData("delay-2", "delay\u200B-2", "- (U+002D) ≠ \u200B (U+200B)")]
    [InlineData("delay-2", "delay-2\u202E", "7 ≠ 8 characters")]
    public void Two_that_look_alike_are_told_with_where_they_differ(string one, string other, string working) =>
        Assert.Equal(working, Expect.Breaks(RuleSamples.New().Load(one, Plate.Dc(9, 12)).Load(other, Plate.Dc(9, 12)).Check(), "names-alike").Working);

    [Theory]
    [InlineData("delay\u200B-3", "U+200B")]
    [InlineData("delаy-3", "а = U+0430")]
    public void A_tag_that_is_not_typed_as_it_is_seen_is_noted(string tag, string working)
    {
        var finding = Expect.Breaks(RuleSamples.New().Load("delay-2", Plate.Dc(9, 12)).Load(tag, Plate.Dc(9, 12)).Check(), "names-alike");
        Assert.Equal((Core.Checks.Severity.Note, working), (finding.Severity, finding.Working));
    }

    [Theory]
    [InlineData("delay-2", "delay-3")]
    [InlineData("дисторшн", "хорус")]
    [InlineData("Übersteuerung", "Écho")]
    [InlineData("delay-2", "Delay-2")]
    [InlineData("リバーブ", "ディレイ")]
    public void Other_tags_are_not(string one, string other) =>
        Expect.Keeps(RuleSamples.New().Load(one, Plate.Dc(9, 12)).Load(other, Plate.Dc(9, 12)).Check(), "names-alike");
}
