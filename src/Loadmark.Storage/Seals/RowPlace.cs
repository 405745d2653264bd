using System.Text;
using Loadmark.Core.Texts;

namespace Loadmark.Storage.Seals;

/// <summary>
/// Where a row is, in words for the user: of which rig or which gear. What a damaged row says of itself may be damaged too.
/// </summary>
internal static class RowPlace
{
    private const int Longest = 60;

    /// <summary>Names a row.</summary>
    /// <param name="table">Its table.</param>
    /// <param name="value">The value of a column; null where it has none.</param>
    public static string Of(string table, Func<string, string?> value)
    {
        var words = table switch
        {
            "Rigs" => $"the rig {Value("Name")}",
            "Edits" => $"edit {Value("Number")} of the rig {Value("NameAfter")}",
            "Gear" => $"the gear {Value("Tag")}",
            "GearChanges" => $"change {Value("Number")} of the gear {Value("Tag")}",
            "GearReadings" => $"the reading {Value("Id")} of gear",
            "GearUses" => $"the note that a rig has the gear {Value("TagKey")}",
            "GearDecisions" => $"the decision about gear in the rig {Value("RigId")}",
            "Acceptances" => $"what was measured on the rig {Value("RigId")}, version {Value("Version")}",
            "Counts" => $"the count '{Value("Name")}'",
            "Totals" => $"the total of the table {Value("Table")}",
            _ => "a row",
        };
        return $"{words} (table {table})";

        string Value(string column) => Plain(value(column) ?? "?");
    }

    /// <summary>On one line, without what a terminal would take for an instruction.</summary>
    private static string Plain(string text)
    {
        text = text.Length > Longest ? string.Concat(text.AsSpan(0, Longest), "…") : text;
        var plain = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            if (UnseenCharacter.Is(rune))
                plain.Append(UnseenCharacter.Sign);
            else
                plain.Append(rune);
        }

        return plain.ToString();
    }
}
