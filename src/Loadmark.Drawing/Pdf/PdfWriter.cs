using Loadmark.Drawing.Painting;
using Loadmark.Drawing.Paper;
using Loadmark.Drawing.Scenes;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace Loadmark.Drawing.Pdf;

/// <summary>Writes pages as a PDF that can be searched, copied from and read aloud: text is text, what a part is is tagged.</summary>
public static class PdfWriter
{
    // PDFsharp knows one source of fonts a process.
    static PdfWriter() => GlobalFontSettings.FontResolver = new PdfFontSource();

    /// <summary>Writes a document.</summary>
    /// <returns>The file; equal documents make equal files.</returns>
    public static byte[] Write(PaperDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        using var pdf = new PdfDocument();
        pdf.Options.NoCompression = true;
        pdf.Options.CompressContentStreams = false;
        pdf.Info.Title = document.Title;
        pdf.Info.Subject = document.Subject;
        pdf.Info.CreationDate = document.Made.UtcDateTime;
        pdf.Info.ModificationDate = document.Made.UtcDateTime;
        var accessible = UAManager.ForDocument(pdf);
        accessible.SetDocumentLanguage(document.Language);
        var inks = new PdfInks();
        foreach (var page in document.Pages)
        {
            var paper = pdf.AddPage();
            paper.Width = XUnit.FromMillimeter(page.Size.WidthMm);
            paper.Height = XUnit.FromMillimeter(page.Size.HeightMm);
            using var graphics = XGraphics.FromPdfPage(paper);
            var surface = new PdfSurface(graphics, inks);
            foreach (var part in page.Parts)
                Write(accessible.StructureBuilder, surface, part);
        }

        using var saved = new MemoryStream();
        pdf.Save(saved, closeStream: false);
        return PdfFinish.Of(saved.ToArray());
    }

    private static void Write(StructureBuilder structure, PdfSurface surface, PaperPart part)
    {
        Begin(structure, part);
        ShapePainter.Paint(surface, part.Shapes);
        foreach (var inner in part.Parts)
            Write(structure, surface, inner);
        structure.End();
    }

    private static void Begin(StructureBuilder structure, PaperPart part)
    {
        switch (part.Tag)
        {
            case PaperTag.Artifact:
                structure.BeginArtifact();
                break;
            case PaperTag.Figure:
                structure.BeginElement(PdfIllustrationElementTag.Figure, part.Alternative, RectOf(part.Bounds));
                break;
            default:
                structure.BeginElement(TagOf(part.Tag));
                break;
        }
    }

    private static PdfBlockLevelElementTag TagOf(PaperTag tag) => tag switch
    {
        PaperTag.Title => PdfBlockLevelElementTag.Heading1,
        PaperTag.Heading => PdfBlockLevelElementTag.Heading2,
        PaperTag.Subheading => PdfBlockLevelElementTag.Heading3,
        PaperTag.Table => PdfBlockLevelElementTag.Table,
        PaperTag.Row => PdfBlockLevelElementTag.TableRow,
        PaperTag.HeaderCell => PdfBlockLevelElementTag.TableHeaderCell,
        PaperTag.Cell => PdfBlockLevelElementTag.TableDataCell,
        _ => PdfBlockLevelElementTag.Paragraph,
    };

    private static XRect RectOf(Box box) =>
        new(
            new XPoint(box.X * PaperSize.PointsPerPx, box.Y * PaperSize.PointsPerPx),
            new XSize(box.Width * PaperSize.PointsPerPx, box.Height * PaperSize.PointsPerPx));
}
