using Loadmark.Files.Keys;

namespace Loadmark.Files.Entry;

/// <summary>Writes what is said of things as a table, a column for each field that something is said of.</summary>
/// <param name="columns">The columns that there may be, in order.</param>
/// <param name="always">Those that are there though no row has anything in them.</param>
internal sealed class TableWriter(ColumnNames columns, params string[] always)
{
    private readonly List<Dictionary<string, string>> _rows = [];

    /// <summary>Begins a row.</summary>
    public void NewRow() => _rows.Add(new Dictionary<string, string>(StringComparer.Ordinal));

    /// <summary>Puts a text into the row; an empty one leaves the cell empty.</summary>
    public void Put(string column, string text)
    {
        if (text.Length > 0)
            _rows[^1][column] = text;
    }

    /// <summary>Puts what is said of a thing into the row; a text that is there and empty stands in its cell too.</summary>
    public void Put<T>(T thing, FieldTable<T> table)
    {
        foreach (var field in table.Fields)
        {
            if (field.TextOf(thing) is { } text)
                _rows[^1][field.Column] = text;
        }
    }

    /// <summary>The table, with the names of its columns in the first row.</summary>
    /// <param name="separator">A comma, a semicolon or a tab.</param>
    /// <exception cref="ArgumentException">Another separator.</exception>
    public string Write(char separator)
    {
        var used = columns.Keys.Where(column => always.Contains(column) || _rows.Exists(row => row.ContainsKey(column))).ToList();
        return CellText.Write(_rows.Select(row => used.Select(row.GetValueOrDefault)).Prepend(used), separator);
    }
}
