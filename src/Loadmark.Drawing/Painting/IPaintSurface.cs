using Loadmark.Drawing.Fonts;
using Loadmark.Drawing.Scenes;

namespace Loadmark.Drawing.Painting;

/// <summary>What a picture is painted on, in px of 1/96 inch from the upper left corner of the page.</summary>
internal interface IPaintSurface
{
    /// <summary>Paints a straight line.</summary>
    void Line(InkPaint paint, Point from, Point to);

    /// <summary>Paints a rectangle, its corners rounded where the radius is above 0.</summary>
    void Rectangle(InkPaint paint, Box box, double corner);

    /// <summary>Paints a circle.</summary>
    void Circle(InkPaint paint, Point centre, double radius);

    /// <summary>Paints lines from point to point; only a closed one has a face.</summary>
    void Path(InkPaint paint, ReadOnlySpan<Point> points, bool isClosed);

    /// <summary>Paints a line of text from its left end.</summary>
    void Text(InkPaint paint, FontFace face, double size, Point baseline, string text);
}
