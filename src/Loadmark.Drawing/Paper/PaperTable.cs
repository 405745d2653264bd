using System.Collections.Immutable;

namespace Loadmark.Drawing.Paper;

/// <summary>A table for paper: headings that are said again on each page, and rows.</summary>
public sealed record PaperTable(ImmutableArray<TableColumn> Columns, ImmutableArray<PaperTableRow> Rows);
