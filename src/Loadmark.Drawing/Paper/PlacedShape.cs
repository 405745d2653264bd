using Loadmark.Drawing.Scenes;

namespace Loadmark.Drawing.Paper;

/// <summary>
/// Puts shapes of a picture on a page, smaller or larger. Lines keep their width, so that they print as well in a small picture.
/// </summary>
internal static class PlacedShape
{
    /// <summary>A shape at its place.</summary>
    /// <param name="shape">The shape.</param>
    /// <param name="scale">How large: 1 as it was drawn.</param>
    /// <param name="x">Where the picture's left edge is, px.</param>
    /// <param name="y">Where the picture's upper edge is, px.</param>
    public static Shape Of(Shape shape, double scale, double x, double y)
    {
        return shape switch
        {
            LineShape line => line with { From = At(line.From), To = At(line.To) },
            RectShape rect => rect with { Box = BoxAt(rect.Box), Corner = rect.Corner * scale },
            CircleShape circle => circle with { Centre = At(circle.Centre), Radius = circle.Radius * scale },
            PathShape path => path with { Points = [.. path.Points.Select(At)] },
            TextShape text => text with { X = x + (text.X * scale), Y = y + (text.Y * scale), OwnSize = text.Size * scale },
            _ => throw new ArgumentOutOfRangeException(nameof(shape), shape, "No such shape can be placed."),
        };

        Point At(Point point) => new(x + (point.X * scale), y + (point.Y * scale));

        Box BoxAt(Box box) => new(x + (box.X * scale), y + (box.Y * scale), box.Width * scale, box.Height * scale);
    }
}
