using System.Collections.Immutable;
using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks.Rules;

/// <summary>Two figures for the same thing do not agree.</summary>
internal sealed class FigureConflict : Rule
{
    /// <inheritdoc/>
    public override string Name => "figure-conflict";

    /// <inheritdoc/>
    public override Severity Severity => Severity.Note;

    /// <inheritdoc/>
    public override string Source => "P = V·I; a figure typed beside a label counts before the label";

    internal override void Judge(WiredRig rig, Budgets budgets, Report report)
    {
        foreach (var load in rig.Loads)
            Add(load.Id, load.Rating.Disagreements, report);
        foreach (var outlet in rig.Outlets)
            Add(outlet.Name, outlet.Rating.Disagreements, report);
        foreach (var supply in rig.Supplies)
        {
            Add(supply.Supply.Id, supply.Disagreements, report);
            foreach (var conflict in supply.Supply.Label?.Conflicts ?? [])
                report.Add(this, [supply.Supply.Id], $"The label of {supply.Supply.Id} contradicts itself.", conflict, "Read the label again.");
        }
    }

    private void Add(string subject, ImmutableArray<Disagreement> disagreements, Report report)
    {
        foreach (var one in disagreements)
            report.Add(this, [subject], $"Two figures for the {one.What} of {subject} do not agree. {one.Outcome}", one.Working, "Read the label again, or measure.");
    }
}
