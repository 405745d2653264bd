using Loadmark.Codes.Packing;
using Loadmark.Codes.Scans;
using Loadmark.Drawing.Paper;
using Loadmark.Files;
using Loadmark.Workshop.Restoring;
using Loadmark.Workshop.Sheets;

namespace Loadmark.Workshop.Tests.Sheets;

/// <summary>The sheet gives its rig file back, to the letter, from each kind of file.</summary>
public sealed class CodePagesTests
{
    public static TheoryData<string> Files() => SheetFileTests.Files();

    [Theory]
    [MemberData(nameof(Files))]
    public void The_PDF_of_each_example_gives_its_file_back(string file)
    {
        var text = TextOf(file);
        Assert.Equal(text, Restored(SheetFile.Write(DocumentOf(text, only: null), SheetFileKind.Pdf)).Text);
    }

    [Theory]
    [InlineData("pit.rig.yaml", 100)]
    [InlineData("pit.rig.yaml", 150)]
    [InlineData("festival.rig.yaml", 100)]
    [InlineData("festival.rig.yaml", 300)]
    public void The_picture_of_the_page_gives_it_back(string file, int dotsPerInch)
    {
        var text = TextOf(file);
        var restored = Restored(SheetFile.Write(DocumentOf(text, [SheetPart.Codes]), SheetFileKind.Png, dotsPerInch));
        Assert.Equal((text, RigVersion.Of(SheetTests.Example(file))), (restored.Text, restored.Version));
    }

    [Fact]
    public void A_page_with_as_many_codes_as_there_may_be_is_sound_and_gives_it_back()
    {
        var lines = 300;
        while (TextCodes.Pack(Commented(lines)).IsEmpty)
            lines--;
        var text = Commented(lines);
        Assert.Equal(TextCodes.MostParts, TextCodes.Pack(text).Length);
        foreach (var paper in PaperSize.All)
        {
            var document = DocumentOf(text, [SheetPart.Codes], paper);
            PageAssert.IsSound(document);
            Assert.Equal(text, Restored(SheetFile.Write(document, SheetFileKind.Pdf)).Text);
        }
    }

    [Fact]
    public void A_file_that_is_too_large_is_told_on_the_sheet()
    {
        var text = Commented(500);
        var document = DocumentOf(text, [SheetPart.Codes]);
        Assert.Contains(SheetTests.TextsOf(document), static line => line.Contains("too large for 16 codes", StringComparison.Ordinal));
        Assert.DoesNotContain(document.Pages.SelectMany(static page => page.All()), static part => part.Tag == PaperTag.Figure);
    }

    [Fact]
    public void What_is_missing_mixed_damaged_or_nothing_is_told_in_a_sentence()
    {
        var festival = TextCodes.Pack(TextOf("festival.rig.yaml"));
        var pit = TextCodes.Pack(TextOf("pit.rig.yaml"));
        Assert.Contains("Code 2 of 2 was not found. Photograph it nearer", RestoredSheet.Of(Gathered([festival[0]]), "", null).Complaint, StringComparison.Ordinal);
        Assert.Contains("codes of 2 rig files: 'Pit board, bass chair' with all of its codes and one with 1 of 2 codes", RestoredSheet.Of(Gathered([pit[0], festival[0]]), "", null).Complaint, StringComparison.Ordinal);
        Assert.Contains("damaged", RestoredSheet.Of(Gathered([[.. pit[0][..^1], 0]]), "", null).Complaint, StringComparison.Ordinal);
        Assert.Contains("No code of a sheet was found", RestoredSheet.Of(Gathered([[1, 2, 3]]), "", null).Complaint, StringComparison.Ordinal);
        Assert.Contains("was passed over", RestoredSheet.Of(Gathered([[1, 2, 3]]), "", null).Remark, StringComparison.Ordinal);
    }

    [Fact]
    public void A_text_that_is_no_rig_file_is_given_back_with_what_is_wrong()
    {
        var restored = RestoredSheet.Of(Gathered(TextCodes.Pack("rig: x\nload: {}\n")), "x.yaml", null);
        Assert.Equal("rig: x\nload: {}\n", restored.Text);
        Assert.NotEmpty(restored.Reading!.Errors);
        Assert.Null(restored.Version);
    }

    [Fact]
    public void Codes_hold_what_a_rig_file_may_hold() => Assert.Equal(RigFileReader.MostBytes, TextCodes.MostTextBytes);

    /// <summary>The pit rig with lines of comment that cannot be packed smaller than 5 bits a letter.</summary>
    private static string Commented(int lines) => TextOf("pit.rig.yaml") + string.Concat(
        new Random(5).GetItems("0123456789abcdefghijklmnopqrstuv".ToCharArray(), lines * 60).Chunk(60).Select(static line => $"# {new string(line)}\n"));

    private static string TextOf(string file) => File.ReadAllText(Repository.PathOf("examples", file));

    private static PaperDocument DocumentOf(string text, IReadOnlyList<SheetPart>? only, PaperSize? paper = null) => SheetTests.Set(
        RigFileReader.Read(text, "").Rig!, SheetTests.Options with { RigText = text, Only = only, Paper = paper ?? PaperSize.A4 });

    private static RestoredSheet Restored(byte[] file)
    {
        var found = new GatheredCodes();
        Assert.Null(ScanReader.Read(file, found, cancellation: TestContext.Current.CancellationToken));
        return RestoredSheet.Of(found, "restored", null);
    }

    private static GatheredCodes Gathered(IEnumerable<byte[]> codes)
    {
        var found = new GatheredCodes();
        foreach (var code in codes)
            found.Add(code);
        return found;
    }
}
