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
    /// <summary>The width the text takes at most, by <see cref="TextWidth"/>; what it takes in a narrower typeface is less.</summary>
    public Box Box
    {
        get
        {
            var size = TextWidth.SizeOf(Role);
            var width = TextWidth.Of(Text, Role, TextWidth.IsBold(Ink));
            var left = Anchor switch
            {
                TextAnchor.Start => X,
                TextAnchor.Middle => X - (width / 2),
                _ => X - width,
            };
            return new Box(left, Y - (0.78 * size), width, size);
        }
    }
}
