using System.Collections.Immutable;
using Loadmark.Drawing.Scenes;

namespace Loadmark.Drawing.Paper;

/// <summary>A cell of a table: texts under one another, a drawing beside them, or a box to write in.</summary>
public sealed record TableCell(ImmutableArray<TableText> Texts)
{
    /// <summary>An empty cell.</summary>
    public static TableCell Empty { get; } = new(ImmutableArray<TableText>.Empty);

    /// <summary>An empty box that somebody writes a reading into.</summary>
    public static TableCell Box { get; } = new(ImmutableArray<TableText>.Empty) { IsBox = true };

    /// <summary>Whether somebody is to write into the cell.</summary>
    public bool IsBox { get; init; }

    /// <summary>The height of a sign, px.</summary>
    public const double SignHeight = 20;

    /// <summary>How wide the sign is, px; 0 where there is none.</summary>
    public double SignWidth { get; init; }

    /// <summary>Draws before the texts, given the middle of the sign; null for nothing.</summary>
    public Func<Point, IEnumerable<Shape>>? Sign { get; init; }

    /// <summary>What the sign says, for who does not see it.</summary>
    public string SignWords { get; init; } = "";

    /// <summary>A cell of plain text.</summary>
    public static TableCell Of(string text, Ink ink = Ink.Text) => new([new TableText(text, ink)]);
}
