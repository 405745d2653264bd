using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks.Rules;

/// <summary>A load is on more than one feed.</summary>
internal sealed class FedTwice : Rule
{
    /// <inheritdoc/>
    public override string Name => "fed-twice";

    /// <inheritdoc/>
    public override Severity Severity => Severity.Fails;

    /// <inheritdoc/>
    public override string Source => CommonPractice;

    internal override void Judge(WiredRig rig, Budgets budgets, Report report)
    {
        foreach (var load in rig.Loads)
        {
            if (load.Feeds.Count < 2)
                continue;

            var outlets = load.Feeds.SelectMany(feed => feed.Outlets).Select(outlet => outlet.Name).Distinct(StringComparer.Ordinal).ToList();
            report.Add(
                this,
                [load.Id, .. outlets],
                $"{load.Id} is on {load.Feeds.Count} feeds: {string.Join(" and ", load.Feeds.Select(feed => feed.OutletNames))}. It has one jack.",
                $"{load.Feeds.Count} feeds > 1 jack",
                "Keep one of them; to join outlets, write one feed with 'joined'.");
        }
    }
}
