using System.Collections.Immutable;

namespace Loadmark.Drawing.Paper;

/// <summary>A row of a table.</summary>
/// <param name="Cells">A cell for each column.</param>
public sealed record PaperTableRow(ImmutableArray<TableCell> Cells)
{
    /// <summary>Whether the row begins a group, which a stronger rule parts from what is above.</summary>
    public bool BeginsGroup { get; init; }

    /// <summary>Whether the row stays on the page of the row above it.</summary>
    public bool StaysWithAbove { get; init; }
}
