using Loadmark.Core.Checks;
using Loadmark.Drawing.Paper;
using Loadmark.Drawing.Scenes;
using Loadmark.Drawing.Texts;

namespace Loadmark.Workshop.Sheets;

/// <summary>What the rules have to say, with workings and sources, what could not be told, and what was assumed.</summary>
internal static class FindingsPages
{
    public static void Set(PageComposer composer, SheetFigures figures)
    {
        var check = figures.Analysis.Check;
        composer.Paragraph(VerdictSentence.Of(check));
        if (check.Findings.Count > 0)
            composer.Table(new PaperTable(
                [new("Severity"), new("Finding, working, remedy"), new("Source")], [.. check.Findings.Items.Select(Row)]));
        if (check.Untold.Count > 0)
        {
            composer.Subheading("Could not be told");
            composer.Table(new PaperTable(
                [new("Of"), new("Why")],
                [
                    .. check.Untold.Items.Select(static untold => new PaperTableRow(
                        [TableCell.Of(string.Join(", ", untold.Subjects), Ink.TextStrong), TableCell.Of(untold.Because)])),
                ]));
        }

        var assumptions = figures.Started.Assumptions.Items.Concat(figures.Analysis.Settled!.Assumptions)
            .DistinctBy(static one => (one.Figure, one.Value)).ToList();
        if (assumptions.Count == 0)
            return;
        composer.Subheading("Assumed for the circuit");
        composer.Table(new PaperTable(
            [new("Figure"), new("Taken as"), new("For"), new("Source")],
            [
                .. assumptions.Select(static one => new PaperTableRow(
                [
                    TableCell.Of(one.Figure), TableCell.Of(one.Value, Ink.TextFigure), TableCell.Of(Phrases.List(one.Subjects)),
                    new TableCell([new TableText(one.Source, Ink.TextQuiet) { Size = TypeSize.Note }]),
                ])),
            ]));
    }

    private static PaperTableRow Row(Finding finding)
    {
        var texts = new List<TableText> { new(finding.Message) };
        if (finding.Working.Length > 0)
            texts.Add(new TableText(finding.Working, Ink.TextFigure) { Size = TypeSize.Note });
        if (finding.Remedy.Length > 0)
            texts.Add(new TableText(finding.Remedy, Ink.TextStrong) { Size = TypeSize.Note });
        return new PaperTableRow(
        [
            new TableCell(
                [new TableText(SignShapes.WordOf(finding.Severity), SignShapes.InkOf(finding.Severity)) { Sign = finding.Severity }]),
            new TableCell([.. texts]),
            new TableCell([new TableText(finding.Source, Ink.TextQuiet) { Size = TypeSize.Note }]),
        ]);
    }
}
