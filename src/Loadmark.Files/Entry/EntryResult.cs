using System.Collections.Immutable;

namespace Loadmark.Files.Entry;

/// <summary>What came of reading lines or a table. Nothing is lost: every line with text in it is in a row, refused or not.</summary>
/// <param name="Rows">The rows, from the top down.</param>
/// <param name="Columns">What the columns became; empty where there are none.</param>
/// <param name="Problem">Why nothing was read at all; null when it was.</param>
public sealed record EntryResult(ImmutableArray<EntryRow> Rows, ImmutableArray<EntryColumn> Columns, string? Problem)
{
    /// <summary>The most lines, or rows of a table, that are read at once.</summary>
    public const int MostLines = 2_000;

    /// <summary>A reading that came to nothing.</summary>
    internal static EntryResult Failed(string problem) => new([], [], problem);
}
