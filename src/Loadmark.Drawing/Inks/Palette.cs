using System.Collections.Immutable;

namespace Loadmark.Drawing.Inks;

/// <summary>
/// A colour for every tone. Texts and signs have at least 4.5:1 on the sheet and on faces, edges and fillings 3:1 (WCAG 2.2,
/// success criteria 1.4.3 and 1.4.11); the severities stay apart in simulated colour-blind vision, and none goes by colour
/// alone.
/// </summary>
/// <param name="Colours">The colours in the order of <see cref="Tone"/>, as <c>#rrggbb</c>; <c>none</c> first.</param>
public sealed record Palette(ImmutableArray<string> Colours)
{
    /// <summary>A light sheet.</summary>
    public static Palette Light { get; } = new(
    [
        "none", "#fcfbf7", "#f2f0e8", "#cbc7bb", "#5d636b", "#22262b", "#565c64", "#4b87a3", "#2c6a4f", "#b3210f",
        "#8c0f0b", "#946200", "#5f5a00", "#812bb2", "#07396b", "#616a78", "#20794a",
        "#0a5a9c", "#a8410a", "#2c6a4f", "#7b3a92", "#6a5a00", "#22262b",
    ]);

    /// <summary>White paper: the light sheet without a ground that costs ink.</summary>
    public static Palette Print { get; } = new([Light.Of(Tone.None), "#ffffff", "#f4f3ee", .. Light.Colours.Skip((int)Tone.Hair)]);

    /// <summary>A dark sheet.</summary>
    public static Palette Dark { get; } = new(
    [
        "none", "#1b1e22", "#24282d", "#454b53", "#8e96a0", "#eceae4", "#a9b0b8", "#5fa3c4", "#6cc39b", "#ff7b66",
        "#ee6c66", "#f2bd4c", "#dfd67a", "#cb74f4", "#72a2cc", "#c9d3dd", "#77ecb8",
        "#6cb4f0", "#f0955a", "#6cc39b", "#d29be6", "#d3c04e", "#eceae4",
    ]);

    /// <summary>The colour of a tone.</summary>
    public string Of(Tone tone) => Colours[(int)tone];
}
