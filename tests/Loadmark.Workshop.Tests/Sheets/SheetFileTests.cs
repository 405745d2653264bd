using System.Buffers.Binary;
using System.Text;
using System.Xml.Linq;
using Loadmark.Drawing.Paper;
using Loadmark.Workshop.Sheets;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Tokens;

namespace Loadmark.Workshop.Tests.Sheets;

/// <summary>
/// The files that a sheet is written as, read by programs that are not ours: PdfPig, and Debian's poppler and qpdf.
/// </summary>
public sealed class SheetFileTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("loadmark-sheet-");

    public static TheoryData<string> Files() =>
        [.. Directory.GetFiles(Repository.PathOf("examples"), "*.rig.yaml").Select(static path => Path.GetFileName(path)!).Order(StringComparer.Ordinal)];

    public void Dispose() => _folder.Delete(recursive: true);

    [Theory]
    [MemberData(nameof(Files))]
    public void Strict_readers_find_nothing_wrong_and_every_word(string file)
    {
        var document = DocumentOf(file);
        var path = Save(SheetFile.Write(document, SheetFileKind.Pdf));
        Assert.Contains("No syntax or stream encoding errors found", PdfTool.Run("qpdf", "--check", path), StringComparison.Ordinal);
        Assert.Matches(@"Tagged:\s+yes", PdfTool.Run("pdfinfo", path));
        foreach (var font in PdfTool.Run("pdffonts", path).Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(2))
            Assert.Matches(@"^[A-Z]{6}\+Loadmark Sans.*CID TrueType\s+Identity-H\s+yes yes yes", font);

        // Reading by poppler, and by PdfPig, is to give the words that were set, page by page.
        var pages = PdfTool.Run("pdftotext", "-raw", path, "-").Split('\f');
        using var pdf = PdfDocument.Open(path);
        Assert.Equal(document.Pages.Length, pdf.NumberOfPages);
        for (var page = 0; page < document.Pages.Length; page++)
        {
            var set = Letters(string.Concat(TextsOf(document.Pages[page])));
            Assert.Equal(set, Letters(pages[page]));
            Assert.Equal(set, Letters(string.Concat(pdf.GetPage(page + 1).Letters.Select(static letter => letter.Value))));
        }
    }

    [Fact]
    public void What_each_part_is_is_tagged()
    {
        var path = Save(SheetFile.Write(DocumentOf("pit.rig.yaml"), SheetFileKind.Pdf));
        var structure = PdfTool.Run("pdfinfo", "-struct-text", path);
        Assert.Contains("H1 (block)\n    \"Pit board, bass chair\"", structure, StringComparison.Ordinal);
        Assert.Contains("H2 (block)\n    \"Feed schedule\"", structure, StringComparison.Ordinal);
        Assert.Contains("Table (block)\n    TR\n      TH\n        \"Outlet\"", structure, StringComparison.Ordinal);
        Assert.Contains("Figure", structure, StringComparison.Ordinal);
        using var pdf = PdfDocument.Open(path);
        Assert.Equal(
            DocumentOf("pit.rig.yaml").Pages.SelectMany(static page => page.All()).Count(static part => part.Tag == PaperTag.Figure),
            ObjectsOf(pdf).Count(static one => IsFigureWithWords(one)));
        Assert.Equal("en-GB", ((StringToken)pdf.Structure.Catalog.CatalogDictionary.Data["Lang"]).Data);
    }

    [Theory]
    [InlineData(SheetFileKind.Pdf)]
    [InlineData(SheetFileKind.Svg)]
    [InlineData(SheetFileKind.Png)]
    public void Equal_sheets_are_equal_files_but_for_the_day(SheetFileKind kind)
    {
        var first = SheetFile.Write(DocumentOf("pit.rig.yaml"), kind);
        Assert.Equal(first, SheetFile.Write(DocumentOf("pit.rig.yaml"), kind));
        Assert.NotEqual(
            first, SheetFile.Write(DocumentOf("pit.rig.yaml", SheetTests.Options with { Made = SheetTests.Options.Made.AddDays(1) }), kind));
    }

    [Fact]
    public void Svg_is_sound_and_has_the_size_of_the_paper()
    {
        var svg = XElement.Parse(Encoding.UTF8.GetString(SheetFile.Write(DocumentOf("pit.rig.yaml", SheetTests.Options with { Only = [SheetPart.Diagram] }), SheetFileKind.Svg)));
        Assert.Equal(("210mm", "297mm"), (svg.Attribute("width")?.Value, svg.Attribute("height")?.Value));
        Assert.Contains(svg.Descendants(), static element => element is { Name.LocalName: "text", Value: "Pit board, bass chair" });
    }

    [Theory]
    [InlineData(150, 1241, 1754)]
    [InlineData(36, 298, 421)]
    public void Png_has_the_dots_that_are_asked_for(int dots, int width, int height)
    {
        var png = SheetFile.Write(DocumentOf("clean.rig.yaml", SheetTests.Options with { Only = [SheetPart.Diagram] }), SheetFileKind.Png, dots);
        Assert.Equal((width, height), (BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16)), BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(20))));
    }

    private static PaperDocument DocumentOf(string file, SheetOptions? options = null) =>
        SheetTests.Set(SheetTests.Example(file), options ?? SheetTests.Options);

    private string Save(byte[] bytes)
    {
        var path = Path.Combine(_folder.FullName, $"{Guid.NewGuid():N}.pdf");
        File.WriteAllBytes(path, bytes);
        return path;
    }

    private static IEnumerable<string> TextsOf(PaperPage page) =>
        page.All().SelectMany(static part => part.Shapes).OfType<Drawing.Scenes.TextShape>().Select(static text => text.Text);

    /// <summary>All letters and signs without spaces, sorted: readers differ in the order in which they tell them.</summary>
    private static string Letters(string text) => string.Concat(text.Normalize(NormalizationForm.FormC).Where(static letter => !char.IsWhiteSpace(letter) && letter != '\u0000').Order());

    private static IEnumerable<DictionaryToken> ObjectsOf(PdfDocument pdf) =>
        pdf.Structure.CrossReferenceTable.ObjectOffsets.Keys.Select(pdf.Structure.GetObject).Select(static one => one.Data).OfType<DictionaryToken>();

    private static bool IsFigureWithWords(DictionaryToken one) =>
        one.TryGet(NameToken.Create("S"), out NameToken kind) && kind.Data == "Figure"
        && one.TryGet(NameToken.Create("Alt"), out var words) && words is StringToken { Data.Length: > 20 } or HexToken { Data.Length: > 20 };
}
