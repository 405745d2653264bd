using System.Globalization;

namespace Loadmark.Reference.Figures;

/// <summary>One row of a table of published figures.</summary>
/// <param name="cells">The cells by the name of their column.</param>
public sealed class ReferenceRow(IReadOnlyDictionary<string, string> cells)
{
    /// <summary>The cell of a column; empty where the table has no figure.</summary>
    /// <exception cref="KeyNotFoundException">The table has no such column.</exception>
    public string this[string column] => cells[column];

    /// <summary>Whether the row's figures were read in the source it names, as against written down from memory.</summary>
    public bool WasRead => this["read_or_memory"].StartsWith("read", StringComparison.Ordinal);

    /// <summary>Whether the table has a figure in a column.</summary>
    public bool Has(string column) => this[column].Length > 0;

    /// <summary>The figure of a column, with as many decimals as are printed.</summary>
    /// <exception cref="FormatException">The cell is empty or not a number.</exception>
    public decimal Number(string column) => decimal.Parse(this[column], NumberStyles.Float, CultureInfo.InvariantCulture);
}
