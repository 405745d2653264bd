using Loadmark.Web.Hosting;

namespace Loadmark.Web.Tests.Hosting;

/// <summary>Another language is a file that was built beside the program.</summary>
public sealed class PageLanguagesTests
{
    [Fact]
    public void A_folder_with_built_texts_is_a_language_and_no_other_folder_is()
    {
        var folder = Directory.CreateTempSubdirectory("loadmark-languages-");
        try
        {
            Assert.Equal(["en"], PageLanguages.In(folder.FullName));
            folder.CreateSubdirectory("runtimes");
            File.WriteAllText(Path.Combine(folder.CreateSubdirectory("de").FullName, "Loadmark.Web.resources.dll"), "");
            File.WriteAllText(Path.Combine(folder.CreateSubdirectory("cs").FullName, "Other.resources.dll"), "");
            Assert.Equal(["en", "de"], PageLanguages.In(folder.FullName));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
