using Loadmark.Codes.Packing;
using Loadmark.Codes.Symbols;
using Loadmark.Drawing.Fonts;
using Loadmark.Drawing.Paper;
using Loadmark.Drawing.Scenes;

namespace Loadmark.Workshop.Sheets;

/// <summary>The rig file itself as QR codes: what is lost on a disk comes back from paper.</summary>
internal static class CodePages
{
    /// <summary>
    /// How large a module is at the most: at 0.8 mm a telephone that has a whole page in view still has three dots for each, and a scan of
    /// 100 dots an inch has them too.
    /// </summary>
    private const double LargestModule = 0.8 * PaperSize.PxPerMm;

    private const int Columns = 2;
    private const double Gap = 2 * PaperSize.PxPerMm;

    /// <summary>Bars of dark modules reach so far into their neighbours, so that no hair of white shows between them; in modules.</summary>
    private const double Overlap = 0.03;

    public static void Set(PageComposer composer, SheetFigures figures, SheetOptions options)
    {
        var codes = options.RigText is { } text ? TextCodes.Pack(text) : [];
        if (codes.Length == 0)
        {
            composer.Paragraph(options.RigText is null
                ? "The rig file was not at hand when this sheet was made, so there are no codes of it."
                : $"The rig file is too large for {TextCodes.MostParts} codes, so this sheet does not hold it. Keep a copy of the file "
                    + "itself.");
            return;
        }

        composer.Paragraph(
            $"{(codes.Length == 1 ? "This code holds" : $"These {codes.Length} codes hold")} the whole rig file. Should the file be "
            + "lost, scan this page or photograph it flat and sharp in even light. Then drop the picture on Loadmark's list of rigs, or "
            + "type loadmark restore-sheet with the picture's name.");
        var cell = (composer.Body.Width - ((Columns - 1) * Gap)) / Columns;
        foreach (var row in codes.Select(QrSymbol.Of).Index().Chunk(Columns))
        {
            var module = row.Min(one => Math.Min(LargestModule, cell / one.Item.Modules));
            var captions = row.Select(one => WrappedText.Lay(
                $"Code {one.Index + 1} of {codes.Length} · {figures.Rig.Name} · rig {figures.Version}",
                PaperFonts.Regular,
                TypeSize.Note,
                cell)).ToList();
            var high = row.Max(one => one.Item.Modules) * module;
            var pitch = TypeSize.Note * TypeSize.Leading;
            composer.Need(high + (captions.Max(static lines => lines.Count) * pitch) + Gap);
            var top = composer.Next;
            for (var column = 0; column < row.Length; column++)
            {
                var x = composer.Body.X + (column * (cell + Gap));
                composer.Place(Symbol(row[column].Item, row[column].Index + 1, codes.Length, new Point(x, top), module));
                composer.Place(Caption(captions[column], new Box(x, top + high, cell, captions[column].Count * pitch), pitch));
            }

            composer.Skip(Gap);
        }
    }

    private static PaperPart Symbol(QrSymbol symbol, int number, int count, Point at, double module) => new()
    {
        Tag = PaperTag.Figure,
        Bounds = new Box(at.X, at.Y, symbol.Modules * module, symbol.Modules * module),
        Alternative = $"QR code {number} of {count}, which holds the rig file.",
        Shapes =
        [
            .. symbol.Bars.Select(bar => (Shape)new RectShape(Ink.CodeModule, new Box(
                at.X + (bar.X * module), at.Y + (bar.Y * module), (bar.Width + Overlap) * module, (bar.Height + Overlap) * module))),
        ],
    };

    private static PaperPart Caption(IReadOnlyList<string> lines, Box box, double pitch) => new()
    {
        Tag = PaperTag.Paragraph,
        Bounds = box,
        Shapes =
        [
            .. lines.Select((line, row) => (Shape)new TextShape(
                Ink.TextQuiet, box.X, box.Y + (row * pitch) + (TypeSize.Note * TypeSize.Ascent), line) { OwnSize = TypeSize.Note }),
        ],
    };
}
