namespace Loadmark.Drawing.Paper;

/// <summary>A size of paper, upright.</summary>
/// <param name="Name">What it is called: "A4".</param>
/// <param name="WidthMm">The paper's width in millimetres.</param>
/// <param name="HeightMm">The paper's height in millimetres.</param>
public sealed record PaperSize(string Name, double WidthMm, double HeightMm)
{
    /// <summary>The px of a picture in a millimetre of paper: 96 an inch.</summary>
    public const double PxPerMm = 96 / 25.4;

    /// <summary>The points of 1/72 inch in a px.</summary>
    public const double PointsPerPx = 72.0 / 96;

    /// <summary>ISO 216 A4, 210 by 297 mm.</summary>
    public static PaperSize A4 { get; } = new("A4", 210, 297);

    /// <summary>ANSI/ASME Y14.1 size A, 8.5 by 11 inches.</summary>
    public static PaperSize Letter { get; } = new("Letter", 215.9, 279.4);

    /// <summary>The sizes there are.</summary>
    public static IReadOnlyList<PaperSize> All { get; } = [A4, Letter];

    /// <summary>The paper's width, px.</summary>
    public double Width => WidthMm * PxPerMm;

    /// <summary>The paper's height, px.</summary>
    public double Height => HeightMm * PxPerMm;
}
