using Loadmark.Core.Nameplates;
using Loadmark.Files.Errors;
using Loadmark.Files.Keys;
using Loadmark.Files.Parsing;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Entry;

/// <summary>Reads the rows of a table as loads; an instance serves once.</summary>
/// <param name="columns">What the columns are.</param>
/// <param name="separator">What parts the cells.</param>
/// <param name="target">What the table is read for.</param>
internal sealed class LoadRows(List<EntryColumn> columns, char separator, EntryTarget target)
{
    private static readonly string[] Figures = ["label", "voltage", "current", "watts", "run"];

    private readonly HashSet<string> _existing = target.Existing.ToHashSet(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _places = new(StringComparer.Ordinal);
    private readonly int _tag = columns.FindIndex(column => column.Becomes == "tag");

    /// <summary>A row for each.</summary>
    public List<EntryRow> Read(List<TableRow> rows)
    {
        var free = new IdSequence(
            LoadLines.Prefix, 2, [.. target.Existing, .. rows.Select(row => row.Text(_tag)?.Trim()).OfType<string>()], target.Elsewhere);
        return rows.ConvertAll(row => ReadRow(row, free));
    }

    /// <summary>A polarity in the rig file's own words, where its words are those of a label and say nothing else.</summary>
    public static string Polarity(string text) =>
        NameplateReader.Read(text) is
        {
            Unread.Length: 0, Modes.Length: 0, Mains: null, Plug.State: FieldState.Absent,
            Form.State: FieldState.Absent, Polarity.Value: { } polarity
        }
            ? RigWords.Polarity.WordOf(polarity)
            : text;

    private EntryRow ReadRow(TableRow row, IdSequence free)
    {
        if (row.Refuse(columns.Count, separator) is { } odd)
            return row.Source.Refuse(odd);
        var group = new MappingNode(row.Cells[0].Start, isFlow: true);
        foreach (var column in columns)
        {
            if (column.Becomes is null or "tag" or ColumnNames.Words || row.Text(column.Index) is not { } text)
                continue;
            text = column.Becomes == "polarity" ? Polarity(text) : TableColumns.WithUnit(text, column);
            group.Entries.Add((row.Node(column.Index, column.Becomes), row.Node(column.Index, text)));
        }

        var tag = row.Text(_tag)?.Trim();
        if (tag is null && !Array.Exists(Figures, key => group.Find(key) is not null))
            return row.Source.Refuse("it has neither a tag nor a figure", "a tag, and a label or figures");
        if (group.Find("label") is ScalarNode { Value.Length: > NameplateReader.Longest })
            return row.Source.Refuse($"its label is longer than {NameplateReader.Longest} characters, which no label is", null);
        var errors = new ErrorList("");
        var load = LoadReader.Read(row.Node(0, tag ?? LoadLines.Prefix), group, errors);
        if (errors.Any)
            return row.Source.Refuse(string.Join("; ", errors.ToArray().Select(error => error.Message)), errors.ToArray()[0].Expected);
        if (tag is not null && LoadLines.RefuseId(tag, "a load", mayHaveSlash: true, row.Source.Number, _places) is { } refusal)
            return row.Source.Refuse(refusal);
        var id = tag ?? free.Next();
        return new EntryRow
        {
            Line = row.Source.Number,
            Text = row.Source.Text,
            Load = load! with { Id = id },
            Words = row.Text(columns.FindIndex(static column => column.Becomes == ColumnNames.Words)),
            IsIdProposed = tag is null,
            Replaces = _existing.Contains(id) ? [id] : [],
        };
    }
}
