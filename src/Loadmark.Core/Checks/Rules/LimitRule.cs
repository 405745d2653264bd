namespace Loadmark.Core.Checks.Rules;

/// <summary>What the rules on overload have in common: a sum of running draws over a limit.</summary>
internal abstract class LimitRule : Rule
{
    /// <inheritdoc/>
    public override Severity Severity => Severity.Fails;

    /// <inheritdoc/>
    public override string Source => "Kirchhoff's current law: the outlet carries the sum of its loads' currents";

    /// <summary>Reports each budget whose running sum is over its limit.</summary>
    protected void JudgeOverload(IReadOnlyList<Budget> budgets, Report report)
    {
        foreach (var budget in budgets)
        {
            if (budget.Limit is not { } limit)
            {
                report.CannotTell(this, budget.Subjects, $"The limit of {budget.Holder} is not printed: it carries {budget.Sum(starting: false)}.");
            }
            else if (budget.Run > limit)
            {
                report.Add(
                    this,
                    [.. budget.Subjects, .. budget.Parts.Select(part => part.Load.Id).Distinct(StringComparer.Ordinal)],
                    $"{budget.Holder} carries {budget.Text(budget.Run)} and can give {budget.Text(limit)}.",
                    $"{budget.Sum(starting: false)} > {budget.Text(limit)}",
                    budget.Relief(limit, starting: false));
            }
        }
    }
}
