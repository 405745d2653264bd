using Loadmark.Core.Checks;
using Loadmark.Drawing.Fonts;
using Loadmark.Drawing.Scenes;

namespace Loadmark.Drawing.Paper;

/// <summary>A text within a cell of a table; each begins a line.</summary>
/// <param name="Text">The text; it is wrapped, never shortened.</param>
/// <param name="Ink">What it is for.</param>
public sealed record TableText(string Text, Ink Ink = Ink.Text)
{
    /// <summary>The room that a sign before the text takes.</summary>
    private const double SignWidth = 13;

    /// <summary>The size of the type, px.</summary>
    public double Size { get; init; } = TypeSize.Table;

    /// <summary>The severity whose sign stands before it; null for none.</summary>
    public Severity? Sign { get; init; }

    /// <summary>How far the text stands from the left edge of the cell, px.</summary>
    public double Indent => Sign is null ? 0 : SignWidth;

    /// <summary>The face it is set in.</summary>
    public FontFace Face => PaperFonts.Of(TextWidth.IsBold(Ink));
}
