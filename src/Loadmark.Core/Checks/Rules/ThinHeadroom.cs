using Loadmark.Core.Display;
namespace Loadmark.Core.Checks.Rules;

/// <summary>The running draws are within a limit but leave less free than the rig's headroom asks for.</summary>
internal sealed class ThinHeadroom : NameplateRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.ThinHeadroom;

    /// <inheritdoc/>
    public override Severity Severity => Severity.Margin;

    /// <inheritdoc/>
    public override string Source => CommonPractice;

    protected override void Judge(NameplateCase subject, Report report)
    {
        var rig = subject.Rig;
        var usable = 1 - rig.Rig.HeadroomInForce;
        foreach (var budget in subject.Budgets.All)
        {
            if (budget.Limit is not { } limit || budget.RunsOver || !Budget.IsOver(budget.Run, usable * limit))
                continue;

            report.Add(
                this,
                budget.SubjectsAndLoads(),
                $"{budget.Holder} carries {budget.Text(budget.Run)} of {budget.Text(limit)}: "
                + $"{(Budget.IsOver(limit, budget.Run) ? $"less than {FigureDisplay.Percent(rig.Rig.HeadroomInForce)}" : "nothing")} "
                + "stays free.",
                $"{budget.Sum(starting: false)} > {FigureDisplay.Percent(usable)} × {budget.Text(limit)} = {budget.Text(usable * limit)}",
                budget.Relief(limit, usable, starting: false),
                budget.Subjects);
        }
    }
}
