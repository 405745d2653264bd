using Loadmark.Workshop.Library;

namespace Loadmark.Answers;

/// <summary>What became of a file of gear.</summary>
/// <param name="Preview">The import's rows.</param>
/// <param name="Result">What was done with them.</param>
/// <param name="LeftOut">The columns that were not taken, each with why.</param>
internal sealed record ImportedGear(ImportPreview Preview, ImportResult Result, IReadOnlyList<string> LeftOut)
{
    /// <summary>How many rows are in a state.</summary>
    public int Count(ImportState state) => Preview.Rows.Count(row => row.State == state);

    /// <summary>Whether a row was taken.</summary>
    public bool Took(ImportRow row) => Result.Added.Contains(row) || Result.Changed.Contains(row);
}
