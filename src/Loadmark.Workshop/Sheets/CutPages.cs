using Loadmark.Core.Display;
using Loadmark.Drawing.Paper;
using Loadmark.Drawing.Scenes;
using Loadmark.Planning.Cutting;

namespace Loadmark.Workshop.Sheets;

/// <summary>The cut list: from which reel which pieces are cut, in which order, and what is left of it.</summary>
internal static class CutPages
{
    public static void Set(PageComposer composer, IReadOnlyList<CutList> lists, CuttingWishes wishes)
    {
        if (wishes.Reels.Count == 0)
            return;
        foreach (var list in lists)
        {
            composer.Subheading($"Cut list, {list.Wire}");
            composer.Paragraph(Sentence(list));
            composer.Table(new PaperTable(
                [new("Reel"), new("Cut, in this order"), new("Left over", TextAnchor.End)],
                [
                    .. list.Cut.Reels.Items.Select(static reel => new PaperTableRow(
                    [
                        TableCell.Of($"{reel.Reel.Id}{(reel.Number > 1 ? $", number {reel.Number}" : "")}", Ink.TextStrong),
                        new TableCell([.. Alike(reel)]),
                        TableCell.Of(Text(reel.Offcut), Ink.TextFigure),
                    ])),
                ]));
            Tell(composer, list.Cut.Impossible.Items, "Longer than every reel, and not cut");
            Tell(composer, list.Cut.LeftOver.Items, "Not cut, for there are too few reels");
        }

        composer.Paragraph(
            $"Each piece is longer than its stretch by {Text(wishes.Allowance)} for its two ends; a cut takes {Text(wishes.CutLoss)}. "
            + "The cable has two conductors. The longest pieces come first: what is cut wrongly can still become a shorter one.",
            Ink.TextQuiet,
            TypeSize.Note);
    }

    /// <summary>The pieces of a reel in the order in which they are cut, those of one length in one line.</summary>
    private static IEnumerable<TableText> Alike(ReelCuts reel) =>
        reel.Pieces.Items.GroupBy(static piece => piece.Length).Select(static alike =>
            new TableText($"{alike.Count()} × {Text(alike.Key)}: {string.Join("; ", alike.Select(static piece => piece.Id))}"));

    private static string Sentence(CutList list)
    {
        var (cut, naive) = (list.Cut, list.Naive);
        var text = $"{Text(cut.Used)} of {Text(cut.Opened)} are used, {Text(cut.Wasted)} are left over or cut away";
        text += cut.IsWasteProven ? "; no way of cutting leaves less: proven." : ".";
        return naive.Wasted > cut.Wasted && naive.LeftOver.Count == cut.LeftOver.Count
            ? $"{text} Cut as they come, {Text(naive.Wasted)} would be left."
            : text;
    }

    private static void Tell(PageComposer composer, IEnumerable<CutPiece> pieces, string what)
    {
        var list = string.Join("; ", pieces.Select(static piece => $"{piece.Id}: {Text(piece.Length)}"));
        if (list.Length > 0)
            composer.Paragraph($"{what}: {list}.", Ink.TextStrong);
    }

    /// <summary>A length as a bench says it: what is under 10 cm in millimetres.</summary>
    public static string Text(Metres length) => length.Value switch
    {
        0 => "nothing",
        < 0.1m => $"{FigureDisplay.Number(length.Value * 1000)} mm",
        _ => FigureDisplay.Printed<Core.Quantities.Metre>(length),
    };
}
