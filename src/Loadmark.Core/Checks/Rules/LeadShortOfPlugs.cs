using Loadmark.Core.Display;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Checks.Rules;

/// <summary>A feed needs more plugs, ends or leads of a sort than there are.</summary>
internal sealed class LeadShortOfPlugs : NameplateRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.LeadShortOfPlugs;

    /// <inheritdoc/>
    public override Severity Severity => Severity.Fails;

    /// <inheritdoc/>
    public override string Source => CommonPractice;

    protected override void Judge(NameplateCase subject, Report report)
    {
        var rig = subject.Rig;
        Dictionary<string, List<WiredFeed>>? used = null;
        foreach (var feed in rig.Feeds)
        {
            JudgePlugs(feed, report);
            JudgeEnds(feed, report);
            if (feed.Lead is { } lead)
            {
                used ??= new Dictionary<string, List<WiredFeed>>(StringComparer.Ordinal);
                if (!used.TryGetValue(lead.Id, out var feeds))
                    used.Add(lead.Id, feeds = []);
                feeds.Add(feed);
            }
        }

        if (used is null)
            return;

        foreach (var lead in rig.Rig.Leads)
        {
            // Of a straight lead there are as many as are wanted, unless the rig counts them.
            if (lead is { Type: LeadType.Straight, Count: null })
                continue;

            var there = lead.Count ?? 1;
            if (used.TryGetValue(lead.Id, out var feeds) && feeds.Count > there)
            {
                report.Add(
                    this,
                    [lead.Id, .. feeds.SelectMany(feed => feed.Loads).Select(load => load.Id).Distinct(StringComparer.Ordinal)],
                    $"The lead {lead.Id} is in {feeds.Count} feeds; there {Phrases.Is(there)} {there} of it.",
                    $"{feeds.Count} > {there}",
                    $"Make {feeds.Count - there} more, or say under 'leads' how many there are (count).",
                    [lead.Id]);
            }
        }
    }

    private void JudgePlugs(WiredFeed feed, Report report)
    {
        if (feed.Lead is { LoadPlugs: null } chain)
        {
            report.Add(
                this,
                Severity.Margin,
                [chain.Id, .. Phrases.Ids(feed.Loads)],
                $"How many plugs the chain {chain.Id} has is not given: it is enough only if it has {feed.Loads.Length} or more.",
                "plugs not given",
                $"Count them, and type them as 'plugs'.",
                [chain.Id]);
            return;
        }

        var plugs = feed.Lead?.LoadPlugs ?? 1;
        if (feed.Loads.Length <= plugs)
            return;

        var name = feed.Lead is { } lead ? $"the lead {lead.Id}" : "a plain lead";
        report.Add(
            this,
            Subjects(feed),
            $"{feed.OutletNames} feeds {Phrases.List(Phrases.Ids(feed.Loads))} over {name}, "
            + $"which has {plugs} {Phrases.Verb(plugs, "plug", "plugs")} for loads.",
            $"{feed.Loads.Length} loads > {plugs} {Phrases.Verb(plugs, "plug", "plugs")}",
            feed.Joined == Joint.None
                ? $"Use a daisy chain with {feed.Loads.Length} plugs or more."
                : $"Use a lead that joins the outlets and has {feed.Loads.Length} plugs or more, "
                    + $"or feed {Phrases.List(Phrases.Ids(feed.Loads.Skip(plugs)))} from elsewhere.",
            WhereOf(feed));
    }

    private void JudgeEnds(WiredFeed feed, Report report)
    {
        if (feed.Lead is not { } lead)
        {
            if (feed.Joined != Joint.None)
            {
                report.Add(
                    this,
                    Severity.Margin,
                    Phrases.Subjects(feed),
                    $"The lead that joins {feed.OutletNames} is not named: it runs only if there is one.",
                    "lead not named",
                    "List it under 'leads' and name it in the feed.");
            }

            return;
        }

        var (fits, wanted) = feed.Joined switch
        {
            Joint.Series => (lead.Type == LeadType.Series, "a series lead"),
            Joint.Parallel => (lead.Type == LeadType.Parallel, "a parallel lead"),
            _ => (lead.Type is not (LeadType.Series or LeadType.Parallel), "a lead with one end for the supply"),
        };
        if (!fits)
        {
            var need = feed.Outlets.Length == 1 ? "alone needs" : $"in {feed.Joined.ToString().ToLowerInvariant()} need";
            report.Add(
                this,
                Subjects(feed),
                $"{feed.OutletNames} {need} {wanted}; {lead.Id} is a {LeadNames.Of(lead.Type)}.",
                $"{LeadNames.Of(lead.Type)} ≠ {wanted}",
                $"Use {wanted}.",
                WhereOf(feed));
        }
    }

    private static ValueList<string> Subjects(WiredFeed feed) =>
        feed.Lead is { } lead ? [lead.Id, .. Phrases.Subjects(feed)] : Phrases.Subjects(feed);

    /// <summary>The lead carries the mark; without one of its own, the outlets do.</summary>
    private static ValueList<string> WhereOf(WiredFeed feed) => feed.Lead is { } lead ? [lead.Id] : [];
}
