using Loadmark.Workshop.Restoring;

namespace Loadmark.Terminal;

/// <summary>What was restored from a sheet.</summary>
internal static class RestoredSheetPage
{
    /// <summary>Writes what was restored.</summary>
    /// <param name="sheet">Where to.</param>
    /// <param name="restored">What was restored; its text is whole.</param>
    /// <param name="file">The file that it was written to.</param>
    public static void Write(Sheet sheet, RestoredSheet restored, string file)
    {
        var count = restored.Found!.Count;
        sheet.Put("Restored ", SheetStyle.Strong)
            .Wrap(
                $"{(restored.Reading?.Rig is { } rig ? $"{rig.Name}, rig {restored.Version}," : "a rig file")} from "
                + $"{(count == 1 ? "its code" : $"its {count} codes")}, to the letter. It is in {file}.",
                0)
            .EndLine();
    }
}
