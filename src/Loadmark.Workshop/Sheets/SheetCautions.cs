namespace Loadmark.Workshop.Sheets;

/// <summary>What no check takes off the technician.</summary>
public static class SheetCautions
{
    /// <summary>The cautions at the foot of each page.</summary>
    public const string Text =
        "Check with a meter before gear is connected. Mains wiring, opened supplies, valve units and lithium packs are for qualified "
        + "people and local rules. The gear's own instructions win.";
}
