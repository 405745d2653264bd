using Loadmark.Core.Texts;
using Loadmark.Files.Errors;
using Loadmark.Files.Trees;

namespace Loadmark.Files.PriceLists;

/// <summary>The first line of a price list: which column is where.</summary>
internal sealed class PriceHeader
{
    private readonly Dictionary<string, int> _columns = new(StringComparer.OrdinalIgnoreCase);

    private PriceHeader(int count) => Count = count;

    /// <summary>How many columns there are.</summary>
    public int Count { get; }

    /// <summary>Reads the names of the columns, in any case and order; null, with errors, where they are not what they should be.</summary>
    public static PriceHeader? Read(ScalarNode[] cells, ErrorList errors)
    {
        var header = new PriceHeader(cells.Length);
        var isGood = true;
        for (var index = 0; index < cells.Length; index++)
            isGood &= header.Add(cells[index], index, errors);

        // A column that is missing is most likely the one whose name is not known; one error for it is enough.
        if (!isGood)
            return null;
        var what = header.Has(PriceColumn.Supply) || !header.Has(PriceColumn.Lead) ? PriceColumn.Supply : PriceColumn.Lead;
        foreach (var needed in (ReadOnlySpan<string>)[what, PriceColumn.Price])
        {
            if (header.Has(needed))
                continue;
            errors.Add(cells[0].Start, $"the column '{needed}' is missing; the first line names the columns", null, $"a column '{needed}'");
            isGood = false;
        }

        if (what == PriceColumn.Supply && !header.Has(PriceColumn.Label) && !header.Has(PriceColumn.Outlets))
        {
            errors.Add(
                cells[0].Start,
                $"a column '{PriceColumn.Outlets}' or '{PriceColumn.Label}' is missing: nothing tells what a supply gives",
                null,
                $"a column '{PriceColumn.Outlets}'");
            isGood = false;
        }

        return isGood ? header : null;
    }

    /// <summary>Whether there is such a column.</summary>
    public bool Has(string column) => _columns.ContainsKey(column);

    /// <summary>A row's cell of a column; null where there is no such column.</summary>
    public ScalarNode? Cell(ScalarNode[] row, string column) => _columns.TryGetValue(column, out var index) ? row[index] : null;

    private bool Add(ScalarNode cell, int index, ErrorList errors)
    {
        var name = PriceColumn.All.FirstOrDefault(known => known.Equals(cell.Value, StringComparison.OrdinalIgnoreCase));
        if (name is null)
        {
            var nearest = errors.IsFull ? null : NearestWord.Find(cell.Value, PriceColumn.All);
            var hint = nearest is null ? $"the columns are {string.Join(", ", PriceColumn.All)}" : $"did you mean '{nearest}'?";
            errors.Add(
                cell.Start,
                $"'{ErrorList.Quote(cell.Value)}' is not a column of a price list; {hint}",
                cell.Value,
                "a column of a price list",
                nearest);
            return false;
        }

        if (_columns.TryAdd(name, index))
            return true;
        errors.Add(cell.Start, $"the column '{name}' stands here a second time", cell.Value);
        return false;
    }
}
