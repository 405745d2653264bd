using Loadmark.Drawing.Fonts;
using PdfSharp.Fonts;

namespace Loadmark.Drawing.Pdf;

/// <summary>Hands PDFsharp the typeface of paper, and no other, whatever the machine has.</summary>
internal sealed class PdfFontSource : IFontResolver
{
    public FontResolverInfo? ResolveTypeface(string familyName, bool bold, bool italic) =>
        familyName == PaperFonts.Family && !italic ? new FontResolverInfo(PaperFonts.Of(bold).Name) : null;

    public byte[]? GetFont(string faceName) =>
        faceName == PaperFonts.Regular.Name ? PaperFonts.Regular.Bytes.ToArray()
        : faceName == PaperFonts.Bold.Name ? PaperFonts.Bold.Bytes.ToArray()
        : null;
}
