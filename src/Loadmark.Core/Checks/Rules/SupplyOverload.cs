namespace Loadmark.Core.Checks.Rules;

/// <summary>The running draws on a supply add up to more than it can give in all.</summary>
internal sealed class SupplyOverload : LimitRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.SupplyOverload;

    protected override void Judge(NameplateCase subject, Report report) => JudgeOverload(subject.Budgets.Supplies, report);
}
