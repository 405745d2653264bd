using System.Text;
using Bunit;
using Loadmark.Codes.Packing;
using Loadmark.Codes.Symbols;
using Loadmark.Files;
using Loadmark.Web.Parts;
using Loadmark.Workshop.Sheets;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.Extensions.DependencyInjection;
using SkiaSharp;

namespace Loadmark.Web.Tests.Parts;

/// <summary>A rig comes onto the page from its file, or from pictures of its sheet, chosen at once or one after the other.</summary>
public sealed class RigFromFileTests : PageTest
{
    private static readonly string Short = "rig: Paper board\nloads:\n  drive-3: { label: 9V DC 12mA } # by the lamp\n";

    /// <summary>A rig file of two codes or three: the comment cannot be packed.</summary>
    private static readonly string Long = Short.Replace("Paper", "Long paper", StringComparison.Ordinal)
        + $"# {Convert.ToHexString(new Random(7).GetItems(Enumerable.Range(0, 256).Select(static one => (byte)one).ToArray(), 1200))}\n";

    [Fact]
    public async Task A_rig_file_is_kept_and_opened()
    {
        var part = Render<RigFromFile>();
        Choose(part, ("paper.rig.yaml", Encoding.UTF8.GetBytes(Short)));
        await AssertOpenedAsync(part, Short);
    }

    [Theory]
    [InlineData(SheetFileKind.Pdf)]
    [InlineData(SheetFileKind.Png)]
    public async Task A_sheet_gives_its_rig_back_to_the_letter(SheetFileKind kind)
    {
        var part = Render<RigFromFile>();
        Choose(part, ("scan of the lid", Sheet(Short, kind)));
        await AssertOpenedAsync(part, Short);
    }

    [Fact]
    public async Task Codes_are_gathered_over_several_choices()
    {
        var part = Render<RigFromFile>();
        var codes = TextCodes.Pack(Long);
        Assert.True(codes.Length > 1);
        var pages = codes.Select((_, index) => ("code.png", Picture(Long, index))).ToArray();
        for (var index = 0; index < pages.Length - 1; index++)
        {
            Choose(part, pages[index]);
            part.WaitForAssertion(() => Assert.Contains("was not found", Said(part), StringComparison.Ordinal));
            Assert.Contains("kept until you leave this page", Said(part), StringComparison.Ordinal);
            Assert.Empty(await Store.ListAsync(Stop));
        }

        Choose(part, pages[^1]);
        await AssertOpenedAsync(part, Long);
    }

    [Fact]
    public async Task What_was_found_can_be_forgotten()
    {
        var part = Render<RigFromFile>();
        Choose(part, ("code.png", Picture(Long, 0)));
        part.WaitForElement("section.start > button").Click();
        Choose(part, ("paper.pdf", Sheet(Short, SheetFileKind.Pdf)));
        await AssertOpenedAsync(part, Short);
    }

    [Fact]
    public async Task Several_rigs_at_once_are_all_kept_and_listed()
    {
        var told = 0;
        var part = Render<RigFromFile>(parameters => parameters.Add(static one => one.Kept, () => told++));
        Choose(part, ("paper.rig.yaml", Encoding.UTF8.GetBytes(Short)), ("long.pdf", Sheet(Long, SheetFileKind.Pdf)));
        part.WaitForAssertion(() => Assert.Equal(1, told));
        Assert.Equal("Paper board is kept.Long paper board is kept.", Said(part));
        Assert.Equal([Long, Short], await TextsAsync());
    }

    [Fact]
    public async Task Pictures_of_two_rigs_are_told_and_do_not_stand_in_the_way_of_the_next()
    {
        var part = Render<RigFromFile>();
        Choose(part, ("one.pdf", Sheet(Short, SheetFileKind.Pdf)), ("other.pdf", Sheet(Long, SheetFileKind.Pdf)));
        part.WaitForAssertion(() => Assert.Contains("codes of 2 rig files", Said(part), StringComparison.Ordinal));
        Assert.Empty(await Store.ListAsync(Stop));
        Choose(part, ("one.pdf", Sheet(Short, SheetFileKind.Pdf)));
        await AssertOpenedAsync(part, Short);
    }

    [Fact]
    public async Task A_file_that_cannot_be_read_is_told_beside_the_rig_that_can()
    {
        var part = Render<RigFromFile>();
        Choose(part, ("d\u202Epart.pdf", "%PDF-1.7 and no more"u8.ToArray()), ("paper.pdf", Sheet(Short, SheetFileKind.Pdf)));
        part.WaitForAssertion(() => Assert.Contains("Paper board is kept.", Said(part), StringComparison.Ordinal));
        Assert.Contains("d·part.pdf: the PDF is damaged or protected", Said(part), StringComparison.Ordinal);
        Assert.Equal([Short], await TextsAsync());
    }

