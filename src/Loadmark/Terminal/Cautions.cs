namespace Loadmark.Terminal;

/// <summary>What no check takes off the technician.</summary>
internal static class Cautions
{
    private const string Text =
        "Check with a meter before gear is connected. Mains wiring, opened supplies and valve units are for qualified " +
        "people. The gear's own instructions win.";

    /// <summary>Writes the caution.</summary>
    public static void Write(Sheet sheet) => sheet.Wrap(Text, 0, SheetStyle.Faint).EndLine();
}
