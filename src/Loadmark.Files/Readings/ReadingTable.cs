using Loadmark.Core.Acceptance;
using Loadmark.Core.LeadLists;
using Loadmark.Files.Errors;
using Loadmark.Files.Tables;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Readings;

/// <summary>Reads a table of readings, a plug a row.</summary>
internal sealed class ReadingTable(MeasuredPlugs measured, ErrorList errors)
{
    private readonly Dictionary<string, (int Column, string Unit)> _columns = new(StringComparer.Ordinal);

    /// <summary>Reads the rows; the first names the columns.</summary>
    public void Read(CsvTable table)
    {
        var head = table.Rows[0];
        for (var column = 0; column < head.Length; column++)
            AddColumn(head[column], column);
        foreach (var row in table.Rows.Skip(1))
        {
            if (row.Length > head.Length)
                errors.Add(
                    row[head.Length].Start,
                    $"this line has {row.Length} cells and the header names {head.Length} columns; a cell with '{table.Separator}' in it "
                    + "goes in quotation marks",
                    row[head.Length].Value);
            else if (PlugOf(row) is { } plug)
                ReadRow(row, plug);
        }
    }

    private void AddColumn(ScalarNode cell, int column)
    {
        if (ReadingColumns.Find(cell.Value) is not { } name)
            errors.Add(
                cell.Start,
                $"'{ErrorList.Quote(cell.Value)}' is not a column of a table of readings; they are plug, load, open, loaded, draw",
                cell.Value, "a column of a table of readings");
        else if (name.Length > 0 && !_columns.TryAdd(name, (column, ReadingColumns.UnitOf(cell.Value))))
            errors.Add(cell.Start, $"the column '{name}' stands here a second time", cell.Value);
    }

    /// <summary>A row whose plug is named counts for that plug, and its load has to be the one that is there.</summary>
    private PlugPlace? PlugOf(ScalarNode[] row)
    {
        var (plug, load) = (Cell(row, ReadingColumns.Plug), Cell(row, ReadingColumns.Load));
        if ((plug ?? load) is not { } named)
        {
            errors.Add(row[0].Start, "this line names no plug", null, "a plug of the rig, or the load on it");
            return null;
        }

        if (measured.Find(named.Value, named.Start) is not { } found)
            return null;
        if (plug is not null && load is not null && !load.Value.Equals(found.Load.Id, StringComparison.OrdinalIgnoreCase))
        {
            errors.Add(load.Start, $"'{found.Name}' feeds {found.Load.Id}, not {ErrorList.Quote(load.Value)}", load.Value, found.Load.Id);
            return null;
        }

        return found;
    }

    private void ReadRow(ScalarNode[] row, PlugPlace plug)
    {
        foreach (var measure in (ReadOnlySpan<BenchMeasure>)[BenchMeasure.Open, BenchMeasure.Loaded, BenchMeasure.Draw])
        {
            var name = ReadingColumns.NameOf(measure);
            if (Cell(row, name) is not { } cell)
                continue;
            var typed = cell.Value;
            if (_columns[name].Unit is { Length: > 0 } unit && !char.IsLetter(typed[^1]))
                typed = $"{typed} {unit}";
            if (measure == BenchMeasure.Draw)
                measured.AddAmps(plug, typed, cell.Start);
            else
                measured.AddVolts(plug, measure, typed, cell.Start);
        }
    }

    private ScalarNode? Cell(ScalarNode[] row, string name)
    {
        if (!_columns.TryGetValue(name, out var column) || column.Column >= row.Length)
            return null;
        var cell = row[column.Column];
        return CellGuard.Unguard(cell.Value) is { Length: > 0 } text ? new ScalarNode(cell.Start, text, isPlain: false) : null;
    }
}
