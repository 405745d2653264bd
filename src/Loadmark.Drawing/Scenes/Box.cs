namespace Loadmark.Drawing.Scenes;

/// <summary>An upright rectangle in a picture, in px-like units.</summary>
/// <param name="X">The box's left edge.</param>
/// <param name="Y">The box's upper edge.</param>
/// <param name="Width">The box's width, not below 0.</param>
/// <param name="Height">The box's height, not below 0.</param>
public readonly record struct Box(double X, double Y, double Width, double Height)
{
    /// <summary>The place of the box's right edge, px.</summary>
    public double Right => X + Width;

    /// <summary>The place of the box's lower edge, px.</summary>
    public double Bottom => Y + Height;

    /// <summary>The middle of the box.</summary>
    public Point Middle => new(X + (Width / 2), Y + (Height / 2));

    /// <summary>The box with two opposite corners.</summary>
    public static Box Between(Point one, Point other) =>
        new(Math.Min(one.X, other.X), Math.Min(one.Y, other.Y), Math.Abs(one.X - other.X), Math.Abs(one.Y - other.Y));

    /// <summary>The smallest box that holds both.</summary>
    public Box Union(Box other)
    {
        var (x, y) = (Math.Min(X, other.X), Math.Min(Y, other.Y));
        return new Box(x, y, Math.Max(Right, other.Right) - x, Math.Max(Bottom, other.Bottom) - y);
    }

    /// <summary>The box moved outwards on all sides.</summary>
    public Box Grow(double by) => new(X - by, Y - by, Width + (2 * by), Height + (2 * by));

    /// <summary>Whether the two have more than an edge in common.</summary>
    public bool Overlaps(Box other) => X < other.Right && other.X < Right && Y < other.Bottom && other.Y < Bottom;

    /// <summary>Whether the other lies within this one, edges included.</summary>
    public bool Holds(Box other) => X <= other.X && Y <= other.Y && other.Right <= Right && other.Bottom <= Bottom;
}
