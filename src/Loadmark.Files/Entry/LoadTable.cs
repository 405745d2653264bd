using Loadmark.Core.Rigs;
using Loadmark.Files.Keys;

namespace Loadmark.Files.Entry;

/// <summary>Reads and writes loads as a table: comma-, semicolon- or tab-separated text, such as spreadsheets give.</summary>
public static class LoadTable
{
    private const string Tag = "tag";

    /// <summary>
    /// Reads a table of loads. Columns are recognised by their names in the first row, else by what is in them. Decimal points
    /// and decimal commas are read. Never throws on any text.
    /// </summary>
    /// <param name="text">The text; a byte order mark at its start is passed over.</param>
    /// <param name="target">What the table is read for.</param>
    /// <returns>What each column became and a row for each load.</returns>
    public static EntryResult Read(string text, EntryTarget target) => Read(text, target, TableLimits.OfEntry);

    /// <summary>As above, with other limits.</summary>
    internal static EntryResult Read(string text, EntryTarget target, TableLimits limits)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(target);
        return TableRow.ReadAll(text, (rows, separator) =>
        {
            var named = TableColumns.ByName(rows[0], ColumnNames.OfLoads);
            var columns = named ?? ColumnContent.Recognise(rows);
            return new EntryResult(
                [.. new LoadRows(columns, separator, target).Read(named is null ? rows : rows[1..])], [.. columns], null);
        }, limits);
    }

    /// <summary>
    /// Writes loads as a table whose first row names the columns by the keys of the rig file. Reading it gives equal loads. A
    /// cell that a spreadsheet would run as a formula has an apostrophe before it, which reading takes off (OWASP, "CSV
    /// Injection"); a label that is there and empty is a lone apostrophe.
    /// </summary>
    /// <param name="loads">The loads.</param>
    /// <param name="separator">A comma, a semicolon or a tab.</param>
    /// <param name="wordsOf">The words that a load is filed under; null where none is.</param>
    /// <exception cref="ArgumentException">Another separator, or a load has a figure that no text reads back as.</exception>
    public static string Write(IEnumerable<Load> loads, char separator = ',', Func<Load, string>? wordsOf = null)
    {
        ArgumentNullException.ThrowIfNull(loads);
        var table = new TableWriter(ColumnNames.OfLoads, Tag, "label");
        foreach (var load in loads)
        {
            table.NewRow();
            table.Put(Tag, load.Id);
            table.Put(load, LoadKeys.Table);
            table.Put(ColumnNames.Words, wordsOf?.Invoke(load) ?? "");
        }

        return table.Write(separator);
    }
}
