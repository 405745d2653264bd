using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using Loadmark.Files.Entry;
using Loadmark.Files.Errors;
using Loadmark.Files.Keys;
using Loadmark.Files.Parsing;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Library;

/// <summary>Reads and writes leads as a table, a row each.</summary>
internal static class LeadTable
{
    private const string Id = "lead";

    /// <summary>Reads a table of leads, whose first row names the columns.</summary>
    /// <param name="text">The text.</param>
    /// <param name="found">Where the rows go.</param>
    /// <param name="limits">How much is read.</param>
    public static EntryResult Read(string text, List<GearFileRow> found, TableLimits limits) => TableRow.ReadAll(
        text,
        (rows, separator) =>
        {
            if (TableColumns.ByName(rows[0], ColumnNames.OfLeads) is not { } columns
                || !columns.Exists(static column => column.Becomes == Id))
                return EntryResult.Failed(
                    $"the first row must name the columns, 'lead' among them; the names are {string.Join(", ", ColumnNames.OfLeads.Keys)}");
            found.AddRange(rows[1..].Select(row => ReadRow(row, columns, separator)));
            return new EntryResult([], [.. columns], null);
        },
        limits);

    /// <summary>Writes leads as a table. Reading it gives equal leads.</summary>
    /// <param name="leads">The leads.</param>
    /// <param name="separator">A comma, a semicolon or a tab.</param>
    /// <param name="wordsOf">The words that each is filed under; empty for none.</param>
    public static string Write(IEnumerable<Lead> leads, char separator, Func<Lead, string> wordsOf)
    {
        var table = new TableWriter(ColumnNames.OfLeads, Id);
        foreach (var lead in leads)
        {
            table.NewRow();
            table.Put(Id, lead.Id);
            table.Put(lead, LeadKeys.Table);
            table.Put(ColumnNames.Words, wordsOf(lead));
        }

        return table.Write(separator);
    }

    private static GearFileRow ReadRow(TableRow row, List<EntryColumn> columns, char separator)
    {
        var found = new GearFileRow
        {
            Line = row.Source.Number,
            Kind = GearKind.Lead,
            Tag = row.Text(columns.FindIndex(static column => column.Becomes == Id))?.Trim() ?? "",
        };
        if (row.Refuse(columns.Count, separator) is { } odd)
            return found with { Refusal = odd };
        var group = new MappingNode(row.Cells[0].Start, isFlow: true);
        foreach (var column in columns)
        {
            if (column.Becomes is not (null or Id or ColumnNames.Words) && row.Text(column.Index) is { } text)
                group.Entries.Add((row.Node(column.Index, column.Becomes), row.Node(column.Index, TableColumns.WithUnit(text, column))));
        }

        if (found.Tag.Length == 0)
            return found with { Refusal = new EntryRefusal("it has no name", "a name such as 'long chain'") };
        var errors = new ErrorList("");
        var lead = LeadReader.Read(row.Node(0, found.Tag), group, errors);
        if (errors.Any)
        {
            var said = errors.ToArray();
            var because = string.Join("; ", said.Select(static error => error.Message));
            return found with { Refusal = new EntryRefusal(because, said[0].Expected) };
        }

        var words = row.Text(columns.FindIndex(static column => column.Becomes == ColumnNames.Words));
        return found with { Piece = GearPiece.Of(lead!), Words = words is null ? null : GearTrees.Split(words) };
    }
}
