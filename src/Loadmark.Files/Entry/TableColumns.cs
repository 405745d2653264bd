using Loadmark.Core.Texts;
using Loadmark.Files.Errors;

namespace Loadmark.Files.Entry;

/// <summary>What the columns of a table are, by the names in its first row.</summary>
internal static class TableColumns
{
    /// <summary>The columns; null when the first row does not name any.</summary>
    public static List<EntryColumn>? ByName(TableRow first, ColumnNames names)
    {
        var found = first.Cells.Select((_, index) => first.Text(index) is { } name ? names.Find(name) : null).ToList();
        if (found.TrueForAll(one => one is null)
            || first.Cells.Select((_, index) => first.Text(index)).Any(text => text is not null && ColumnContent.IsFigure(text)))
            return null;
        var columns = new List<EntryColumn>();
        for (var index = 0; index < found.Count; index++)
            columns.Add(Column(index, first.Text(index), found[index], columns, names));
        return columns;
    }

    /// <summary>A text with the unit of its column, where it is a bare number.</summary>
    public static string WithUnit(string text, EntryColumn column) =>
        column.Unit is not null && char.IsAsciiDigit(text.TrimEnd().LastOrDefault()) ? $"{text.TrimEnd()} {column.Unit}" : text;

    private static EntryColumn Column(
        int index, string? name, (string Key, string? Unit)? found, List<EntryColumn> before, ColumnNames names)
    {
        if (name is null)
            return new EntryColumn(index, null, null, null, "left out: it has no name");
        if (found is not { } known)
        {
            var nearest = NearestWord.Find(name, names.Keys);
            var hint = nearest is null ? $"the names are {string.Join(", ", names.Keys)}" : $"did you mean '{nearest}'?";
            return new EntryColumn(index, name, null, null, $"left out: '{ErrorList.Quote(name)}' is not the name of a column; {hint}");
        }

        return before.Exists(one => one.Becomes == known.Key)
            ? new EntryColumn(index, name, null, null, $"left out: a column before it is the {known.Key} already")
            : new EntryColumn(
                index, name, known.Key, known.Unit, known.Unit is null ? "by its name" : $"by its name; bare numbers are in {known.Unit}");
    }
}
