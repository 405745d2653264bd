namespace Loadmark.Drawing.Scenes;

/// <summary>A line of text.</summary>
/// <param name="Ink">What it is for; strong text and the words of signs are bold.</param>
/// <param name="X">Where its anchor stands.</param>
/// <param name="Y">The text's baseline.</param>
/// <param name="Text">The text: no markup, no control characters.</param>
/// <param name="Anchor">Which part of it stands at <paramref name="X"/>.</param>
/// <param name="Role">What it is for, which decides its size.</param>
public sealed record TextShape(
    Ink Ink, double X, double Y, string Text, TextAnchor Anchor = TextAnchor.Start, TextRole Role = TextRole.Body) : Shape(Ink)
{
    /// <summary>The size of the type in px where it is not the one of the <see cref="Role"/>; null where it is.</summary>
    public double? OwnSize { get; init; }

    /// <summary>The size of the type, px.</summary>
    public double Size => OwnSize ?? TextWidth.SizeOf(Role);

    /// <summary>The width the text takes at most, by <see cref="TextWidth"/>; what it takes in a narrower typeface is less.</summary>
    public Box Box
    {
        get
        {
            var width = TextWidth.Of(Text, Role, TextWidth.IsBold(Ink)) * Size / TextWidth.SizeOf(Role);
            return new Box(X - (width * ShareBefore), Y - (0.78 * Size), width, Size);
        }
    }

    /// <summary>How much of the text's width stands before its place, 0 to 1.</summary>
    public double ShareBefore => Anchor switch
    {
        TextAnchor.Start => 0,
        TextAnchor.Middle => 0.5,
        _ => 1,
    };
}
