using Loadmark.Core.Checks;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Bench;

/// <summary>
/// How a person wires without a plan: the largest draw first, each load on the first free outlet that the rules accept, and where
/// there is none, beside others on a chain. Nothing is ever moved again.
/// </summary>
internal static class FirstFit
{
    /// <summary>Wires the rig; what finds no place stays dark.</summary>
    public static Rig Wire(Rig rig)
    {
        var bare = WiredRig.Of(rig with { Wired = (ValueList<Feed>)[] });
        var feeds = new List<Feed>();
        foreach (var load in bare.Loads.Items.OrderByDescending(static load => load.Rating.Running?.Value.Value ?? 0))
            _ = TryAlone(rig, bare, feeds, load) || TryShared(rig, feeds, load);
        return rig with { Wired = [.. feeds] };
    }

    private static bool TryAlone(Rig rig, WiredRig bare, List<Feed> feeds, WiredLoad load)
    {
        foreach (var outlet in bare.Outlets.Items.Where(outlet => !feeds.Exists(feed => feed.From[0] == outlet.Rating.Reference)))
        {
            foreach (var volts in outlet.Rating.Modes.Select(static mode => mode.Volts?.Low).OfType<Volts>())
            {
                var isSet = outlet.Rating.Modes is not [{ Volts.IsSingle: true }];
                feeds.Add(new Feed { From = [outlet.Rating.Reference], At = isSet ? [volts] : [], To = [load.Id] });
                if (IsAccepted(rig, feeds))
                    return true;
                feeds.RemoveAt(feeds.Count - 1);
            }
        }

        return false;
    }

    private static bool TryShared(Rig rig, List<Feed> feeds, WiredLoad load)
    {
        for (var place = 0; place < feeds.Count; place++)
        {
            var before = feeds[place];
            foreach (var lead in rig.Leads.Items.Where(lead => lead.Type == LeadType.DaisyChain))
            {
                var isFree = before.Lead == lead.Id || (before.Lead is null && feeds.Count(feed => feed.Lead == lead.Id) < (lead.Count ?? 1));
                if (!isFree || (lead.LoadPlugs is { } plugs && before.To.Count >= plugs))
                    continue;
                feeds[place] = before with { Lead = lead.Id, To = [.. before.To, load.Id] };
                if (IsAccepted(rig, feeds))
                    return true;
                feeds[place] = before;
            }
        }

        return false;
    }

    private static bool IsAccepted(Rig rig, List<Feed> feeds) => !NameplateCheck.Of(rig with { Wired = [.. feeds] }).Findings.Items
        .Any(static finding => finding.Severity >= Severity.Fails && finding.Rule != RuleId.Unfed && finding.Rule != RuleId.MainsMismatch);
}
