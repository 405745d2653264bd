namespace Loadmark.Core.Checks.Rules;

/// <summary>What the rules on overload have in common: a sum of running draws over a limit.</summary>
internal abstract class LimitRule : NameplateRule
{
    /// <inheritdoc/>
    public override Severity Severity => Severity.Fails;

    /// <inheritdoc/>
    public override string Source => "Kirchhoff's current law: the outlet carries the sum of its loads' currents";

    /// <summary>Reports each budget whose running sum is over its limit.</summary>
    protected void JudgeOverload(List<Budget> budgets, Report report)
    {
        foreach (var budget in budgets)
        {
            if (budget.Limit is not { } limit)
            {
                report.CannotTell(
                    this, budget.Subjects, $"The limit of {budget.Holder} is not known; it carries {budget.Sum(starting: false)}.");
            }
            else if (budget.RunsOver)
            {
                report.Add(
                    this,
                    budget.SubjectsAndLoads(),
                    $"{budget.Holder} carries {budget.Text(budget.Run)} and can give {budget.Text(limit)}.",
                    $"{budget.Sum(starting: false)} > {budget.Text(limit)}",
                    budget.Relief(limit, usable: 1, starting: false),
                    arises: budget.Subjects);
            }
            else if (!budget.IsWhole)
            {
                var unknown = budget.UnknownLoads();
                report.CannotTell(
                    this,
                    [.. budget.Subjects, .. unknown],
                    $"What {Phrases.List(unknown)} {Phrases.Verb(unknown.Count, "asks", "ask")} of {budget.Holder} is not known: "
                    + $"without {Phrases.Verb(unknown.Count, "it", "them")} it carries {budget.Text(budget.Run)} of {budget.Text(limit)}.");
            }
        }
    }
}
