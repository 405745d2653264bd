using Loadmark.Core.Checks;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Trials;

/// <summary>
/// Tries what becomes of a rig when a load is plugged into an outlet, before anybody does it: every setting of the outlet and every
/// lead on hand is tried, and the rules say which is best and what stands against it.
/// </summary>
/// <param name="rig">The rig as it is.</param>
/// <param name="present">What the rules say of it.</param>
/// <param name="judge">The rules.</param>
public sealed class ConnectionTrials(Rig rig, CheckResult present, Func<Rig, CheckResult> judge)
{
    /// <summary>What the rules say of the rig as it is, by rule and subject, with the worst severity of each.</summary>
    private readonly Dictionary<(RuleId Rule, string Subject), Severity> _known = present.Findings.Items
        .SelectMany(static finding => Keys(finding).Select(key => (Key: key, finding.Severity)))
        .GroupBy(static known => known.Key)
        .ToDictionary(static known => known.Key, static known => known.Max(static each => each.Severity));

    /// <summary>
    /// Tries everything that draws on an outlet: the loads in the order of the rig, then the inputs of supplies that are fed by others, but
    /// for that of the outlet's own supply.
    /// </summary>
    /// <param name="outlet">The outlet; one of the rig's.</param>
    public IReadOnlyList<Connection> On(OutletRef outlet) =>
        [.. rig.EveryLoad.Where(load => load.Id != outlet.Supply).Select(load => Connect(outlet, load.Id))];

    /// <summary>Tries one load on an outlet.</summary>
    /// <param name="outlet">The outlet; one of the rig's.</param>
    /// <param name="load">The load's tag.</param>
    /// <exception cref="ArgumentException">The rig has no such outlet.</exception>
    public Connection Connect(OutletRef outlet, string load)
    {
        var there = (rig.Wired ?? []).Items.Any(feed => feed.From.Items.Contains(outlet) && feed.To.Items.Contains(load));
        if (there)
            return new Connection(load, new Trial($"{load} is on {outlet}", rig, present), null, null, true);

        Trial? best = null;
        foreach (var (what, candidate) in Ways(outlet, load))
        {
            var check = judge(candidate);
            if (best is null || SeverityCounts.Of(check).CompareTo(SeverityCounts.Of(best.Check)) < 0)
                best = new Trial(what, candidate, check);
        }

        // A load that is badly off where it is may be as badly off here: what joins the two is said although both were known.
        var place = outlet.ToString();
        // That the other loads are still dark is no fault of this one.
        var added = best!.Check.Findings.Items
            .Where(static finding => finding.Rule != RuleId.Unfed)
            .Where(
                finding => Keys(finding).Any(key => _known.GetValueOrDefault(key) < finding.Severity)
                    || (finding.Subjects.Items.Contains(load) && finding.Subjects.Items.Contains(place)))
            .ToList();
        return new Connection(
            load,
            best,
            added.Find(static finding => finding.Severity >= Severity.Fails),
            added.Find(
                static finding =>
                    finding.Severity is Severity.Unsure or Severity.Noise or Severity.Margin
                        && finding.Rule != RuleId.FigureAssumed),
            false);
    }

    private static IEnumerable<(RuleId Rule, string Subject)> Keys(Finding finding) =>
        finding.Subjects.Items.Select(subject => (finding.Rule, subject));

    private IEnumerable<(string What, Rig Rig)> Ways(OutletRef outlet, string load)
    {
        var rest = rig.Unplug(load);
        var index = rest.PlaceOfFeed(outlet);
        if (index >= 0)
        {
            var feed = rest.Wired!.Value[index];
            foreach (var lead in Leads(rest, feed, feed.To.Count + 1))
                yield return (
                    $"{load} onto {outlet}, with {string.Join(", ", feed.To)}{Over(lead)}",
                    rest.Replace(index, feed with { Lead = lead, To = [.. feed.To, load] }));
            yield break;
        }

        foreach (var at in Settings(outlet))
        {
            var feed = new Feed { From = [outlet], At = at is { } volts ? [volts] : [], To = [load] };
            foreach (var lead in Leads(rest, feed, 1))
                yield return ($"{load} onto {outlet}{(at is null ? "" : $" at {at}")}{Over(lead)}", rest.Plug(feed with { Lead = lead }));
        }
    }

    private static string Over(string? lead) => lead is null ? "" : $" over {lead}";

    /// <summary>The outlet's settings; one unnamed where it has only one.</summary>
    private List<Volts?> Settings(OutletRef outlet)
    {
        var rating = OutletRating.Of(rig, outlet);
        if (rating.Modes is [{ Volts: null or { IsSingle: true } }])
            return [null];
        List<Volts?> settings = [.. rating.Settings];
        return settings.Count == 0 ? [null] : settings;
    }

    /// <summary>The lead that the feed has now, a plain one, and those on hand that no other feed uses and that are of use here.</summary>
    private static IEnumerable<string?> Leads(Rig rest, Feed feed, int plugs)
    {
        yield return feed.Lead;
        if (feed.Lead is not null && plugs == 1)
            yield return null;
        foreach (var lead in rest.Leads)
        {
            var suits = feed.From.Count > 1
                ? lead.Type is LeadType.Series or LeadType.Parallel
                : plugs > 1 ? lead.HasPlugsFor(plugs) : lead.Type is LeadType.Reversing or LeadType.Straight;
            if (suits && lead.Id != feed.Lead && rest.HasFree(lead))
                yield return lead.Id;
        }
    }
}
