using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks.Rules;

/// <summary>The running draws on an outlet add up to more than it can give.</summary>
internal sealed class OutletOverload : LimitRule
{
    /// <inheritdoc/>
    public override string Name => "outlet-overload";

    internal override void Judge(WiredRig rig, Budgets budgets, Report report) => JudgeOverload(budgets.Outlets, report);
}
