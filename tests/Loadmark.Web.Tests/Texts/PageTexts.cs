using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Loadmark.Core.Checks;
using Loadmark.Files.Forms;
using Loadmark.Web.Pages;
using Loadmark.Web.Texts;

namespace Loadmark.Web.Tests.Texts;

/// <summary>Every text that the page looks up, and the file that lists them.</summary>
internal static class PageTexts
{
    /// <summary>Expressions that look up a text which is written elsewhere, each with where its texts come from below.</summary>
    public static readonly string[] Computed =
    [
        "Parts.First(part => part.Part == Shown).Name", "name", // RigPage.Parts
        "field.Title", "GearForm.TitleOf(key)", "GearForm.TitleOf(value.Key)", "field.Description", "word", "TypeWord", "Word(field, found.Text)", // the fields of gear
        "severity.Word()", "worst.Word()", "Severity.Word()", // severities
        "group.Key.Name", // StartPlots
    ];

    private static string Source => Path.Combine(Repository.Root, "src", "Loadmark.Web");

    /// <summary>The file.</summary>
    public static string ListPath => Path.Combine(Source, "Texts", "PageText.resx");

    /// <summary>All places that look up a text.</summary>
    public static List<TextUse> Uses() =>
    [
        .. Directory.EnumerateFiles(Source, "*", SearchOption.AllDirectories)
            .Where(static path => path.EndsWith(".razor", StringComparison.Ordinal) || path.EndsWith(".cs", StringComparison.Ordinal))
            .Where(static path => !path.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .SelectMany(static path => TextUse.Find(File.ReadAllText(path))),
    ];

    /// <summary>All texts, in the order of their letters.</summary>
    public static List<string> All() => [.. Uses().SelectMany(static use => use.Texts).Concat(WrittenElsewhere()).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];

    /// <summary>The names and values of the file.</summary>
    public static List<(string Name, string Value)> Listed() => Read(ListPath);

    /// <summary>The names and values of a file of texts.</summary>
    public static List<(string Name, string Value)> Read(string path) =>
        [.. XDocument.Load(path).Root!.Elements("data").Select(static data => (data.Attribute("name")!.Value, data.Element("value")!.Value))];

    /// <summary>Writes the file: the names are the English texts, and so are the values.</summary>
    public static void Write(string path, IEnumerable<(string Name, string Value)> texts)
    {
        XElement Header(string name, string value) => new("resheader", new XAttribute("name", name), new XElement("value", value));
        const string Forms = "System.Windows.Forms, Version=4.0.0.0, Culture=neutral, PublicKeyToken=b77a5c561934e089";
        var root = new XElement(
            "root",
            Header("resmimetype", "text/microsoft-resx"),
            Header("version", "2.0"),
            Header("reader", $"System.Resources.ResXResourceReader, {Forms}"),
            Header("writer", $"System.Resources.ResXResourceWriter, {Forms}"),
            texts.Select(static text => new XElement("data", new XAttribute("name", text.Name), new XAttribute(XNamespace.Xml + "space", "preserve"), new XElement("value", text.Value))));
        File.WriteAllText(path, "<?xml version=\"1.0\" encoding=\"utf-8\"?>\n" + root.ToString().ReplaceLineEndings("\n") + "\n");
    }

    private static IEnumerable<string> WrittenElsewhere()
    {
        var parts = ((string Part, string Name)[])typeof(RigPage).GetField("Parts", BindingFlags.NonPublic | BindingFlags.Static)!.GetValue(null)!;
        var fields = new[] { GearForm.LoadFields, GearForm.SupplyFields, GearForm.OutletFields, GearForm.LeadFields, GearForm.RigFields }.SelectMany(static one => one).ToList();
        var marks = Regex.Matches(File.ReadAllText(Path.Combine(Source, "Parts", "StartPlots.Curves.cs")), "Name: \"(?<name>[^\"]+)\"", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1));
        Assert.Equal(2, marks.Count);
        var severities = Enum.GetValues<Severity>();
        return
        [
            .. parts.Select(static part => part.Name),
            .. fields.SelectMany(static field => (string[])[field.Title, field.Description, .. field.Words]), "yes", "no",
            .. severities.Select(static severity => severity.Word()),
            .. marks.Select(static mark => mark.Groups["name"].Value),
        ];
    }
}
