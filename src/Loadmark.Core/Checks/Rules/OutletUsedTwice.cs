namespace Loadmark.Core.Checks.Rules;

/// <summary>An outlet is in more than one feed.</summary>
internal sealed class OutletUsedTwice : NameplateRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.OutletUsedTwice;

    /// <inheritdoc/>
    public override Severity Severity => Severity.Fails;

    /// <inheritdoc/>
    public override string Source => CommonPractice;

    protected override void Judge(NameplateCase subject, Report report)
    {
        var rig = subject.Rig;
        foreach (var outlet in rig.Outlets)
        {
            if (outlet.Feeds.Count < 2)
                continue;

            var loads = outlet.Feeds.SelectMany(feed => feed.Loads).Select(load => load.Id).Distinct(StringComparer.Ordinal).ToList();
            report.Add(
                this,
                [outlet.Name, .. loads],
                $"{outlet.Name} is named {outlet.Feeds.Count} times in the wiring, for {Phrases.List(loads)}. One lead goes into it.",
                $"{outlet.Feeds.Count} leads > 1 socket",
                "Put the loads on one daisy chain, or give one of the feeds another outlet.");
        }
    }
}
