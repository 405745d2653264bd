using System.Globalization;
using Loadmark.Drawing.Inks;

namespace Loadmark.Drawing.Tests;

/// <summary>The colours, against the formulas of W3C and a published simulation of colour-blind vision.</summary>
/// <remarks>
/// Contrast: W3C, Web Content Accessibility Guidelines 2.2, definitions of "relative luminance" and "contrast ratio"
/// (https://www.w3.org/TR/WCAG22/#dfn-relative-luminance), success criteria 1.4.3 (text 4.5:1) and 1.4.11 (graphics 3:1).
/// Colour-blind vision: G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, "A Physiologically-based Model for Simulation of
/// Color Vision Deficiency", IEEE Transactions on Visualization and Computer Graphics 15(6), 2009, matrices of severity 1.0
/// on linear RGB (as several public programs have them alike). Distance: CIE 1976 L*a*b* of IEC 61966-2-1 colours, D65
/// (matrix and white point from memory). That a distance of 15 suffices is common practice, no source; 2.3 is just noticeable.
/// </remarks>
public sealed class PaletteTests(ITestOutputHelper output)
{
    private const double LeastDistance = 15;

    private static readonly Tone[] Severities = [Tone.Harm, Tone.Fails, Tone.Noise, Tone.Margin, Tone.Note, Tone.Good];
    private static readonly Tone[] Texts = [.. Severities, Tone.Strong, Tone.Quiet, Tone.Reading, Tone.Series0, Tone.Series1, Tone.Series2, Tone.Series3, Tone.Series4, Tone.Series5];
    private static readonly Tone[] Graphics = [Tone.Edge, Tone.Run, Tone.Reading, Tone.Over];

    private static readonly Dictionary<string, double[][]> Visions = new(StringComparer.Ordinal)
    {
        ["all cones"] = [[1, 0, 0], [0, 1, 0], [0, 0, 1]],
        ["protanopia"] = [[0.152286, 1.052583, -0.204868], [0.114503, 0.786281, 0.099216], [-0.003882, -0.048116, 1.051998]],
        ["deuteranopia"] = [[0.367322, 0.860646, -0.227968], [0.280085, 0.672501, 0.047413], [-0.011820, 0.042940, 0.968881]],
        ["tritanopia"] = [[1.255528, -0.076749, -0.178779], [-0.078411, 0.930809, 0.147602], [0.004733, 0.691367, 0.303900]],
    };

    public static TheoryData<string> Palettes() => ["light", "dark"];

    [Fact]
    public void The_formula_gives_the_ends_that_W3C_names()
    {
        // "Contrast ratios can range from 1 to 21 (commonly written 1:1 to 21:1)."
        Assert.Equal(21, Contrast("#ffffff", "#000000"), 6);
        Assert.Equal(1, Contrast("#777777", "#777777"), 6);
    }

    [Theory]
    [MemberData(nameof(Palettes))]
    public void Texts_and_graphics_have_the_contrast_that_W3C_asks_for(string name)
    {
        var palette = PaletteOf(name);
        foreach (var ground in (Tone[])[Tone.Paper, Tone.Face])
        {
            Assert.All(Texts, tone => Assert.True(Contrast(palette.Of(tone), palette.Of(ground)) >= 4.5, $"{tone} on {ground}: {Contrast(palette.Of(tone), palette.Of(ground)):F2}"));
            Assert.All(Graphics, tone => Assert.True(Contrast(palette.Of(tone), palette.Of(ground)) >= 3, $"{tone} on {ground}: {Contrast(palette.Of(tone), palette.Of(ground)):F2}"));
        }
    }

    [Theory]
    [MemberData(nameof(Palettes))]
    public void Severities_stay_apart_in_colour_blind_vision(string name)
    {
        var palette = PaletteOf(name);
        foreach (var (vision, matrix) in Visions)
        {
            var (least, pair) = Severities
                .SelectMany(one => Severities.Where(other => other > one).Select(other => (Distance(Seen(palette.Of(one), matrix), Seen(palette.Of(other), matrix)), $"{one} and {other}")))
                .Min();
            output.WriteLine($"{name}, {vision}: least distance {least:F1}, {pair}");
            Assert.True(least >= LeastDistance, $"{vision}: {pair} are {least:F1} apart");
        }
    }

    [Fact]
    public void Colours_that_are_known_to_be_confused_are_found_close()
    {
        // Red and brown of about the same lightness: what the test is there to refuse.
        var matrix = Visions["deuteranopia"];
        Assert.True(Distance(Seen("#b3210f", matrix), Seen("#8a5200", matrix)) < 5);
    }

    private static Palette PaletteOf(string name) => name == "light" ? Palette.Light : Palette.Dark;

    private static double[] Linear(string colour) =>
        [.. Enumerable.Range(0, 3).Select(channel => int.Parse(colour.AsSpan(1 + (2 * channel), 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0)
            .Select(value => value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4))];

    private static double Luminance(string colour) => Linear(colour) is var rgb ? (0.2126 * rgb[0]) + (0.7152 * rgb[1]) + (0.0722 * rgb[2]) : 0;

    private static double Contrast(string one, string other)
    {
        var (a, b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    private static double[] Seen(string colour, double[][] matrix)
    {
        var rgb = Linear(colour);
        var seen = matrix.Select(row => Math.Clamp((row[0] * rgb[0]) + (row[1] * rgb[1]) + (row[2] * rgb[2]), 0, 1)).ToArray();
        var x = Root(((0.4124564 * seen[0]) + (0.3575761 * seen[1]) + (0.1804375 * seen[2])) / 0.95047);
        var y = Root((0.2126729 * seen[0]) + (0.7151522 * seen[1]) + (0.0721750 * seen[2]));
        var z = Root(((0.0193339 * seen[0]) + (0.1191920 * seen[1]) + (0.9503041 * seen[2])) / 1.08883);
        return [(116 * y) - 16, 500 * (x - y), 200 * (y - z)];
    }

    private static double Root(double value) => value > 216.0 / 24389 ? Math.Cbrt(value) : ((24389.0 / 27 * value) + 16) / 116;

    private static double Distance(double[] one, double[] other) => Math.Sqrt(one.Zip(other, static (a, b) => (a - b) * (a - b)).Sum());
}
