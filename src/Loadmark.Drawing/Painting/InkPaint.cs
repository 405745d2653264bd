using System.Globalization;
using Loadmark.Drawing.Inks;
using Loadmark.Drawing.Scenes;

namespace Loadmark.Drawing.Painting;

/// <summary>How a shape's ink is laid on, in colours rather than tones.</summary>
/// <param name="Fill">The colour of faces and text, as <c>#rrggbb</c>; null for none.</param>
/// <param name="Stroke">The colour of lines and edges; null for none.</param>
/// <param name="Width">The width of lines, px.</param>
/// <param name="Dashes">The lengths of dashes and gaps in turn, px; empty for an unbroken line, whose ends are round.</param>
/// <param name="FillOpacity">How much the face hides, 0 to 1.</param>
internal sealed record InkPaint(string? Fill, string? Stroke, double Width, double[] Dashes, double FillOpacity)
{
    private const double BandOpacity = 0.18;

    private static readonly InkPaint[] Paints = [.. Enum.GetValues<Ink>().Select(static ink => Of(ink, 0))];
    private static readonly InkPaint[] SeriesPaints =
        [.. Enumerable.Range(0, Shape.Variants).Select(static variant => Of(Ink.SeriesLine, variant))];

    /// <summary>The paint of a shape on white paper.</summary>
    public static InkPaint Of(Shape shape) => shape.Ink switch
    {
        Ink.SeriesLine => SeriesPaints[shape.Variant],
        Ink.SeriesPoint or Ink.SeriesText or Ink.Band => Of(shape.Ink, shape.Variant),
        _ => Paints[(int)shape.Ink],
    };

    private static InkPaint Of(Ink ink, int variant)
    {
        var style = InkStyle.Of(ink);
        var dashes = ink == Ink.SeriesLine ? InkStyle.SeriesDashes[variant] : style.Dashes;
        return new InkPaint(
            ColourOf(style.Fill, variant),
            ColourOf(style.Stroke, variant),
            style.Width,
            [
                .. dashes.Split(' ', StringSplitOptions.RemoveEmptyEntries)
                    .Select(static dash => double.Parse(dash, CultureInfo.InvariantCulture)),
            ],
            ink == Ink.Band ? BandOpacity : 1);
    }

    private static string? ColourOf(Tone tone, int variant) =>
        tone == Tone.None ? null : Palette.Print.Of(tone == Tone.Series0 ? Tone.Series0 + variant : tone);
}
