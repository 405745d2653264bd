using Loadmark.Core.Checks;
using Loadmark.Core.Display;
using Spectre.Console;

namespace Loadmark.Terminal;

/// <summary>The table of outlets: what each can give, what is asked of it, and its mark gauge.</summary>
internal sealed class OutletTable
{
    private const string Unknown = "?";
    private const string Over = "!";
    private const string Assumed = "~";
    private const int Gap = 2;
    private const int Indent = 2;
    private const int FewestLoadCells = 12;
    private const int MostLoadCells = 20;
    private const int FewestGaugeCells = 8;
    private const int MostGaugeCells = 20;
    private const int WidestName = 16;

    private readonly Sheet _sheet;
    private readonly IReadOnlyList<OutletRow> _rows;
    private readonly MarkGauge _gauge;
    private readonly int _name;
    private readonly int _volts;
    private readonly int _limit;
    private readonly int _run;
    private readonly int _start;
    private readonly bool _gaugeHasColumn;
    private readonly bool _loadsHaveColumn;
    private readonly int _gaugeColumn;
    private readonly int _loadsColumn;

    private OutletTable(Sheet sheet, CheckResult result)
    {
        _sheet = sheet;
        _rows = OutletRow.Fold(result.Outlets);
        _name = Indent + Math.Min(WidestName, Widest("outlet", static row => row.Name));
        _volts = _name + Gap + Widest("volts", static row => TextOf(row.Outlet.Volts));
        _limit = _volts + Gap + Widest("limit", static row => TextOf(row.Outlet.Limit));
        _run = _limit + Gap + Widest("run", static row => row.IsFree ? "" : DrawOf(row.Outlet, row.Outlet.Run));
        _start = _run + Gap + Widest("start", static row => row.IsFree ? "" : DrawOf(row.Outlet, row.Outlet.Start));

        const int around = 1 + 1 + MarkGauge.CellsPast + 1; // the tick, the mark, past the mark, the sign
        var loads = Math.Clamp(Widest("loads", static row => string.Join(", ", row.Outlet.Loads)), FewestLoadCells, MostLoadCells);
        var cells = Math.Clamp(sheet.Width - _start - Gap - around - Gap - loads, FewestGaugeCells, MostGaugeCells);
        _gauge = new MarkGauge(cells, result.Headroom);

        // On a page too narrow for a column, what does not fit goes to a line of its own.
        _gaugeHasColumn = _start + Gap + cells + around <= sheet.Width;
        _gaugeColumn = _gaugeHasColumn ? _start + Gap : Indent + Gap;
        _loadsColumn = _gaugeColumn + cells + around + Gap;
        _loadsHaveColumn = sheet.Width - _loadsColumn >= FewestLoadCells;
        if (!_loadsHaveColumn)
            _loadsColumn = Indent + Gap;
    }

    /// <summary>Writes the table with its legend and totals; nothing for a rig without outlets.</summary>
    public static void Write(Sheet sheet, CheckResult result)
    {
        if (result.Outlets.Count == 0)
            return;

        var table = new OutletTable(sheet, result);
        table.WriteHead();
        foreach (var row in table._rows)
            table.WriteRow(row);
        sheet.BlankLine();
        table.WriteLegend();
        OutletTotals.Write(sheet, result);
    }

    private void WriteHead()
    {
        _sheet.BlankLine();
        _sheet.PadTo(Indent).Put("outlet", SheetStyle.Faint)
            .PutRight("volts", _volts, SheetStyle.Faint).PutRight("limit", _limit, SheetStyle.Faint);
        _sheet.PutRight("run", _run, SheetStyle.Faint).PutRight("start", _start, SheetStyle.Faint);
        ToGauge();
        _sheet.Put("mark gauge", SheetStyle.Faint);
        if (_loadsHaveColumn)
            _sheet.PadTo(_loadsColumn).Put("loads", SheetStyle.Faint);
        _sheet.EndLine();
    }

