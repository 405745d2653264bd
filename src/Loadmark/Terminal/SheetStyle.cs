using Spectre.Console;

namespace Loadmark.Terminal;

/// <summary>
/// The few styles of a sheet. The hues are picked to stay apart with any of the usual kinds of colour-blind vision
/// (after M. Okabe and K. Ito, "Color Universal Design", 2008; from memory), from the 256 terminal
/// colours, and dark and light enough for pages of either. Colour is never the only sign of anything.
/// </summary>
internal static class SheetStyle
{
    private const int VermilionNumber = 166;
    private const int OrangeNumber = 172;
    private const int OliveNumber = 100;
    private const int PurpleNumber = 133;
    private const int BlueNumber = 32;
    private const int GreenNumber = 29;

    /// <summary>The style of plain text.</summary>
    public static Style Plain { get; } = Style.Plain;

    /// <summary>Text to find with a glance.</summary>
    public static Style Strong { get; } = new(decoration: Decoration.Bold);

    /// <summary>Text to be looked for only when wanted.</summary>
    public static Style Faint { get; } = new(decoration: Decoration.Dim);

    /// <summary>The style of severity harm.</summary>
    public static Style Vermilion { get; } = new(Color.FromInt32(VermilionNumber), decoration: Decoration.Bold);

    /// <summary>The style of severity fails.</summary>
    public static Style Orange { get; } = new(Color.FromInt32(OrangeNumber), decoration: Decoration.Bold);

    /// <summary>For unsure: the yellow of the palette, dark enough to be read on a light page.</summary>
    public static Style Olive { get; } = new(Color.FromInt32(OliveNumber), decoration: Decoration.Bold);

    /// <summary>The style of severity noise.</summary>
    public static Style Purple { get; } = new(Color.FromInt32(PurpleNumber), decoration: Decoration.Bold);

    /// <summary>For margin, and for the fill of gauges.</summary>
    public static Style Blue { get; } = new(Color.FromInt32(BlueNumber));

    /// <summary>The style of severity good.</summary>
    public static Style Green { get; } = new(Color.FromInt32(GreenNumber), decoration: Decoration.Bold);
}
