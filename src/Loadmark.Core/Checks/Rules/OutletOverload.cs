namespace Loadmark.Core.Checks.Rules;

/// <summary>The running draws on an outlet, or on outlets in parallel, add up to more than it, or they, can give.</summary>
internal sealed class OutletOverload : LimitRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.OutletOverload;

    protected override void Judge(NameplateCase subject, Report report)
    {
        JudgeOverload(subject.Budgets.Outlets, report);
        foreach (var budget in subject.Budgets.Outlets)
            JudgeSharing(budget, report);
    }

    /// <summary>
    /// Outlets in parallel do not share equally: a few millivolts between them, over the little resistance behind them, decide which one
    /// gives how much, from nothing to all of it. Only what one of them could give alone is sure.
    /// </summary>
    private void JudgeSharing(Budget budget, Report report)
    {
        if (budget is not { ParallelLimits: { IsEmpty: false } limits, Limit: { } sum, Run: var asked })
            return;
        var least = limits.Min();
        if (!Budget.IsOver(asked, least) || Budget.IsOver(asked, sum))
            return;

        report.Add(
            this,
            Severity.Margin,
            budget.SubjectsAndLoads(),
            $"{budget.Holder} do not share equally: one of them may have to give all {budget.Text(asked)}, "
            + $"and the smallest can give {budget.Text(least)}.",
            $"{budget.Text(least)} < {budget.Text(asked)} ≤ {string.Join(" + ", limits.Select(budget.Text))} = {budget.Text(sum)}",
            $"To be sure, use one outlet that gives {budget.Text(asked)} alone, or outlets that their maker allows in parallel.",
            budget.Subjects);
    }
}
