using Loadmark.Files;
using Loadmark.Files.Library;
using Loadmark.Workshop.Library;

namespace Loadmark.Workshop.Tests.Library;

/// <summary>When two pieces of gear of one tag are plainly the same.</summary>
public sealed class GearMatchingTests
{
    [Theory]
    [InlineData("loads: { a: { label: 9V DC 12mA } }", "loads: { a: { label: 9V ⎓ 12 mA } }", true)]
    [InlineData("loads: { a: { label: 9V DC 12mA } }", "loads: { a: { label: 9V DC 15mA } }", false)]
    [InlineData("loads: { a: { label: 9V DC 12mA } }", "loads: { a: { } }", false)]
    [InlineData("loads: { a: { } }", "loads: { a: { } }", false)]
    [InlineData("loads: { a: { name: Left, label: 9V } }", "loads: { a: { name: left, label: 18V } }", true)]
    [InlineData("loads: { a: { kind: digital, label: 9V } }", "loads: { a: { kind: valve, label: 9V } }", false)]
    [InlineData("loads: { a: { kind: digital, label: 9V } }", "loads: { a: { kind: large digital, label: 9V } }", false)]
    [InlineData("loads: { a: { kind: digital, label: 9V } }", "loads: { a: { kind: blue, label: 9V } }", true)]
    [InlineData("supplies: { a: { outlets: { 1-2: 9 V 1 A } } }", "supplies: { a: { outlets: { 1-2: 9V 1000mA } } }", true)]
    [InlineData("supplies: { a: { outlets: { 1-2: 9 V 1 A } } }", "supplies: { a: { outlets: { 1-3: 9 V 1 A } } }", false)]
    [InlineData("loads: { a: { label: 9V 12mA } }", "loads: { a: { label: 9V ⎓ 12 mA } }", true)]
    [InlineData("loads: { a: { label: 9V AC 12mA } }", "loads: { a: { label: 9V DC 12mA } }", false)]
    [InlineData("loads: { a: { label: 9V 12mA centre positive } }", "loads: { a: { label: 9V 12mA centre negative } }", false)]
    [InlineData("loads: { a: { label: centre positive } }", "loads: { a: { label: centre positive } }", false)]
    [InlineData("leads: { a: { type: reversing } }", "leads: { a: { type: reversing, length: 1 m } }", true)]
    [InlineData("leads: { a: { type: reversing } }", "leads: { a: { type: daisy chain, plugs: 2 } }", false)]
    public void Name_or_label_tell(string one, string other, bool isSame)
    {
        Assert.Equal(isSame, GearMatching.IsSame(PieceOf(one), PieceOf(other)));
        Assert.Equal(isSame, GearMatching.IsSame(PieceOf(other), PieceOf(one)));
    }

    [Fact]
    public void Things_of_different_kinds_never_match() =>
        Assert.False(GearMatching.IsSame(PieceOf("loads: { a: { name: Left } }"), PieceOf("supplies: { a: { name: Left, outlets: { 1: 9 V } } }")));

    private static GearPiece PieceOf(string text)
    {
        var reading = RigFileReader.Read($"rig: r\n{text}\n", "");
        Assert.Empty(reading.Errors);
        return Assert.Single(GearPiece.AllOf(reading.Rig!));
    }
}
