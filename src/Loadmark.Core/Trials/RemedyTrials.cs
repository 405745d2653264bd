using Loadmark.Core.Checks;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Trials;

/// <summary>
/// Looks for single changes to the wiring that take a finding away and bring no other as bad: another setting, another lead, another
/// outlet, a load unplugged. Each one offered was judged by the rules first.
/// </summary>
public static class RemedyTrials
{
    /// <summary>The most changes that are offered for one finding.</summary>
    public const int Most = 3;

    /// <summary>How many of the changes that look best are judged by every rule.</summary>
    private const int MostJudged = 8;

    /// <summary>Changes that would mend a finding, the best first; empty when no single change of the wiring does.</summary>
    /// <param name="rig">The rig as it is.</param>
    /// <param name="check">What every rule says of it.</param>
    /// <param name="finding">The finding; one of the check's.</param>
    /// <param name="judge">Every rule.</param>
    /// <param name="cancellation">Stops it; what was found so far is returned.</param>
    public static IReadOnlyList<Trial> Find(
        Rig rig, CheckResult check, Finding finding, Func<Rig, CheckResult> judge, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(finding);
        ArgumentNullException.ThrowIfNull(judge);

        // The rules on nameplates are quick and sort the candidates; those that look best are judged by every rule.
        var quick = NameplateCheck.Of(rig);
        var promising = new List<Trial>();
        foreach (var (what, candidate) in Candidates(rig, quick, finding))
        {
            if (cancellation.IsCancellationRequested)
                break;
            var trial = new Trial(what, candidate, NameplateCheck.Of(candidate));
            if (SeverityCounts.Of(trial.Check).CompareTo(SeverityCounts.Of(quick)) <= 0)
                promising.Add(trial);
        }

        var before = SeverityCounts.Of(check);
        return
        [
            .. promising.OrderBy(static trial => SeverityCounts.Of(trial.Check)).Take(MostJudged)
                .TakeWhile(_ => !cancellation.IsCancellationRequested)
                .Select(trial => trial with { Check = judge(trial.Rig) })
                .Where(
                    trial => SeverityCounts.Of(trial.Check).CompareTo(before) < 0
                        && !trial.Check.Findings.Items.Any(other => IsSame(other, finding)))
                .OrderBy(static trial => SeverityCounts.Of(trial.Check)).Take(Most),
        ];
    }

    private static bool IsSame(Finding one, Finding other) => one.Rule == other.Rule && one.Subjects == other.Subjects;

    private static IEnumerable<(string What, Rig Rig)> Candidates(Rig rig, CheckResult quick, Finding finding)
    {
        var feeds = (rig.Wired ?? []).Items;
        var subjects = finding.Subjects.Items;
        for (var index = 0; index < feeds.Length; index++)
        {
            var feed = feeds[index];
            if (!subjects.Any(subject => Concerns(feed, subject)))
                continue;
            foreach (var candidate in OtherSettings(rig, index).Concat(OtherLeads(rig, index)))
                yield return candidate;
        }

        var loads = subjects.Where(subject => rig.Loads.Items.Any(load => load.Id == subject))
            .Concat(feeds.Where(feed => subjects.Any(subject => Concerns(feed, subject))).SelectMany(static feed => feed.To.Items))
            .Distinct(StringComparer.Ordinal).ToList();
        var trials = new ConnectionTrials(rig, quick, NameplateCheck.Of);
        foreach (var load in loads)
        {
            foreach (var outlet in OutletsToTry(rig))
            {
                var connection = trials.Connect(outlet, load);
                if (connection is { IsThere: false, Objection: null })
                    yield return ($"Plug {connection.Best.What}", connection.Best.Rig);
            }
        }

        foreach (var load in loads.Where(load => feeds.Any(feed => feed.To.Items.Contains(load))))
            yield return ($"Unplug {load}", rig.Unplug(load));
    }

    private static bool Concerns(Feed feed, string subject) =>
        feed.To.Items.Contains(subject) || feed.Lead == subject
            || feed.From.Items.Any(outlet => outlet.Supply == subject || outlet.ToString() == subject);

    /// <summary>One outlet of each sort that is free, and those in use: what is alike need not be tried twice.</summary>
    private static IEnumerable<OutletRef> OutletsToTry(Rig rig)
    {
        var used = (rig.Wired ?? []).Items.SelectMany(static feed => feed.From.Items).ToHashSet();
        foreach (var supply in rig.Supplies)
        {
            var seen = new HashSet<Outlet>();
            foreach (var outlet in supply.Outlets)
            {
                var place = new OutletRef(supply.Id, outlet.Id);
                if (used.Contains(place) || seen.Add(outlet with { Id = "" }))
                    yield return place;
            }
        }
    }

    private static IEnumerable<(string What, Rig Rig)> OtherSettings(Rig rig, int index)
    {
        var feed = rig.Wired!.Value[index];
        if (feed.From is not [var reference])
            yield break;
        var modes = OutletRating.Of(rig, reference).Modes;
        foreach (var volts in modes.Select(static mode => mode.Volts?.Low).OfType<Volts>().Distinct())
        {
            if (modes.Length > 1 && feed.SettingOf(0) != volts)
                yield return ($"Set {reference} to {volts}", rig.Replace(index, feed with { At = [volts] }));
        }
    }

    private static IEnumerable<(string What, Rig Rig)> OtherLeads(Rig rig, int index)
    {
        var feed = rig.Wired!.Value[index];
        if (feed is { Lead: not null, To.Count: 1, From.Count: 1 })
            yield return ($"Use a plain lead on {feed.From[0]}", rig.Replace(index, feed with { Lead = null }));
        foreach (var lead in rig.Leads)
        {
            if (lead.Id != feed.Lead && rig.HasFree(lead) && (lead.LoadPlugs ?? int.MaxValue) >= feed.To.Count)
                yield return ($"Use {lead.Id} on {string.Join(" + ", feed.From)}", rig.Replace(index, feed with { Lead = lead.Id }));
        }
    }
}
