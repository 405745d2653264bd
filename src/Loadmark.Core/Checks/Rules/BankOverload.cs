using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks.Rules;

/// <summary>The running draws on a bank add up to more than it can give.</summary>
internal sealed class BankOverload : LimitRule
{
    /// <inheritdoc/>
    public override string Name => "bank-overload";

    internal override void Judge(WiredRig rig, Budgets budgets, Report report) => JudgeOverload(budgets.Banks, report);
}