    [Theory]
    [InlineData("rig: Bad\nloads:\n  drive-3: { colour: red }\n", "Line 3, column 14")]
    [InlineData("\u00FF\u00FE and more", "not a text in UTF-8")]
    public async Task What_is_no_rig_is_refused_with_its_place(string text, string told)
    {
        var part = Render<RigFromFile>();
        Choose(part, ("bad.rig.yaml", Encoding.Latin1.GetBytes(text)));
        part.WaitForAssertion(() => Assert.Contains(told, part.Find("[role=alert]").TextContent, StringComparison.Ordinal));
        Assert.Contains("bad.rig.yaml is not a rig file that can be read", part.Find("[role=alert] h2").TextContent, StringComparison.Ordinal);
        Assert.Empty(await Store.ListAsync(Stop));
        part.Find("[role=alert] button").Click();
        Assert.Empty(part.FindAll("[role=alert]"));
    }

    /// <summary>What a later version wrote is kept to the letter, though this one cannot read it.</summary>
    [Fact]
    public async Task A_restored_text_that_is_no_rig_file_is_kept_and_told()
    {
        const string text = "rig: x\nload: {}\n";
        var part = Render<RigFromFile>();
        Choose(part, ("x.png", Picture(text, 0)));
        part.WaitForAssertion(() => Assert.Contains("Line 2, column 1", part.Find("[role=alert]").TextContent, StringComparison.Ordinal));
        Assert.Contains("Restored from a sheet is kept.", Said(part), StringComparison.Ordinal);
        Assert.Equal([text], await TextsAsync());
    }

    [Fact]
    public void Too_many_files_are_refused_before_any_is_read()
    {
        var part = Render<RigFromFile>();
        Choose(part, [.. Enumerable.Range(0, 33).Select(static _ => ("paper.rig.yaml", Encoding.UTF8.GetBytes(Short)))]);
        part.WaitForAssertion(() => Assert.Equal("These are 33 files. At most 32 are taken at once.", Said(part)));
    }

    private static byte[] Sheet(string text, SheetFileKind kind) => SheetFile.Write(
        SheetBuilder.Build(
            SheetFigures.Of(RigFileReader.Read(text, "").Rig!, Stop), new SheetOptions { RigText = text, Only = [SheetPart.Codes], Made = new DateTimeOffset(2026, 12, 1, 10, 0, 0, TimeSpan.Zero) }, Stop), kind);

    /// <summary>A picture of one of a text's codes.</summary>
    private static byte[] Picture(string text, int index)
    {
        const int dots = 4;
        var symbol = QrSymbol.Of(TextCodes.Pack(text)[index]);
        using var picture = new SKBitmap(new SKImageInfo(symbol.Modules * dots, symbol.Modules * dots));
        using var canvas = new SKCanvas(picture);
        canvas.Clear(SKColors.White);
        using var ink = new SKPaint { Color = SKColors.Black };
        foreach (var bar in symbol.Bars)
            canvas.DrawRect(SKRect.Create(bar.X * dots, bar.Y * dots, bar.Width * dots, bar.Height * dots), ink);
        using var png = picture.Encode(SKEncodedImageFormat.Png, 100);
        return png.ToArray();
    }

    private static void Choose(IRenderedComponent<RigFromFile> part, params (string Name, byte[] Bytes)[] files) =>
        part.FindComponent<InputFile>().UploadFiles([.. files.Select(static file => InputFileContent.CreateFromBinary(file.Bytes, file.Name))]);

    private static string Said(IRenderedComponent<RigFromFile> part) =>
        string.Concat(part.FindAll("[role=status] p").Select(static line => line.TextContent));

    private async Task<string[]> TextsAsync()
    {
        var texts = new List<string>();
        foreach (var rig in await Store.ListAsync(Stop))
            texts.Add((await Store.FindAsync(rig.Id, Stop))!.Text);
        return [.. texts.Order(StringComparer.Ordinal)];
    }

    private async Task AssertOpenedAsync(IRenderedComponent<RigFromFile> part, string text)
    {
        var address = Services.GetRequiredService<NavigationManager>();
        part.WaitForAssertion(() => Assert.Contains("/rig/", address.Uri, StringComparison.Ordinal));
        var rig = Assert.Single(await Store.ListAsync(Stop));
        Assert.EndsWith($"/rig/{rig.Id}", address.Uri, StringComparison.Ordinal);
        Assert.Equal(text, (await Store.FindAsync(rig.Id, Stop))!.Text);
    }
}
