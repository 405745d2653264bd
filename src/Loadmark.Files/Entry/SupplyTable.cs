using Loadmark.Core.Rigs;
using Loadmark.Files.Keys;
using Loadmark.Files.Values;

namespace Loadmark.Files.Entry;

/// <summary>
/// Reads and writes supplies as a table with a row for each outlet. What belongs to the supply stands in its first row; a bank
/// with a limit of its own has a row of its own.
/// </summary>
public static class SupplyTable
{
    private const string Id = "supply";

    /// <summary>
    /// Reads a table of supplies. Its first row names the columns: <c>supply</c> is needed, and <c>outlet</c> with
    /// <c>outlet_label</c>, or with volts and milliamps. A row without a supply goes on with the one above. Never throws on any
    /// text.
    /// </summary>
    /// <param name="text">The text; a byte order mark at its start is passed over.</param>
    /// <param name="existing">The ids of the supplies that the rig has already.</param>
    /// <param name="limits">How much is read; null for as much as is taken on entry.</param>
    /// <returns>What each column became, a row for each supply and one for each line that is refused.</returns>
    internal static EntryResult Read(string text, IReadOnlyCollection<string> existing, TableLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(existing);
        return TableRow.ReadAll(
            text,
            (rows, separator) =>
                TableColumns.ByName(rows[0], ColumnNames.OfSupplies) is { } columns && columns.Exists(column => column.Becomes == Id)
                    ? new EntryResult([.. new SupplyRows(columns, separator, existing).Read(rows[1..])], [.. columns], null)
                    : EntryResult.Failed(
                        "the first row must name the columns, 'supply' among them; "
                        + $"the names are {string.Join(", ", ColumnNames.OfSupplies.Keys)}"),
            limits ?? TableLimits.OfEntry);
    }

    /// <summary>
    /// Writes supplies as a table. Reading it gives equal supplies. A cell that a spreadsheet would run as a formula has an
    /// apostrophe before it, which reading takes off (OWASP, "CSV Injection").
    /// </summary>
    /// <param name="supplies">The supplies.</param>
    /// <param name="separator">A comma, a semicolon or a tab.</param>
    /// <param name="wordsOf">The words that a supply is filed under; null where none is.</param>
    /// <exception cref="ArgumentException">Another separator, or a supply has a figure that no text reads back as.</exception>
    public static string Write(IEnumerable<Supply> supplies, char separator = ',', Func<Supply, string>? wordsOf = null)
    {
        ArgumentNullException.ThrowIfNull(supplies);
        var table = new TableWriter(ColumnNames.OfSupplies, Id);
        foreach (var supply in supplies)
            Put(table, supply, wordsOf?.Invoke(supply) ?? "");
        return table.Write(separator);
    }

    private static void Put(TableWriter table, Supply supply, string words)
    {
        ValueList<Outlet> outlets = LabelledOutlets.AreOf(supply) ? [] : supply.Outlets;
        for (var part = 0; part == 0 || part < outlets.Count + supply.Banks.Count; part++)
        {
            table.NewRow();
            table.Put(Id, supply.Id);
            if (part == 0)
            {
                table.Put(supply, SupplyKeys.Table);
                table.Put(ColumnNames.Words, words);
            }

            if (part < outlets.Count)
            {
                table.Put("outlet", outlets[part].Id);
                table.Put(outlets[part], OutletKeys.Table);
            }
            else if (part - outlets.Count < supply.Banks.Count)
            {
                var bank = supply.Banks[part - outlets.Count];
                table.Put("bank", bank.Name);
                table.Put("bank_total", QuantityWriter.Of(bank.Total));
            }
        }
    }
}
