using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Checks.Rules;

/// <summary>The running draws on an outlet, or on outlets in parallel, add up to more than it, or they, can give.</summary>
internal sealed class OutletOverload : LimitRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.OutletOverload;

    protected override void Judge(NameplateCase subject, Report report)
    {
        JudgeOverload(subject.Budgets.Outlets, report);
        foreach (var feed in subject.Rig.Feeds)
        {
            if (feed.Joined == Joint.Parallel)
                JudgeSharing(feed, report);
        }
    }

    /// <summary>
    /// Outlets in parallel do not share equally: a few millivolts between them, over the little resistance behind them, decide which one
    /// gives how much, from nothing to all of it. Only what one of them could give alone is sure.
    /// </summary>
    private void JudgeSharing(WiredFeed feed, Report report)
    {
        Amps? least = null;
        var sum = Quantity<Ampere>.Zero;
        foreach (var outlet in feed.Outlets)
        {
            if (outlet.Limit is not { } limit || outlet.Feeds.Count > 1)
                return;
            sum += limit.Value;
            least = least is { } so ? Quantity<Ampere>.Min(so, limit.Value) : limit.Value;
        }

        var asked = Quantity<Ampere>.Zero;
        foreach (var load in feed.Loads)
            asked += load.Rating.Running?.Value ?? Quantity<Ampere>.Zero;
        if (least is not { } one || !Budget.IsOver(asked.Value, one.Value) || Budget.IsOver(asked.Value, sum.Value))
            return;

        report.Add(
            this,
            Severity.Margin,
            Words.Subjects(feed),
            $"{feed.OutletNames} in parallel do not share equally: one of them may have to give all {asked}, and the smallest can give {one}.",
            $"{one} < {asked} ≤ {string.Join(" + ", feed.Outlets.Select(static outlet => outlet.Limit!.Value.Value.ToString()))} = {sum}",
            $"Sure is only an outlet that gives {asked} alone, or outlets that their maker allows in parallel.");
    }
}
