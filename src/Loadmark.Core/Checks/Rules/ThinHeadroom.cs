using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks.Rules;

/// <summary>The running draws are within a limit but leave less free than the rig's headroom asks for.</summary>
internal sealed class ThinHeadroom : Rule
{
    /// <inheritdoc/>
    public override string Name => "thin-headroom";

    /// <inheritdoc/>
    public override Severity Severity => Severity.Margin;

    /// <inheritdoc/>
    public override string Source => CommonPractice;

    internal override void Judge(WiredRig rig, Budgets budgets, Report report)
    {
        var usable = 1 - rig.Rig.HeadroomInForce;
        foreach (var budget in budgets.All)
        {
            if (budget.Limit is not { } limit || budget.RunsOver || !Budget.IsOver(budget.Run, usable * limit))
                continue;

            report.Add(
                this,
                budget.SubjectsAndLoads(),
                $"{budget.Holder} carries {budget.Text(budget.Run)} of {budget.Text(limit)}: {(Budget.IsOver(limit, budget.Run) ? $"less than {Words.Percent(rig.Rig.HeadroomInForce)}" : "nothing")} stays free.",
                $"{budget.Sum(starting: false)} > {Words.Percent(usable)} × {budget.Text(limit)} = {budget.Text(usable * limit)}",
                budget.Relief(limit, usable, starting: false));
        }
    }
}
