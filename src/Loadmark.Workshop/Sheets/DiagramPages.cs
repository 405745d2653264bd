using Loadmark.Core.Checks;
using Loadmark.Drawing.Diagrams;
using Loadmark.Drawing.Paper;
using Loadmark.Drawing.Scenes;

namespace Loadmark.Workshop.Sheets;

/// <summary>The single-line diagram, whole: as large as fits on a page, on several pages where it would be too small.</summary>
internal static class DiagramPages
{
    /// <summary>
    /// The px that the picture is laid out in, the larger print first: its smallest text of 11 px is printed at 7.1, 6.8 or 6.5 pt.
    /// </summary>
    private static readonly double[] Widths = [820, 860, 900];

    public static void Set(PageComposer composer, SheetFigures figures)
    {
        composer.Paragraph(VerdictSentence.Of(figures.Analysis.Check));
        var (scale, scenes) = FewestPages(composer, figures);
        for (var page = 0; page < scenes.Count; page++)
        {
            if (page > 0)
                composer.BeginPage(SheetBuilder.TitleOf(SheetPart.Diagram));

            // Only a row of very many lines is higher than a page: the picture is made smaller then, not cut.
            composer.Figure(scenes[page], Math.Min(scale, composer.Room / scenes[page].Height));
        }
    }

    /// <summary>The pictures of the width that takes the fewest pages; of those that take as many, the largest print.</summary>
    private static (double Scale, IReadOnlyList<Scene> Scenes) FewestPages(PageComposer composer, SheetFigures figures)
    {
        (double Scale, IReadOnlyList<Scene> Scenes)? best = null;
        foreach (var width in Widths)
        {
            var scale = composer.Body.Width / width;
            var scenes = RigDiagram.DrawPages(
                figures.Analysis.Wired,
                figures.Analysis.Check,
                new DiagramOptions { Width = width, TellsAll = true },
                composer.Room / scale);
            if (best is not { } found || scenes.Count < found.Scenes.Count)
                best = (scale, scenes);
            if (scenes.Count == 1)
                break;
        }

        return best!.Value;
    }
}
