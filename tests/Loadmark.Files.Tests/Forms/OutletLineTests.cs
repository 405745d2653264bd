using CsCheck;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using Loadmark.Files.Forms;

namespace Loadmark.Files.Tests.Forms;

/// <summary>Outlets typed on one line.</summary>
public sealed class OutletLineTests
{
    [Theory]
    [InlineData("5: 9 V 500 mA; 12 V 400 mA", "5")]
    [InlineData("5-6: 9 V 150 mA", "5 6")]
    [InlineData("05–07 : 9 V 150 mA", "05 06 07")]
    [InlineData("USB: 5 V 2 A", "USB")]
    [InlineData("9 V 150 mA", "3")]
    [InlineData("", "3")]
    [InlineData(": 9 V", null)]
    public void A_line_gives_outlets_with_its_label(string line, string? ids)
    {
        var (outlets, fault) = GearForm.ReadOutletLine(line, Outlets("1", "2", "4"));
        if (ids is null)
        {
            Assert.NotNull(fault);
            Assert.Empty(outlets);
            return;
        }

        Assert.Null(fault);
        Assert.Equal(ids.Split(' '), outlets.Select(outlet => outlet.Id));
        var label = line.Contains(':', StringComparison.Ordinal) ? line[(line.IndexOf(':', StringComparison.Ordinal) + 1)..].Trim() : line;
        Assert.All(outlets, outlet => Assert.Equal(label, outlet.Label.Text));
    }

    [Theory]
    [InlineData("2: 9 V 1 A", "There is an outlet 2 already.")]
    [InlineData("3-5: 9 V 1 A", "There is an outlet 4 already.")]
    [InlineData("6-5: 9 V 1 A", "runs backwards")]
    [InlineData("1-5000: 9 V 1 A", "more than")]
    [InlineData("a/b: 9 V 1 A", "'/'")]
    public void A_line_that_cannot_be_taken_says_why_and_gives_nothing(string line, string words)
    {
        var (outlets, fault) = GearForm.ReadOutletLine(line, Outlets("1", "2", "4"));
        Assert.Empty(outlets);
        Assert.Contains(words, fault, StringComparison.Ordinal);
    }

    [Fact]
    public void Whatever_is_typed_gives_outlets_or_a_fault() => GearFormTests.Hostile.Sample(
        line =>
        {
            var (outlets, fault) = GearForm.ReadOutletLine(line, Outlets("1"));
            Assert.Equal(fault is null, outlets.Count > 0);
            Assert.DoesNotContain(outlets, outlet => outlet.Id == "1");
        },
        iter: 2000);

    private static ValueList<Outlet> Outlets(params string[] ids) => [.. ids.Select(id => new Outlet { Id = id, Label = NameplateReader.Read("9 V 1 A") })];
}
