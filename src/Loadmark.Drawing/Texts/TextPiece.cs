using Loadmark.Core.Checks;
using Loadmark.Drawing.Scenes;

namespace Loadmark.Drawing.Texts;

/// <summary>A piece of a text that is laid into lines.</summary>
/// <param name="Text">The text, clean.</param>
/// <param name="Ink">What it is for.</param>
/// <param name="Rank">How soon it is left out where there is no room, 0 for never.</param>
internal sealed record TextPiece(string Text, Ink Ink, int Rank = 0)
{
    /// <summary>What the piece is for, which decides its size.</summary>
    public TextRole Role { get; init; } = TextRole.Small;

    /// <summary>The severity whose sign stands before it; null for none.</summary>
    public Severity? Sign { get; init; }

    /// <summary>Whether the piece begins a line.</summary>
    public bool BeginsLine { get; init; }

    /// <summary>Whether the piece may be shortened rather than moved to the next line.</summary>
    public bool MayShrink { get; init; }

    /// <summary>The width the piece takes, its sign included.</summary>
    public double Width => TextWidth.Of(Text, Role, TextWidth.IsBold(Ink)) + SignWidth;

    /// <summary>The width the piece's sign takes.</summary>
    public double SignWidth => Sign is null ? 0 : 14;
}
