using Loadmark.Storage.Entities;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace Loadmark.Storage.Seals;

/// <summary>The rows of a table with their seals, read from SQLite as it keeps them: whatever columns the table has.</summary>
internal sealed class SealedTable
{
    private const string SealColumn = nameof(SealedRow.Seal);

    private readonly SqliteConnection _connection;
    private readonly string[] _columns;

    private SealedTable(SqliteConnection connection, string name, string[] columns) =>
        (_connection, Name, _columns) = (connection, name, columns);

    /// <summary>The table's name.</summary>
    public string Name { get; }

    /// <summary>The table's name as a statement has it.</summary>
    public string QuotedName => Quoted(Name);

    /// <summary>The tables whose rows have seals; empty in a database of before there were any.</summary>
    public static List<SealedTable> In(SqliteConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = """
            SELECT one.name, part.name FROM sqlite_master AS one JOIN pragma_table_info(one.name) AS part
            WHERE one.type = 'table'
            """;
        using var reader = command.ExecuteReader();
        var columns = new List<(string Table, string Column)>();
        while (reader.Read())
            columns.Add((reader.GetString(0), reader.GetString(1)));
        return [.. columns.GroupBy(static pair => pair.Table, static pair => pair.Column, StringComparer.Ordinal)
            .Where(static table => table.Contains(SealColumn))
            .Select(table => new SealedTable(
                connection, table.Key, [.. table.Where(static name => name != SealColumn).Order(StringComparer.Ordinal)]))];
    }

    /// <summary>Every row: its number within the table, the seal that it has and the one that it should have.</summary>
    /// <param name="after">Only rows whose number is greater.</param>
    /// <exception cref="SqliteException">The table cannot be read to its end.</exception>
    public IEnumerable<RowSeal> Rows(long after = long.MinValue)
    {
        var hash = new SealHash();
        var list = string.Join(", ", _columns.Select(Quoted));
        var sql = $"SELECT rowid, {Quoted(SealColumn)}, {list} FROM {QuotedName} NOT INDEXED WHERE rowid > {after} ORDER BY rowid";
        Check(raw.sqlite3_prepare_v2(_connection.Handle, sql, out var statement));
        using (statement)
        {
            for (var state = raw.sqlite3_step(statement); state != raw.SQLITE_DONE; state = raw.sqlite3_step(statement))
            {
                if (state != raw.SQLITE_ROW)
                    Check(state);
                var isNumber = raw.sqlite3_column_type(statement, 1) == raw.SQLITE_INTEGER;
                var right = SealOf(statement, hash);
                yield return new RowSeal(
                    raw.sqlite3_column_int64(statement, 0),
                    raw.sqlite3_column_int64(statement, 1),
                    right,
                    isNumber && right == raw.sqlite3_column_int64(statement, 1));
            }
        }
    }

    /// <summary>Where a row is, in words for the user.</summary>
    public string PlaceOf(long row) => RowPlace.Of(Name, column => Value(row, column));

    private static string Quoted(string name) => $"\"{name.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";

    private long SealOf(sqlite3_stmt statement, SealHash hash)
    {
        hash.Begin(Name);
        for (var at = 2; at < _columns.Length + 2; at++)
        {
            switch (raw.sqlite3_column_type(statement, at))
            {
                case raw.SQLITE_NULL:
                    hash.AddNull();
                    break;
                case raw.SQLITE_INTEGER:
                    hash.Add(raw.sqlite3_column_int64(statement, at));
                    break;
                case raw.SQLITE_TEXT:
                    hash.AddText(raw.sqlite3_column_blob(statement, at));
                    break;
                default:
                    // Bytes. No column has a number with a fraction; where one stands there, its bytes break the seal.
                    hash.AddBytes(raw.sqlite3_column_blob(statement, at));
                    break;
            }
        }

        return hash.End();
    }

    private string? Value(long row, string column)
    {
        using var command = _connection.CreateCommand();
#pragma warning disable CA2100 // Names of tables and columns, quoted.
        command.CommandText = $"SELECT CAST({Quoted(column)} AS TEXT) FROM {QuotedName} WHERE rowid = $row";
#pragma warning restore CA2100
        command.Parameters.AddWithValue("$row", row);
        return command.ExecuteScalar() as string;
    }

    private void Check(int state) => SqliteException.ThrowExceptionForRC(state, _connection.Handle);
}
