using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks.Rules;

/// <summary>The running draws on a supply add up to more than it can give in all.</summary>
internal sealed class SupplyOverload : LimitRule
{
    /// <inheritdoc/>
    public override string Name => "supply-overload";

    internal override void Judge(WiredRig rig, Budgets budgets, Report report) => JudgeOverload(budgets.Supplies, report);
}
