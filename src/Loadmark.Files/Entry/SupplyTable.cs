using Loadmark.Core.Rigs;
using Loadmark.Files.Keys;
using Loadmark.Files.Trees;
using Loadmark.Files.Writing;

namespace Loadmark.Files.Entry;

/// <summary>
/// Reads and writes supplies as a table with a row for each outlet. What belongs to the supply stands in its first row; a bank
/// with a limit of its own has a row of its own.
/// </summary>
public static class SupplyTable
{
    private static readonly string[] OutletColumns = ["outlet", .. OutletKeys.Table.Fields.Select(static field => field.Column), "bank_total"];

    private static readonly string[] SupplyColumns = [.. SupplyKeys.Table.Fields.Select(static field => field.Column)];

    /// <summary>
    /// Reads a table of supplies. Its first row names the columns: <c>supply</c> is needed, and <c>outlet</c> with
    /// <c>outlet_label</c>, or with volts and milliamps. A row without a supply goes on with the one above. Never throws on any
    /// text.
    /// </summary>
    /// <param name="text">The text; a byte order mark at its start is passed over.</param>
    /// <param name="existing">The ids of the supplies that the rig has already.</param>
    /// <returns>What each column became, a row for each supply and one for each line that is refused.</returns>
    public static EntryReading Read(string text, IReadOnlyCollection<string> existing) => Read(text, existing, TableLimits.OfEntry);

    /// <summary>As above, with other limits.</summary>
    internal static EntryReading Read(string text, IReadOnlyCollection<string> existing, TableLimits limits)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(existing);
        return TableRow.ReadAll(text, (rows, separator) =>
            TableColumns.ByName(rows[0], ColumnNames.OfSupplies) is { } columns && columns.Exists(column => column.Becomes == "supply")
                ? new EntryReading([.. new SupplyRows(columns, separator, existing).Read(rows[1..])], [.. columns], null)
                : EntryReading.Failed($"the first row must name the columns, 'supply' among them; the names are {string.Join(", ", ColumnNames.OfSupplies.Keys)}"), limits);
    }

    /// <summary>
    /// Writes supplies as a table. Reading it gives equal supplies. A cell that a spreadsheet would run as a formula has an
    /// apostrophe before it, which reading takes off (OWASP, "CSV Injection").
    /// </summary>
    /// <param name="supplies">The supplies.</param>
    /// <param name="separator">A comma, a semicolon or a tab.</param>
    /// <exception cref="ArgumentException">Another separator, or a supply has a figure that no text reads back as.</exception>
    public static string Write(IEnumerable<Supply> supplies, char separator = ',')
    {
        ArgumentNullException.ThrowIfNull(supplies);
        return Write(supplies, separator, static _ => "");
    }

    /// <summary>As above, with the words that each supply is filed under, if there are any.</summary>
    internal static string Write(IEnumerable<Supply> supplies, char separator, Func<Supply, string> wordsOf)
    {
        var rows = new List<Dictionary<string, string?>>();
        foreach (var supply in supplies)
        {
            var first = rows.Count;
            AddRows(rows, supply);
            if (wordsOf(supply) is { Length: > 0 } words)
                rows[first][ColumnNames.Words] = words;
        }

        var used = SupplyColumns.Concat(OutletColumns).Append(ColumnNames.Words).Where(key => rows.Exists(row => row.ContainsKey(key))).Prepend("supply").ToList();
        return CellText.Write(rows.Select(row => used.Select(row.GetValueOrDefault)).Prepend(used), separator);
    }

    private static void AddRows(List<Dictionary<string, string?>> rows, Supply supply)
    {
        var keys = TreeBuilder.TreeOf(yaml =>
        {
            yaml.BeginGroup();
            SupplyWriter.WriteKeys(yaml, supply);
            yaml.EndGroup();
        });
        var first = rows.Count;
        foreach (var (id, value) in (keys.Find("outlets") as MappingNode)?.Entries ?? [])
        {
            var row = NewRow(supply, "outlet", id.Value);
            if (value is ScalarNode { Value.Length: > 0 } label)
                row["outlet_label"] = label.Value;
            foreach (var (key, inner) in (value as MappingNode)?.Entries ?? [])
                row[key.Value is "label" or "isolated" ? $"outlet_{key.Value}" : key.Value] = ((ScalarNode)inner).Value;
            rows.Add(row);
        }

        foreach (var (name, total) in (keys.Find("banks") as MappingNode)?.Entries ?? [])
        {
            var row = NewRow(supply, "bank", name.Value);
            row["bank_total"] = ((ScalarNode)total).Value;
            rows.Add(row);
        }

        if (rows.Count == first)
            rows.Add(NewRow(supply, "supply", supply.Id));
        foreach (var key in SupplyColumns)
        {
            if (keys.Find(key) is ScalarNode text)
                rows[first][key] = text.Value;
        }
    }

    private static Dictionary<string, string?> NewRow(Supply supply, string key, string value) =>
        new(StringComparer.Ordinal) { ["supply"] = supply.Id, [key] = value };
}
