namespace Loadmark.Core.Checks.Rules;

/// <summary>A load is on more than one feed.</summary>
internal sealed class FedTwice : NameplateRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.FedTwice;

    /// <inheritdoc/>
    public override Severity Severity => Severity.Fails;

    /// <inheritdoc/>
    public override string Source => CommonPractice;

    protected override void Judge(NameplateCase subject, Report report)
    {
        var rig = subject.Rig;
        foreach (var load in rig.Loads)
        {
            if (load.Feeds.Count < 2)
                continue;

            var feeds = load.Feeds.Distinct().ToList();
            var outlets = feeds.SelectMany(feed => feed.Outlets).Select(outlet => outlet.Name).Distinct(StringComparer.Ordinal);
            report.Add(
                this,
                [load.Id, .. outlets],
                feeds.Count > 1
                    ? $"{load.Id} is on {feeds.Count} feeds: {Phrases.List([.. feeds.Select(feed => feed.OutletNames)])}. It has one jack."
                    : $"{load.Id} is named {load.Feeds.Count} times on the feed from {feeds[0].OutletNames}. It has one jack.",
                feeds.Count > 1 ? $"{feeds.Count} feeds > 1 jack" : $"{load.Feeds.Count} plugs > 1 jack",
                "Keep one of them; to join outlets, write one feed with 'joined'.");
        }
    }
}
