namespace Loadmark.Drawing.Paper;

/// <summary>The sizes of type on paper, px of 1/96 inch; the points of 1/72 inch stand beside.</summary>
public static class TypeSize
{
    /// <summary>The smallest that is printed, 6.5 pt: what is read at arm's length in a dim light (common practice, no source).</summary>
    public const double Floor = 6.5 * PxPerPoint;

    /// <summary>Running heads and notes, 7 pt.</summary>
    public const double Note = 7 * PxPerPoint;

    /// <summary>Tables, 8.5 pt.</summary>
    public const double Table = 8.5 * PxPerPoint;

    /// <summary>Running text, 9.5 pt.</summary>
    public const double Body = 9.5 * PxPerPoint;

    /// <summary>What is read by who plays, on the floor and in a hurry, 11 pt.</summary>
    public const double Plain = 11 * PxPerPoint;

    /// <summary>Headings within a page, 11 pt.</summary>
    public const double Subheading = 11 * PxPerPoint;

    /// <summary>Headings of pages, 14 pt.</summary>
    public const double Heading = 14 * PxPerPoint;

    /// <summary>The title of a sheet, 18 pt.</summary>
    public const double Title = 18 * PxPerPoint;

    /// <summary>From baseline to baseline, in sizes.</summary>
    public const double Leading = 1.28;

    /// <summary>From the upper edge of a line to its baseline, in sizes: what accents on capitals need.</summary>
    public const double Ascent = 1.0;

    private const double PxPerPoint = 96.0 / 72;
}
