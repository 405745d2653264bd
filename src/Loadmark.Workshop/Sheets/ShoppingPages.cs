using Loadmark.Core.Display;
using Loadmark.Drawing.Paper;
using Loadmark.Drawing.Scenes;
using Loadmark.Workshop.Shopping;

namespace Loadmark.Workshop.Sheets;

/// <summary>The shopping list: what is to be bought, what the price list says it costs, and what the leads are made of.</summary>
internal static class ShoppingPages
{
    private const string NoPrice = "no price in the list";

    /// <summary>The room that a length with its unit takes on one line, px.</summary>
    private const double FigureRoom = 66;

    private static readonly TableColumn[] Plain = [new("What"), new("Which"), new("Pieces", TextAnchor.End)];

    private static readonly TableColumn[] WithPrices =
        [.. Plain, new("Each", TextAnchor.End), new("Together", TextAnchor.End), new("Line of the list")];

    public static void Set(PageComposer composer, SheetFigures figures, SheetLists lists, SheetOptions options)
    {
        var shopping = lists.Shopping;
        composer.Paragraph(
            "What the rig's file marks as yet to be bought, and the straight leads of its wiring that it does not list. All else counts as "
            + "there.");
        if (shopping.Things.Count == 0)
            composer.Paragraph("Nothing is to be bought.", Ink.TextStrong);
        else
            composer.Table(new PaperTable(
                [.. shopping.HasPrices ? WithPrices : Plain],
                [.. shopping.Things.Items.Select(thing => Row(thing, shopping.HasPrices))]));
        if (figures.Analysis.Wired.Feeds.Count == 0)
            composer.Paragraph("Nothing is wired yet, so which straight leads it takes is not known.");
        if (shopping is { HasPrices: true, Things.Count: > 0 })
        {
            composer.Paragraph(shopping.CostSentence, Ink.TextStrong);
            composer.Paragraph(
                "Prices are in the money of the price list. A thing has the price of a line of its own tag or name, as long as nothing on "
                + "that line speaks against its being the same; what would merely do is no price of it.",
                Ink.TextQuiet,
                TypeSize.Note);
        }

        if (shopping.ToMake.Count > 0)
            SetParts(composer, lists, options.Cutting);
    }

    private static PaperTableRow Row(ShoppingThing thing, bool hasPrices)
    {
        var cells = new List<TableCell>
        {
            TableCell.Of(thing.Name, Ink.TextStrong),
            new([.. thing.Facts.Items.Select(static fact => new TableText(fact))]),
            TableCell.Of($"{thing.Count}", Ink.TextFigure),
        };
        if (hasPrices)
        {
            cells.Add(thing.Line is { } priced ? TableCell.Of(FigureDisplay.Price(priced.Offer.Price), Ink.TextFigure) : TableCell.Empty);
            cells.Add(thing.Cost is { } cost ? TableCell.Of(FigureDisplay.Price(cost), Ink.TextFigure) : TableCell.Empty);
            cells.Add(new TableCell(
            [
                .. thing.Line is { } line
                    ? (TableText[])[new($"{line.Offer.Id}: {line.How}")]
                    : [new(NoPrice, Ink.TextStrong)],
                .. thing.Remark is { } remark ? (TableText[])[new(remark) { Size = TypeSize.Note }] : [],
            ]));
        }

        return new PaperTableRow([.. cells]);
    }

    private static void SetParts(PageComposer composer, SheetLists lists, CuttingWishes wishes)
    {
        var parts = LeadParts.Of(lists.Shopping.ToMake, wishes.Allowance);
        composer.Subheading("To make the leads instead");
        var isCut = wishes.Reels.Count > 0;
        composer.Table(new PaperTable(
            [
                new("Part"), new("Size"), new("How much", TextAnchor.End, FigureRoom), new("For leads"),
                .. isCut ? [new("From reels", LeastWidth: FigureRoom)] : (TableColumn[])[],
            ],
            [
                .. parts.Cables.Items.Select(cable => new PaperTableRow(
                [
                    TableCell.Of("cable, two conductors", Ink.TextStrong),
                    TableCell.Of($"{cable.Wire}"),
                    TableCell.Of($"{(cable.IsAssumed ? "~ " : "")}{cable.Length}", Ink.TextFigure),
                    TableCell.Of(string.Join(", ", cable.Leads.Items)),
                    .. isCut ? [ReelCell(lists.ShoppingCuts.First(cut => cut.Wire == cable.Wire))] : (TableCell[])[],
                ])),
                .. parts.Plugs.Items.Select(plug => new PaperTableRow(
                [
                    TableCell.Of("plug", Ink.TextStrong),
                    TableCell.Of(plug.Name ?? "not known"),
                    TableCell.Of($"{plug.Count}", Ink.TextFigure),
                    TableCell.Of(plug.Assumed > 0 ? $"~ {plug.Assumed} of them assumed" : ""),
                    .. isCut ? [TableCell.Empty] : (TableCell[])[],
                ])),
            ]));
        if (parts.WithoutLength.Items is { Length: > 0 } numbers)
            composer.Paragraph(
                $"The rig gives no length for lead {string.Join(", ", numbers)}: its cable is not counted.", Ink.TextStrong);
        var prices = lists.Shopping.HasPrices ? "A price list has supplies and leads, so that cable and plugs have no price. " : "";
        composer.Paragraph(
            "For the leads above that the wiring takes, numbered as in the lead list; for the two ends of each stretch of cable there are "
            + $"{CutPages.Text(wishes.Allowance)} more. {prices}~ is assumed: measure the way that each lead takes before you buy.",
            Ink.TextQuiet,
            TypeSize.Note);
    }

    /// <summary>How many of which reels are opened, and what is not cut from them.</summary>
    private static TableCell ReelCell(CutList list)
    {
        var texts = new List<TableText>();
        texts.AddRange(list.Cut.Reels.Items.CountBy(static reel => reel.Reel.Id).Select(static alike =>
            new TableText($"{alike.Value} × {alike.Key}")));
        var uncut = list.Cut.Impossible.Count + list.Cut.LeftOver.Count;
        if (uncut > 0)
            texts.Add(new TableText($"not enough: {uncut} {(uncut == 1 ? "piece is" : "pieces are")} missing", Ink.TextStrong));
        return new TableCell([.. texts]);
    }
}
