using Loadmark.Core.Checks;

namespace Loadmark.Terminal;

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

    /// <summary>
    /// Writes where the rules behind the findings come from, each source once: beside every finding it would be a fifth
    /// of the page, and it is read by who doubts, not by who mends.
    /// </summary>
    public static void WriteSources(Sheet sheet, CheckResult result)
    {
        var rules = new List<(string Source, List<string> Rules)>();
        foreach (var finding in result.Findings)
        {
            var at = rules.FindIndex(entry => entry.Source == finding.Source);
            if (at < 0)
                rules.Add((finding.Source, [finding.Rule]));
            else if (!rules[at].Rules.Contains(finding.Rule))
                rules[at].Rules.Add(finding.Rule);
        }

        if (rules.Count == 0)
            return;
        sheet.BlankLine().Line("Sources of the rules", SheetStyle.Faint);
        foreach (var (source, names) in rules)
            sheet.PadTo(Indent).Wrap($"{string.Join(", ", names)}: {source}", Indent, SheetStyle.Faint).EndLine();
    }

    private static void Write(Sheet sheet, Finding finding)
    {
        var look = SeverityLook.Of(finding.Severity);
        sheet.BlankLine();
        sheet.Put($"{look.SignOn(sheet)} {look.Word}", look.Style).PadTo(LabelColumn).Put(finding.Rule, SheetStyle.Strong).Put("  ");
        sheet.Wrap(string.Join(", ", finding.Subjects), sheet.Column).EndLine();
        sheet.PadTo(Indent).Wrap(finding.Message, Indent).EndLine();
        WriteLabelled(sheet, "working", finding.Working);
        WriteLabelled(sheet, "remedy", finding.Remedy);
    }

    private static void WriteLabelled(Sheet sheet, string label, string text)
    {
        if (text.Length > 0)
            sheet.PadTo(Indent).Put(label, SheetStyle.Faint).PadTo(LabelColumn).Wrap(text, LabelColumn).EndLine();
    }
}
