using Loadmark.Core.Checks;
using Loadmark.Files.Forms;
using Loadmark.Web.Bench;

namespace Loadmark.Web.Tests.Bench;

/// <summary>The small words of the page.</summary>
public sealed class BenchWordsTests
{
    [Fact]
    public void Every_field_has_a_name_of_its_own_for_people()
    {
        foreach (var fields in new[] { GearForm.LoadFields, GearForm.SupplyFields, GearForm.OutletFields, GearForm.LeadFields, GearForm.RigFields })
        {
            Assert.All(fields, field => Assert.NotEqual(field.Key, field.Title));
            Assert.All(fields, field => Assert.Equal(field.Title, GearForm.TitleOf(field.Key)));
            Assert.Equal(fields.Count, fields.Select(field => field.Title).Distinct().Count());
        }
    }

    [Theory]
    [InlineData("drive-3", "drive-4", "drive-3")]
    [InlineData("drive-3", "drive-5", "drive-3 drive-4")]
    [InlineData("drive-9", "drive-10", "drive-9")]
    [InlineData("brick", "brick 2", "brick")]
    [InlineData("brick", "brick 3", "brick,brick 2")]
    [InlineData("7", "8", "7")]
    [InlineData("T1234567890", "T1234567890 2", "T1234567890")]
    public void A_free_id_counts_on(string id, string expected, string taken) =>
        Assert.Equal(expected, FreeIds.Like(id, taken.Split(taken.Contains(',', StringComparison.Ordinal) ? ',' : ' ')));

    [Fact]
    public void Every_severity_has_a_word_a_class_and_a_sentence()
    {
        var all = Enum.GetValues<Severity>();
        Assert.Equal(all.Length, all.Select(severity => severity.Class()).Distinct().Count());
        Assert.Equal(all.Length, all.Select(severity => severity.Sentence()).Distinct().Count());
        Assert.Equal(all.Length, all.Select(severity => severity.Word()).Distinct().Count());
    }
}
