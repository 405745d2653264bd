using Loadmark.Answers;
using Loadmark.Core.Display;

namespace Loadmark.Terminal;

/// <summary>What a meter says it is, and what it read.</summary>
internal static class MeterPage
{
    private const int ValueColumn = 12;

    /// <summary>Writes the page.</summary>
    public static void Write(Sheet sheet, MeterAnswer answer)
    {
        var who = answer.Identification;
        sheet.Wrap($"{who.Maker} {who.Model}", 0, SheetStyle.Strong).Put(" ").Wrap($"at {answer.Address}", 0).EndLine();
        Row(sheet, "serial", who.Serial ?? "not told");
        Row(sheet, "firmware", who.Firmware ?? "not told");
        sheet.PadTo(2).Put(answer.IsAmps ? "amps" : "volts", SheetStyle.Faint).PadTo(ValueColumn);
        if (answer.Reading.Figure is { } figure)
            sheet.Wrap(
                answer.IsAmps ? FigureDisplay.Computed(new Amps(figure)) : FigureDisplay.Computed(new Volts(figure)),
                ValueColumn,
                SheetStyle.Strong);
        else
            sheet.Wrap(MeterJson.WhyNone(answer.Reading), ValueColumn, SheetStyle.Orange);
        sheet.Put("  ").Wrap($"sent as {answer.Reading.Text}", ValueColumn, SheetStyle.Faint).EndLine();
    }

    private static void Row(Sheet sheet, string name, string value) =>
        sheet.PadTo(2).Put(name, SheetStyle.Faint).PadTo(ValueColumn).Wrap(value, ValueColumn).EndLine();
}
