using System.Globalization;
using System.Text;
using Loadmark.Drawing.Inks;
using Loadmark.Drawing.Scenes;

namespace Loadmark.Drawing.Svg;

/// <summary>
/// What a picture's inks look like: the style sheet that goes with the classes that <see cref="SvgWriter"/> gives shapes.
/// </summary>
public sealed class SvgStyle
{
    /// <summary>The typefaces, none of which is wider than what texts were measured with.</summary>
    private const string Typefaces = "'Noto Sans','Liberation Sans',Arial,Helvetica,'DejaVu Sans',sans-serif";

    private SvgStyle(string css) => Css = css;

    /// <summary>For paper: light, complete in itself.</summary>
    public static SvgStyle Paper { get; } = new(CssOf(static tone => Palette.Light.Of(tone)));

    /// <summary>For what is printed on white: as on a light sheet, complete in itself.</summary>
    public static SvgStyle Print { get; } = new(CssOf(static tone => Palette.Print.Of(tone)));

    /// <summary>For a dark sheet, complete in itself.</summary>
    public static SvgStyle Dark { get; } = new(CssOf(static tone => Palette.Dark.Of(tone)));

    /// <summary>For a picture within a page that has the rules of <see cref="PageCss"/> already: classes alone.</summary>
    public static SvgStyle OfPage { get; } = new("");

    /// <summary>The rules; empty when the page has them.</summary>
    public string Css { get; }

    /// <summary>
    /// The rules for a page, all within <c>svg.scene</c>: the colours are custom properties such as <c>--tone-run</c>,
    /// light by default, dark where the page or its user asks for it by <paramref name="darkSelector"/>.
    /// </summary>
    /// <param name="darkSelector">The selector under which the page is dark.</param>
    public static string PageCss(string darkSelector)
    {
        var css = new StringBuilder();
        css.Append("svg.scene{").Append(Properties(Palette.Light)).Append("}\n");
        css.Append(darkSelector).Append(" svg.scene{").Append(Properties(Palette.Dark)).Append("}\n");
        css.Append("@media print{").Append(darkSelector).Append(" svg.scene{").Append(Properties(Palette.Light)).Append("}}\n");
        return css.Append(CssOf(static tone => tone == Tone.None ? "none" : $"var({PropertyOf(tone)})")).ToString();
    }

    /// <summary>The custom property of a tone: <c>--tone-run</c>.</summary>
    public static string PropertyOf(Tone tone) => $"--tone-{SvgWriter.Kebab(tone.ToString())}";

    private static string Properties(Palette palette) =>
        string.Join(
            ';', Enum.GetValues<Tone>().Where(static tone => tone != Tone.None).Select(tone => $"{PropertyOf(tone)}:{palette.Of(tone)}"));

    private static string CssOf(Func<Tone, string> colour)
    {
        var css = new StringBuilder();
        css.Append("svg.scene .sheet{fill:").Append(colour(Tone.Paper)).Append("}\n");
        css.Append("svg.scene text{font-family:").Append(Typefaces).Append(";white-space:pre;stroke:none}\n");
        foreach (var role in Enum.GetValues<TextRole>())
            css.Append(CultureInfo.InvariantCulture, $"svg.scene .{SvgWriter.ClassOf(role)}{{font-size:{TextWidth.SizeOf(role)}px}}\n");

        foreach (var ink in Enum.GetValues<Ink>())
        {
            var style = InkStyle.Of(ink);
            css.Append(
                CultureInfo.InvariantCulture,
                $"svg.scene .{SvgWriter.ClassOf(ink)}{{fill:{colour(style.Fill)};stroke:{colour(style.Stroke)}");
            if (style.Stroke != Tone.None)
                css.Append(
                    CultureInfo.InvariantCulture,
                    $";stroke-width:{style.Width};stroke-linecap:{(style.Dashes.Length == 0 ? "round" : "butt")};stroke-linejoin:round");
            if (style.Dashes.Length > 0)
                css.Append(";stroke-dasharray:").Append(style.Dashes);
            if (ink == Ink.Band)
                css.Append(";fill-opacity:0.18");
            if (ink is Ink.TextFigure or Ink.TextReading)
                css.Append(";font-variant-numeric:tabular-nums");
            if (TextWidth.IsBold(ink))
                css.Append(";font-weight:bold");
            css.Append("}\n");
        }

        for (var variant = 0; variant < Shape.Variants; variant++)
        {
            var tone = colour(Tone.Series0 + variant);
            var dashes = InkStyle.SeriesDashes[variant] is { Length: > 0 } some ? some : "none";
            css.Append(
                CultureInfo.InvariantCulture,
                $"svg.scene .{SvgWriter.ClassOf(Ink.SeriesLine)}.variant-{variant}"
                + $"{{stroke:{tone};stroke-dasharray:{dashes};stroke-linecap:butt}}\n");
            foreach (var ink in (ReadOnlySpan<Ink>)[Ink.SeriesPoint, Ink.SeriesText, Ink.Band])
                css.Append(CultureInfo.InvariantCulture, $"svg.scene .{SvgWriter.ClassOf(ink)}.variant-{variant}{{fill:{tone}}}\n");
        }

        // The edge of letters is never drawn, and a line that is not closed has no face.
        return css.Append("svg.scene g text[class]{stroke:none}\nsvg.scene g .open[class]{fill:none}\n").ToString();
    }
}
