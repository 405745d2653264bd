using System.Collections.Immutable;
using Loadmark.Drawing.Fonts;
using Loadmark.Drawing.Scenes;

namespace Loadmark.Drawing.Paper;

/// <summary>What stands on every page around its body: what it is of, which page it is, and a line at its foot.</summary>
/// <param name="Size">The paper.</param>
/// <param name="Left">What stands above the body at the left.</param>
/// <param name="Foot">What stands below the body.</param>
public sealed record PageFrame(PaperSize Size, string Left, string Foot)
{
    /// <summary>What no printer of offices prints on, px.</summary>
    private const double Margin = 11 * PaperSize.PxPerMm;

    private const double Running = 6 * PaperSize.PxPerMm;
    private const double MostFootLines = 3;

    private readonly double _footPitch = TypeSize.Note * TypeSize.Leading;

    /// <summary>Where the body of a page is.</summary>
    public Box Body
    {
        get
        {
            var foot = FootLines.Count * _footPitch;
            return new Box(Margin, Margin + Running, Size.Width - (2 * Margin), Size.Height - (2 * Margin) - Running - foot - 6);
        }
    }

    private List<string> FootLines
    {
        get
        {
            var lines = WrappedText.Lay(Foot, PaperFonts.Regular, TypeSize.Note, Size.Width - (2 * Margin));
            return lines.Count > MostFootLines ? lines[..(int)MostFootLines] : lines;
        }
    }

    /// <summary>A page with its frame.</summary>
    /// <param name="body">What stands in the body.</param>
    /// <param name="right">What stands above the body at the right: which part of the sheet it is, and which page.</param>
    public PaperPage Around(IEnumerable<PaperPart> body, string right)
    {
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        var edge = Size.Width - Margin;
        var baseline = Margin + TypeSize.Note;
        var space = edge - Margin - PaperFonts.Regular.WidthOf(right, TypeSize.Note) - 16;

        // A running head is the one place where a name is shortened: the whole of it stands in the title.
        var left = WrappedText.Lay(Left, PaperFonts.Bold, TypeSize.Note, space) is [var all] ? all
            : $"{WrappedText.Lay(Left, PaperFonts.Bold, TypeSize.Note, space - 12)[0]} …";
        shapes.Add(new TextShape(Ink.TextStrong, Margin, baseline, left) { OwnSize = TypeSize.Note });
        shapes.Add(new TextShape(Ink.TextQuiet, edge, baseline, right, TextAnchor.End) { OwnSize = TypeSize.Note });
        shapes.Add(new LineShape(Ink.Hair, new(Margin, baseline + 5), new(edge, baseline + 5)));
        var head = new PaperPart
        {
            Tag = PaperTag.Artifact,
            Bounds = new Box(Margin, Margin, edge - Margin, Running),
            Shapes = shapes.ToImmutable(),
        };
        return new PaperPage(Size, [head, .. body, FootPart()]);
    }

    private PaperPart FootPart()
    {
        var lines = FootLines;
        var top = Size.Height - Margin - (lines.Count * _footPitch);
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        for (var line = 0; line < lines.Count; line++)
            shapes.Add(
                new TextShape(Ink.TextQuiet, Margin, top + (line * _footPitch) + TypeSize.Note, lines[line]) { OwnSize = TypeSize.Note });
        return new PaperPart
        {
            Tag = PaperTag.Artifact,
            Bounds = new Box(Margin, top, Size.Width - (2 * Margin), lines.Count * _footPitch),
            Shapes = shapes.ToImmutable(),
        };
    }
}
