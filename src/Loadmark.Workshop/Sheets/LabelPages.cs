using System.Collections.Immutable;
using Loadmark.Core.Display;
using Loadmark.Core.Gear;
using Loadmark.Core.LeadLists;
using Loadmark.Core.Ratings;
using Loadmark.Drawing.Paper;
using Loadmark.Drawing.Scenes;
using Loadmark.Drawing.Texts;

namespace Loadmark.Workshop.Sheets;

/// <summary>Labels for both ends of each lead: where it goes, volts, kind of current, polarity, what it draws.</summary>
internal static class LabelPages
{
    private const double Padding = 1.6 * PaperSize.PxPerMm;
    private const double SignScale = 0.72;

    public static void Set(PageComposer composer, SheetFigures figures, LabelSize size)
    {
        if (figures.Leads.Count == 0)
        {
            composer.Paragraph("Nothing is wired yet, so there are no labels.");
            return;
        }

        composer.Paragraph(
            "For tape or a sheet of stickers: cut along the lines. One for each end of each lead.", Ink.TextQuiet, TypeSize.Note);
        var (width, height) = (size.WidthMm * PaperSize.PxPerMm, size.HeightMm * PaperSize.PxPerMm);
        var columns = Math.Max(1, (int)(composer.Body.Width / width));
        foreach (var row in figures.Leads.Items.SelectMany(Ends).Chunk(columns))
        {
            composer.Need(height);
            var top = composer.Next;
            for (var column = 0; column < row.Length; column++)
                composer.Place(Label(row[column], new Box(composer.Body.X + (column * width), top, width, height)));
        }
    }

    /// <summary>The labels of a lead: at each outlet, then at each load.</summary>
    private static IEnumerable<LeadEnd> Ends(ListedLead lead)
    {
        var to = string.Join(", ", lead.Feed.Loads.Select(static load => load.Id));
        foreach (var outlet in lead.Feed.Outlets)
            yield return new LeadEnd(
                lead.Number, outlet.Name, $"to {to}", $"{FigureDisplay.Printed(outlet.Volts)} {FormSigns.Of(outlet.Rating.Form)}",
                FigureDisplay.Printed(outlet.Limit), SignOf(outlet.Rating.Form, outlet.Rating.Polarity));
        foreach (var load in lead.Feed.Loads)
            yield return new LeadEnd(
                lead.Number, load.Id, $"from {lead.Feed.OutletNames}",
                $"{FigureDisplay.Printed(lead.Point.Volts)} {FormSigns.Of(lead.Point.Form)}",
                load.Rating.Running is { } run ? $"{(run.IsAssumed ? "~ " : "")}{run.Value}" : "? mA",
                SignOf(lead.Point.Form, lead.Point.Polarity));
    }

    private static Polarity? SignOf(Figure<SupplyForm> form, Figure<Polarity> polarity) =>
        form is { IsKnown: true, Value: SupplyForm.Direct } && polarity.IsKnown ? polarity.Value : null;

    private static PaperPart Label(LeadEnd end, Box box)
    {
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        shapes.Add(new RectShape(Ink.Hair, box));
        var inner = box.Grow(-Padding);
        var signWidth = end.Polarity is null ? 0 : (PolaritySign.Width * SignScale) + 4;
        var (lines, sizes) = FittedLabel.Of(
            [
                ($"{end.Number}  {end.Tag}", IsBold: true, inner.Width),
                (end.Other, IsBold: false, inner.Width),
                ($"{end.Volts}  {end.Amps}", IsBold: false, inner.Width - signWidth),
            ],
            inner.Height);
        var y = inner.Y;
        for (var line = 0; line < lines.Count; line++)
        {
            var ink = lines[line].IsBold ? Ink.TextStrong : Ink.Text;
            shapes.Add(new TextShape(ink, inner.X, y + sizes[line], lines[line].Text) { OwnSize = sizes[line] });
            y += sizes[line] * TypeSize.Leading;
        }

        if (end.Polarity is { } polarity)
        {
            var (halfWidth, halfHeight) = (PolaritySign.Width * SignScale / 2, PolaritySign.Height * SignScale / 2);
            shapes.AddRange(PolaritySign.Of(new Point(inner.Right - halfWidth, inner.Bottom - halfHeight - 1), polarity, SignScale));
        }

        return new PaperPart
        {
            Tag = PaperTag.Paragraph,
            Bounds = box,
            Shapes = shapes.ToImmutable(),
            Alternative = end.Polarity is { } known ? PolarityText.Of(known) : "",
        };
    }

    private sealed record LeadEnd(int Number, string Tag, string Other, string Volts, string Amps, Polarity? Polarity);
}
