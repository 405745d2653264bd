using Loadmark.Core.Checks;

namespace Loadmark.Terminal;

/// <summary>The first lines on a rig: the verdict, what it means, and how many findings stand behind it.</summary>
internal static class VerdictBlock
{
    private const int Indent = 2;

    /// <summary>Writes the verdict.</summary>
    /// <param name="sheet">The page.</param>
    /// <param name="result">What the rules said.</param>
    /// <param name="file">The rig's file, shown where there are several; null where there is one.</param>
    public static void Write(Sheet sheet, CheckResult result, string? file = null)
    {
        var look = SeverityLook.Of(result.Verdict);
        sheet.Put($"{look.SignOn(sheet)} {look.Word.ToUpperInvariant()}", look.Style).Put("  ");
        sheet.Wrap(result.Rig, sheet.Column, SheetStyle.Strong);
        if (file is not null)
            sheet.Put("  ").Wrap(file, Indent, SheetStyle.Faint);
        sheet.EndLine();

        sheet.PadTo(Indent).Wrap(VerdictSentence.Of(result), Indent).EndLine();
        if (result.ToBuy.Count > 0)
            sheet.PadTo(Indent).Wrap($"Yet to be bought: {string.Join(", ", result.ToBuy)}.", Indent, SheetStyle.Orange).EndLine();
        if (Counts(result) is { Length: > 0 } counts)
            sheet.PadTo(Indent).Wrap(counts, Indent, SheetStyle.Faint).EndLine();
    }

    /// <summary>How many findings there are of each severity, worst first, in words; empty when there are none.</summary>
    private static string Counts(CheckResult result)
    {
        var counts = new List<string>();
        foreach (var severity in SeverityLook.WorstFirst)
        {
            var count = 0;
            foreach (var finding in result.Findings)
                count += finding.Severity == severity ? 1 : 0;
            if (count > 0)
                counts.Add($"{count} {SeverityLook.Of(severity).Word}");
        }

        if (counts.Count == 0)
            return "";
        var found = $"Findings: {string.Join(", ", counts)}. ";
        return result.Untold.Count == 0 ? found : $"{found}Could not be told: {result.Untold.Count}.";
    }
}
