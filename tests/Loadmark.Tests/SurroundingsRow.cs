namespace Loadmark.Tests;

/// <summary>A row of the tables in <c>docs/surroundings.md</c>.</summary>
/// <param name="Typed">What is typed in a shell.</param>
/// <param name="Says">What the program says on standard error, all in one line; empty for nothing.</param>
/// <param name="Code">The exit code.</param>
internal sealed record SurroundingsRow(string Typed, string Says, int Code)
{
    /// <summary>The rows of all tables, in their order.</summary>
    public static IReadOnlyList<SurroundingsRow> All { get; } =
    [
        .. File.ReadLines(Repository.PathOf("docs", "surroundings.md"))
            .Where(static line => line.StartsWith("| `", StringComparison.Ordinal))
            .Select(static line => line.Replace("\\|", "¦", StringComparison.Ordinal).Split('|'))
            .Select(static cells => new SurroundingsRow(
                cells[1].Trim().Trim('`').Replace('¦', '|'), cells[2].Trim(), int.Parse(cells[3].Trim(), System.Globalization.CultureInfo.InvariantCulture))),
    ];
}
