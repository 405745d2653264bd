namespace Loadmark.Web.Hosting;

/// <summary>
/// The languages that the page has texts in: its own, and one for each file <c>PageText.LANGUAGE.resx</c> that was built.
/// </summary>
public static class PageLanguages
{
    /// <summary>The language that the texts are written in.</summary>
    public const string Own = "en";

    /// <summary>The languages there are, the page's own first.</summary>
    /// <param name="folder">The folder of the program, with a folder for each language's built texts.</param>
    public static IReadOnlyList<string> In(string folder)
    {
        var built = $"{typeof(PageLanguages).Assembly.GetName().Name}.resources.dll";
        return
        [
            Own,
            .. Directory.EnumerateDirectories(folder).Where(language => File.Exists(Path.Combine(language, built)))
                .Select(static language => Path.GetFileName(language)).Where(static language => language != Own)
                .Order(StringComparer.Ordinal),
        ];
    }
}
