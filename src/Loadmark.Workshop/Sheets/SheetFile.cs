using System.Text;
using Loadmark.Drawing.Paper;
using Loadmark.Drawing.Pdf;
using Loadmark.Drawing.Png;
using Loadmark.Drawing.Svg;

namespace Loadmark.Workshop.Sheets;

/// <summary>Writes sheets as files.</summary>
public static class SheetFile
{
    /// <summary>The coarsest a PNG is written, in dots an inch.</summary>
    public const int LeastDotsPerInch = PngWriter.LeastDotsPerInch;

    /// <summary>The finest a PNG is written, in dots an inch.</summary>
    public const int MostDotsPerInch = PngWriter.MostDotsPerInch;

    /// <summary>How fine a PNG is where nobody says, in dots an inch.</summary>
    public const int CommonDotsPerInch = 150;

    /// <summary>The words for the kinds, in their order, which are the ends of the files' names too.</summary>
    public static IReadOnlyList<string> KindWords { get; } = ["pdf", "svg", "png"];

    /// <summary>The kind that a word or the end of a file's name stands for; null for none.</summary>
    /// <param name="word">The word, with or without a point before it, in letters of any case.</param>
    public static SheetFileKind? KindOf(string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        var place = KindWords.TakeWhile(kind => !kind.Equals(word.TrimStart('.'), StringComparison.OrdinalIgnoreCase)).Count();
        return place == KindWords.Count ? null : (SheetFileKind)place;
    }

    /// <summary>What a kind is called in a message over HTTP.</summary>
    public static string MediaTypeOf(SheetFileKind kind) => kind switch
    {
        SheetFileKind.Pdf => "application/pdf",
        SheetFileKind.Svg => "image/svg+xml",
        _ => "image/png",
    };

    /// <summary>Writes a sheet.</summary>
    /// <param name="document">The sheet.</param>
    /// <param name="kind">As what.</param>
    /// <param name="dotsPerInch">How fine a PNG is, 36 to <see cref="MostDotsPerInch"/>.</param>
    public static byte[] Write(PaperDocument document, SheetFileKind kind, int dotsPerInch = CommonDotsPerInch) => kind switch
    {
        SheetFileKind.Svg => Encoding.UTF8.GetBytes(SvgWriter.Write(document)),
        SheetFileKind.Png => PngWriter.Write(document, dotsPerInch),
        _ => PdfWriter.Write(document),
    };
}
