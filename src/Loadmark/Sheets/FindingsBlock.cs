using Loadmark.Core.Checks;

namespace Loadmark.Sheets;

/// <summary>The findings, each a short paragraph that can be read aloud.</summary>
internal static class FindingsBlock
{
    private const int Indent = 2;
    private const int LabelColumn = 11;

    /// <summary>Writes the findings in their order, those at least as bad as <paramref name="least"/>.</summary>
    public static void Write(Sheet sheet, CheckResult result, Severity least = Severity.Good)
    {
        foreach (var finding in result.Findings)
        {
            if (finding.Severity >= least)
                Write(sheet, finding);
        }
    }

    private static void Write(Sheet sheet, Finding finding)
    {
        var look = SeverityLook.Of(finding.Severity);
        sheet.BlankLine();
        sheet.Put($"{look.SignOn(sheet)} {look.Word}", look.Style).PadTo(LabelColumn).Put(finding.Rule, Ink.Strong).Put("  ");
        sheet.Wrap(string.Join(", ", finding.Subjects), sheet.Column).EndLine();
        sheet.PadTo(Indent).Wrap(finding.Message, Indent).EndLine();
        WriteLabelled(sheet, "working", finding.Working, faint: false);
        WriteLabelled(sheet, "remedy", finding.Remedy, faint: false);
        WriteLabelled(sheet, "source", finding.Source, faint: true);
    }

    private static void WriteLabelled(Sheet sheet, string label, string text, bool faint)
    {
        if (text.Length > 0)
            sheet.PadTo(Indent).Put(label, Ink.Faint).PadTo(LabelColumn).Wrap(text, LabelColumn, faint ? Ink.Faint : Ink.Plain).EndLine();
    }
}
