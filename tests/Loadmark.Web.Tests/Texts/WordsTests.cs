using Loadmark.Core.Checks;
using Loadmark.Files.Forms;
using Loadmark.Web.Texts;

namespace Loadmark.Web.Tests.Texts;

/// <summary>The small words of the page.</summary>
public sealed class WordsTests
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

    [Fact]
    public void Every_severity_has_a_word_a_class_and_a_sentence()
    {
        var all = Enum.GetValues<Severity>();
        Assert.Equal(all.Length, all.Select(severity => severity.Class()).Distinct().Count());
        Assert.Equal(all.Length, all.Select(severity => severity.Sentence()).Distinct().Count());
        Assert.Equal(all.Length, all.Select(severity => severity.Word()).Distinct().Count());
    }
}
