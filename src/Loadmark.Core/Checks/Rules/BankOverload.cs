namespace Loadmark.Core.Checks.Rules;

/// <summary>The running draws on a bank add up to more than it can give.</summary>
internal sealed class BankOverload : LimitRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.BankOverload;

    protected override void Judge(NameplateCase subject, Report report) => JudgeOverload(subject.Budgets.Banks, report);
}