    private void WriteRow(OutletRow row)
    {
        var outlet = row.Outlet;
        var style = row.IsFree ? SheetStyle.Faint : SheetStyle.Plain;
        _sheet.PadTo(Indent).PutShortened(row.Name, WidestName, row.IsFree ? SheetStyle.Faint : SheetStyle.Strong);
        _sheet.PutRight(TextOf(outlet.Volts), _volts, style).PutRight(TextOf(outlet.Limit), _limit, style);
        if (row.IsFree)
        {
            ToGauge();
            _sheet.Put(outlet.GivesNothing ? "nothing at its supply's input" : "free", style).EndLine();
            return;
        }

        _sheet.PutRight(DrawOf(outlet, outlet.Run), _run, StyleOf(outlet.RunsOver));
        _sheet.PutRight(DrawOf(outlet, outlet.Start), _start, StyleOf(outlet.StartsOver));
        ToGauge();
        WriteGauge(outlet);
        if (!_loadsHaveColumn)
            _sheet.EndLine();
        _sheet.PadTo(_loadsColumn).Wrap(string.Join(", ", outlet.Loads), _loadsColumn).EndLine();
    }

    /// <summary>A draw that is an assumption is marked as one, wherever it stands.</summary>
    private static string DrawOf(OutletLoading outlet, Amps? draw) =>
        $"{(outlet.DrawIsAssumed && draw is not null ? Assumed : "")}{FigureDisplay.Said(draw, outlet.Limit)}";

    private void WriteGauge(OutletLoading outlet)
    {
        var cells = _gauge.Of(outlet);
        if (cells.Length == 0)
            _sheet.Put(Unknown);

        foreach (var cell in cells)
        {
            var look = GaugeLook.Of(cell);
            _sheet.Put(_sheet.Unicode ? look.Sign : look.AsciiSign, look.Style);
        }

        if (outlet.RunsOver || outlet.StartsOver)
            _sheet.Put(Over, SheetStyle.Orange);
    }

    private void ToGauge()
    {
        if (!_gaugeHasColumn)
            _sheet.EndLine();
        _sheet.PadTo(_gaugeColumn);
    }

    private void WriteLegend()
    {
        WriteKey(GaugeCell.Run, "running");
        WriteKey(GaugeCell.Start, "starting");
        WriteKey(GaugeCell.Tick, "headroom begins");
        WriteKey(GaugeCell.Mark, "limit");
        if (AnyUsed(static outlet => outlet.RunsOver || outlet.StartsOver))
            WriteKey(Over, SheetStyle.Orange, "past it");
        if (AnyUsed(static outlet => outlet is not { Volts: not null, Limit: not null, Run: not null, Start: not null }))
            WriteKey(Unknown, SheetStyle.Plain, "not known");
        if (AnyUsed(static outlet => outlet.DrawIsAssumed))
            WriteKey(Assumed, SheetStyle.Plain, "assumed");
        _sheet.EndLine();
    }

    private void WriteKey(GaugeCell cell, string word)
    {
        var look = GaugeLook.Of(cell);
        WriteKey(_sheet.Unicode ? look.Sign : look.AsciiSign, look.Style, word);
    }

    private void WriteKey(string sign, Style style, string word)
    {
        if (_sheet.Column + Gap + 2 + word.Length > _sheet.Width)
            _sheet.EndLine();
        _sheet.PadTo(_sheet.Column + Gap).Put(sign, style).Put($" {word}", SheetStyle.Faint);
    }

    private bool AnyUsed(Func<OutletLoading, bool> holds)
    {
        foreach (var row in _rows)
        {
            if (!row.IsFree && holds(row.Outlet))
                return true;
        }

        return false;
    }

    private int Widest(string head, Func<OutletRow, string> text)
    {
        var widest = head.Length;
        foreach (var row in _rows)
            widest = Math.Max(widest, _sheet.CellsOf(text(row)));
        return widest;
    }

    private static Style StyleOf(bool isOver) => isOver ? SheetStyle.Orange : SheetStyle.Plain;

    private static string TextOf(Amps? amps) => amps?.ToString() ?? Unknown;

    private static string TextOf(Volts? volts) => volts?.ToString() ?? Unknown;
}
