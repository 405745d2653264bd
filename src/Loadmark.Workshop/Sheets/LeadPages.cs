using Loadmark.Core.Display;
using Loadmark.Core.Gear;
using Loadmark.Core.LeadLists;
using Loadmark.Core.Rigs;
using Loadmark.Drawing.Paper;
using Loadmark.Drawing.Scenes;

namespace Loadmark.Workshop.Sheets;

/// <summary>The lead list: what each lead is made of, from where to where it goes, and what wire is needed in all.</summary>
internal static class LeadPages
{
    private static readonly TableColumn[] Columns =
    [
        new("No."), new("Lead"), new("Length"), new("Wire"), new("Plugs"), new("Polarity at the load"), new("From"), new("To"),
    ];

    public static void Set(PageComposer composer, SheetFigures figures, IReadOnlyList<CutList> cuts, CuttingWishes wishes)
    {
        if (figures.Leads.Count == 0)
        {
            composer.Paragraph("Nothing is wired yet, so there are no leads to make.");
            return;
        }

        composer.Table(new PaperTable([.. Columns], [.. figures.Leads.Items.Select(Row)]));
        composer.Subheading("Wire in all");
        composer.Table(new PaperTable(
            [new("Wire"), new("Leads"), new("Cable, two conductors", TextAnchor.End)],
            [
                .. figures.Leads.Items.Where(static lead => lead is { Wire: not null, Length: not null })
                    .GroupBy(static lead => lead.Wire!.Value)
                    .Select(static group => new PaperTableRow(
                    [
                        TableCell.Of($"{group.Key}", Ink.TextStrong),
                        TableCell.Of(string.Join(", ", group.Select(static lead => lead.Number))),
                        TableCell.Of($"{new Metres(group.Sum(static lead => lead.Length!.Value.Value))}", Ink.TextFigure),
                    ])),
            ]));
        CutPages.Set(composer, cuts, wishes);
        if (figures.Leads.Items.Any(static lead => lead.LengthIsAssumed || lead.WireIsAssumed))
            composer.Paragraph(
                $"~ is assumed, for the rig does not say: a lead of {Lead.CommonLength}, from plug to plug of a chain {Lead.CommonPitch}, "
                + $"wire of {Lead.CommonWire}. Measure the way that each lead takes, and add what the plugs take up.",
                Ink.TextQuiet,
                TypeSize.Note);
    }

    private static PaperTableRow Row(ListedLead lead) => new(
    [
        TableCell.Of($"{lead.Number}", Ink.TextStrong),
        new TableCell(
        [
            new TableText(ToBuyMark.On(lead.Name, lead.Lead?.ToBuy ?? false), Ink.TextStrong),
            .. lead.Lead is null ? [] : (TableText[])[new TableText(LeadNames.Of(lead.Type)) { Size = TypeSize.Note }],
        ]),
        LengthCell(lead),
        TableCell.Of(lead.Wire is { } wire ? $"{(lead.WireIsAssumed ? "~ " : "")}{wire}" : $"{lead.Lead?.Ohms} a conductor"),
        PlugCell(lead),
        PointCell(lead),
        new TableCell([.. lead.Feed.Outlets.Select(static outlet => new TableText(outlet.Name, Ink.TextStrong))]),
        new TableCell([.. lead.Feed.Loads.Select(static load => new TableText(load.Id, Ink.TextStrong))]),
    ]);

    private static TableCell LengthCell(ListedLead lead)
    {
        if (lead.Length is not { } length)
            return TableCell.Of("not given", Ink.TextQuiet);
        var texts = new List<TableText> { new($"{(lead.LengthIsAssumed ? "~ " : "")}{length}", Ink.TextFigure) };
        if (lead.Type == LeadType.DaisyChain && lead.Stretches.Count > 1)
            texts.Add(
                new TableText($"tail {lead.Stretches[0]}, then {lead.Stretches.Count - 1} × {lead.Stretches[1]}") { Size = TypeSize.Note });
        else if (lead.Stretches.Count > 1)
            texts.Add(new TableText($"{lead.Stretches.Count} × {lead.Stretches[0]}") { Size = TypeSize.Note });
        return new TableCell([.. texts]);
    }

    private static TableCell PlugCell(ListedLead lead)
    {
        var (from, to) = (PlugText(lead.OutletPlug), PlugText(lead.Point.Plug));
        return TableCell.Of(lead.Plugs > 1 ? $"{from} to {lead.Plugs} × {to}" : $"{from} to {to}");
    }

    private static string PlugText(Figure<Plug> plug) =>
        plug.IsKnown ? $"{(plug.IsAssumed ? "~ " : "")}{plug.Value.Name}" : FigureDisplay.Unknown;

    private static TableCell PointCell(ListedLead lead)
    {
        var (form, polarity) = (lead.Point.Form, lead.Point.Polarity);
        if (form is { IsKnown: true, Value: SupplyForm.Alternating })
            return TableCell.Of($"{FormSigns.Of(form)} a.c., none");
        if (!form.IsKnown || !polarity.IsKnown)
            return TableCell.Of("not known");
        var note = lead.Feed.Reverses ? "reversed" : polarity.IsAssumed ? "assumed" : "";
        return PolarityCell.Of(polarity.Value, new TableText(note) { Size = TypeSize.Note });
    }
}
