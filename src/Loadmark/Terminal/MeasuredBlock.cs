using System.Globalization;
using Loadmark.Core.Readings;
using Loadmark.Workshop.Library;

namespace Loadmark.Terminal;

/// <summary>What was measured of a load, and what that comes to.</summary>
internal static class MeasuredBlock
{
    private const int Indent = 2;
    private const int TextColumn = 14;

    /// <summary>Writes the block.</summary>
    /// <param name="sheet">The page.</param>
    /// <param name="tag">The load's tag.</param>
    /// <param name="measured">What was measured.</param>
    public static void Write(Sheet sheet, string tag, LoadMeasurements measured)
    {
        sheet.Put("MEASURED  ", SheetStyle.Strong).Wrap(tag, sheet.Column, SheetStyle.Strong).EndLine();
        WriteFigure(sheet, "run", measured.Running, measured, DrawKind.Running);
        WriteFigure(sheet, "start", measured.Starting, measured, DrawKind.Starting);
    }

    private static void WriteFigure(Sheet sheet, string key, MeasuredDraw? draw, LoadMeasurements measured, DrawKind kind)
    {
        if (draw is null)
            return;
        var duration = draw.Duration is { } seconds ? $" for {seconds}" : "";
        sheet.PadTo(Indent).Put(key, SheetStyle.Strong).PadTo(TextColumn)
            .Wrap($"{draw.Figure}{duration}: {DrawEstimate.Explain(draw)}.", TextColumn).EndLine();
        var counted = 0;
        foreach (var one in measured.Readings.Where(one => one.Reading.Kind == kind))
        {
            var isOutlier = !one.IsStruckOut && draw.LeftOut.Items.Contains(counted++);
            var remark = one.IsStruckOut ? "struck out" : isOutlier ? "left out: too far from the rest" : "";
            var meter = one.Reading.Meter is { } accuracy ? $"meter {accuracy}" : "meter not known";
            var parts = new[]
            {
                $"{one.Reading.Current}{(one.Reading.Duration is { } lasted ? $" for {lasted}" : "")}",
                meter,
                one.Reading.Note ?? "",
                remark,
            };
            sheet.PadTo(Indent).Put(one.Reading.Taken.UtcDateTime.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), SheetStyle.Faint)
                .PadTo(TextColumn)
                .Wrap(
                    string.Join(", ", parts.Where(static part => part.Length > 0)),
                    TextColumn,
                    remark.Length > 0 ? SheetStyle.Faint : SheetStyle.Plain).EndLine();
        }
    }
}
