using Loadmark.Files.Errors;
using Loadmark.Files.Keys;
using Loadmark.Files.Parsing;
using Loadmark.Files.Trees;
using Loadmark.Files.Values;

namespace Loadmark.Files.Entry;

/// <summary>Reads the rows of a table as supplies; an instance serves once.</summary>
/// <param name="columns">What the columns are.</param>
/// <param name="separator">What parts the cells.</param>
/// <param name="existing">The ids that the rig has already.</param>
internal sealed class SupplyRows(List<EntryColumn> columns, char separator, IReadOnlyCollection<string> existing)
{
    private const string OutletLabel = "outlet_label";

    private readonly HashSet<string> _existing = existing.ToHashSet(StringComparer.Ordinal);
    private readonly OutletAllowance _allowance = new();

    /// <summary>A row for each supply and one for each line that is refused.</summary>
    public List<EntryRow> Read(List<TableRow> rows)
    {
        var refused = new List<EntryRow>();
        var groups = new Dictionary<string, List<TableRow>>(StringComparer.Ordinal);
        var order = new List<string>();
        foreach (var row in rows)
        {
            var id = Text(row, "supply")?.Trim();
            if (row.Refuse(columns.Count, separator) is { } odd)
                refused.Add(row.Source.Refuse(odd));
            else if (id is null && order.Count == 0)
                refused.Add(row.Source.Refuse("it names no supply, and none stands above it", "the supply's id"));
            else if (id is null)
                groups[order[^1]].Add(row);
            else if (Ids.Problem(id, mayHaveSlash: false) is { } problem)
                refused.Add(row.Source.Refuse($"'{ErrorList.Quote(id)}' cannot be the id of a supply: {problem}", null));
            else
                RowsOf(id, groups, order).Add(row);
        }

        return [.. order.SelectMany(id => ReadSupply(id, groups[id])).Concat(refused).OrderBy(row => row.Line)];
    }

    private static List<TableRow> RowsOf(string id, Dictionary<string, List<TableRow>> groups, List<string> order)
    {
        if (!groups.TryGetValue(id, out var rows))
            groups.Add(id, rows = []);
        order.Remove(id);
        order.Add(id);
        return rows;
    }

    private string? Text(TableRow row, string key) => row.Text(IndexOf(key));

    private int IndexOf(string key) => columns.FindIndex(column => column.Becomes == key);

    private IEnumerable<EntryRow> ReadSupply(string id, List<TableRow> rows)
    {
        var group = new MappingNode(rows[0].Cells[0].Start, isFlow: true);
        var outlets = new MappingNode(group.Start, isFlow: true);
        var banks = new MappingNode(group.Start, isFlow: true);
        var refused = new List<EntryRow>();
        var places = new Dictionary<string, Spot>(StringComparer.Ordinal);
        foreach (var row in rows)
        {
            if ((AddOwn(row, group) ?? AddPart(row, outlets, banks, places)) is { } problem)
                refused.Add(row.Source.Refuse(problem, null));
        }

        // Where none is listed the label's count; but not in place of some that are refused.
        if (outlets.Entries.Count > 0 || refused.Count > 0)
            group.Entries.Add((rows[0].Node(0, "outlets"), outlets));
        if (banks.Entries.Count > 0)
            group.Entries.Add((rows[0].Node(0, "banks"), banks));
        var errors = new ErrorList("");
        var supply = SupplyReader.Read(rows[0].Node(0, id), group, new OutletAllowance(), errors);
        var lines = refused.Select(row => row.Line).ToHashSet();
        var good = rows.Where(row => !lines.Contains(row.Source.Number)).ToList();
        if (!errors.Any && good.Count > 0)
        {
            var text = string.Join('\n', good.Select(row => row.Source.Text));
            var taken = new EntryRow
            {
                Line = good[0].Source.Number,
                Text = text,
                Supply = supply,
                Words = good.Select(row => Text(row, ColumnNames.Words)).FirstOrDefault(static words => words is not null),
                Replaces = _existing.Contains(id) ? [id] : [],
            };
            return refused.Append(taken);
        }

        var because = errors.Any ? errors.ToArray()[0].Message : "";
        return refused.Concat(
            good.Select(
                (row, index) => row.Source.Refuse(
                    index == 0 ? because : $"its supply '{ErrorList.Quote(id)}' is refused: {because}", null)));
    }

    /// <summary>Adds the keys of the supply itself.</summary>
    /// <returns>What is wrong; null when nothing is.</returns>
    private string? AddOwn(TableRow row, MappingNode group)
    {
        foreach (var key in SupplyKeys.Table.Fields.Select(static field => field.Name))
        {
            if (Text(row, key) is not { } text)
                continue;
            if (group.Find(key) is not ScalarNode known)
                group.Entries.Add((row.Node(0, key), row.Node(IndexOf(key), text)));
            else if (known.Value != text)
                return $"{key}: the line {known.Start.Line} says \"{ErrorList.Quote(known.Value)}\" of the same supply and this one "
                    + $"\"{ErrorList.Quote(text)}\"";
        }

        return null;
    }

    /// <summary>Adds an outlet or a bank.</summary>
    /// <returns>What is wrong; null when nothing is.</returns>
    private string? AddPart(TableRow row, MappingNode outlets, MappingNode banks, Dictionary<string, Spot> places)
    {
        var errors = new ErrorList("");
        var group = new MappingNode(row.Cells[0].Start, isFlow: true);
        foreach (var field in OutletKeys.Table.Fields)
        {
            var text = field.Column == OutletLabel ? LabelOf(row) : Text(row, field.Column);
            if (text is null)
                continue;
            text = field.Name == "polarity" ? LoadRows.Polarity(text) : text;
            group.Entries.Add((row.Node(0, field.Name), row.Node(Math.Max(0, IndexOf(field.Column)), text)));
        }

        if (Text(row, "outlet") is { } id)
        {
            var node = row.Node(IndexOf("outlet"), id.Trim());
            OutletReader.Read(node, group, places, [], _allowance, errors);
            if (!errors.Any)
                outlets.Entries.Add((node, group));
        }
        else if (Text(row, "bank_total") is { } total && Text(row, "bank") is { } bank)
        {
            var node = row.Node(IndexOf("bank"), bank.Trim());
            if (banks.Find(node.Value) is not null)
                errors.Add(node.Start, $"the bank '{ErrorList.Quote(bank)}' stands here a second time");
            else if (QuantityParser.Total(row.Node(IndexOf("bank_total"), total), "bank_total", errors) is not null)
                banks.Entries.Add((node, row.Node(IndexOf("bank_total"), total)));
        }
        else if (group.Entries.Count > 0)
        {
            return "it says something of an outlet, and no outlet is named";
        }

        return errors.Any ? errors.ToArray()[0].Message : null;
    }

    /// <summary>The outlet's label: as it stands, else put together from its figures; null when there is neither.</summary>
    private string? LabelOf(TableRow row)
    {
        if (Text(row, OutletLabel) is { } label)
            return label;
        var figures = columns.Where(column => column.Becomes is "voltage" or "current" or "watts")
            .Select(column => row.Text(column.Index) is { } text ? TableColumns.WithUnit(text, column) : null).OfType<string>().ToList();
        return figures.Count == 0 ? null : string.Join(' ', figures);
    }
}
