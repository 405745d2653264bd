using System.Globalization;
using Loadmark.Answers;
using Loadmark.Files.Library;
using Loadmark.Workshop.Library;

namespace Loadmark.Terminal;

/// <summary>One piece of gear: what is said of it, what was measured, which rigs have it, and what was changed.</summary>
internal static class GearPage
{
    private const int Indent = 2;
    private const int TextColumn = 22;
    private const int MostChanges = 10;
    private const int MostRigs = 20;

    /// <summary>Writes the page.</summary>
    public static void Write(Sheet sheet, ShownGear shown)
    {
        var gear = shown.Gear;
        sheet.Put($"{JsonWords.Of(gear.Kind).ToUpperInvariant()}  ", SheetStyle.Strong)
            .Wrap(gear.Name.Length == 0 ? gear.Tag : $"{gear.Tag}, {gear.Name}", sheet.Column, SheetStyle.Strong).EndLine();
        if (gear.Piece is { } piece)
        {
            foreach (var field in GearText.FieldsOf(piece).Where(static field => field.Key != "name"))
                Entry(sheet, field.Key, field.Value.Length == 0 ? "as the label says" : field.Value);
        }
        else
        {
            sheet.PadTo(Indent)
                .Wrap("What is said of it cannot be read by this version of the program.", Indent, SheetStyle.Orange).EndLine();
        }

        if (gear.Stored.Content.Words.Count > 0)
            Entry(sheet, "words", string.Join(", ", gear.Stored.Content.Words.Items));
        if (shown.Measured.Readings.Length > 0)
            MeasuredBlock.Write(sheet.BlankLine(), gear.Tag, shown.Measured);
        WriteRigs(sheet, shown);
        WriteChanges(sheet, shown);
    }

    /// <summary>What a change changed, on one line.</summary>
    public static string Say(GearDifference difference) => difference switch
    {
        { Before: null } => $"{difference.Key}: {difference.After}",
        { After: null } => $"{difference.Key}: no longer {difference.Before}",
        _ => $"{difference.Key}: {difference.Before} → {difference.After}",
    };

    private static void WriteRigs(Sheet sheet, ShownGear shown)
    {
        sheet.BlankLine().Line(shown.Rigs.Length switch
        {
            0 => "No rig that is kept has it.",
            1 => "One rig has it:",
            var count => $"{count} rigs have it:",
        });
        foreach (var rig in shown.Rigs.Take(MostRigs))
            sheet.PadTo(Indent).Wrap(rig.Name, Indent).EndLine();
        if (shown.Rigs.Length > MostRigs)
            sheet.PadTo(Indent).Wrap($"and {shown.Rigs.Length - MostRigs} more", Indent, SheetStyle.Faint).EndLine();
    }

    private static void WriteChanges(Sheet sheet, ShownGear shown)
    {
        sheet.BlankLine()
            .Line(shown.Changes.Length > MostChanges ? $"The last {MostChanges} of {shown.Changes.Length} changes:" : "Changes:");
        foreach (var change in shown.Changes.Reverse().Take(MostChanges))
        {
            sheet.PadTo(Indent).Put(change.Made.UtcDateTime.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture), SheetStyle.Faint)
                .PadTo(TextColumn).Wrap(change.What, TextColumn).EndLine();
            foreach (var difference in GearChanges.DifferencesOf(change, shown.Gear.Tag))
                sheet.PadTo(TextColumn).Wrap(Say(difference), TextColumn, SheetStyle.Faint).EndLine();
        }
    }

    private static void Entry(Sheet sheet, string key, string value) =>
        sheet.PadTo(Indent).Put(key, SheetStyle.Strong).PadTo(TextColumn).Wrap(value, TextColumn).EndLine();
}
