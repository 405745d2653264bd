using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Tests.Oracle;

/// <summary>
/// Tries every wiring of a small rig and judges each by the rules alone. A wiring that a rule refuses is not carried
/// further: no feed more can mend what is wrong with those there are.
/// </summary>
internal sealed class BruteForce
{
    private readonly Rig _rig;
    private readonly WiredRig _bare;
    private readonly Feed[] _pinned;
    private readonly HashSet<string> _idleSupplies;
    private readonly IReadOnlySet<string>? _only;

    public BruteForce(Rig rig, IReadOnlySet<string>? only = null)
    {
        _pinned = [.. (rig.Wired ?? []).Items.Where(feed => feed.Pinned)];
        _rig = rig with { Wired = [.. _pinned] };
        _bare = WiredRig.Of(_rig);
        _only = only;
        _idleSupplies = RigChecker.Check(_bare).Findings.Items.Where(finding => finding.Rule == "mains-mismatch")
            .Select(finding => finding.Subjects[0]).ToHashSet(StringComparer.Ordinal);
    }

    public decimal[]? Best { get; private set; }

    public Rig? BestRig { get; private set; }

    public int Tried { get; private set; }

    public BruteForce Run()
    {
        Extend(0, [.. _pinned]);
        return this;
    }

    /// <summary>Whether some wiring feeds every load; tried until one does.</summary>
    public bool FeedsAll() => FeedsRest(0, [.. _pinned]);

    /// <summary>One of the feeds that the rules allow alone; null when there is none.</summary>
    public Feed? AnyFeed(int pick)
    {
        var allowed = Enumerable.Range(0, _bare.Outlets.Count).Where(outlet => IsFree(outlet, []))
            .SelectMany(outlet => FeedsFrom(outlet, [])).Where(feed => IsAllowed([feed])).ToList();
        return allowed.Count == 0 ? null : allowed[pick % allowed.Count];
    }

    private void Extend(int from, List<Feed> feeds)
    {
        Judge(feeds);
        for (var outlet = from; outlet < _bare.Outlets.Count; outlet++)
        {
            if (!IsFree(outlet, feeds))
                continue;
            foreach (var feed in FeedsFrom(outlet, feeds))
            {
                feeds.Add(feed);
                if (IsAllowed(feeds))
                    Extend(outlet + 1, feeds);
                feeds.RemoveAt(feeds.Count - 1);
            }
        }
    }

    private bool FeedsRest(int from, List<Feed> feeds)
    {
        if (_bare.Loads.Items.All(load => feeds.Exists(feed => feed.To.Items.Contains(load.Id))))
            return true;
        for (var outlet = from; outlet < _bare.Outlets.Count; outlet++)
        {
            if (!IsFree(outlet, feeds))
                continue;
            foreach (var feed in FeedsFrom(outlet, feeds))
            {
                feeds.Add(feed);
                if (IsAllowed(feeds) && FeedsRest(outlet + 1, feeds))
                    return true;
                feeds.RemoveAt(feeds.Count - 1);
            }
        }

        return false;
    }

    private void Judge(List<Feed> feeds)
    {
        Tried++;
        var rig = _rig with { Wired = [.. feeds] };
        var vector = Levels.Of(rig);
        if (Best is null || Levels.Compare(vector, Best) < 0)
            (Best, BestRig) = (vector, rig);
    }

    private bool IsAllowed(List<Feed> feeds) => !RigChecker.Check(_rig with { Wired = [.. feeds] }).Findings.Items
        .Any(finding => finding.Severity >= Severity.Fails && finding.Rule is not ("unfed" or "mains-mismatch"));

    private bool IsFree(int outlet, List<Feed> feeds)
    {
        var rating = _bare.Outlets[outlet].Rating;
        return !_idleSupplies.Contains(rating.Supply.Id)
            && _only?.Contains(rating.Supply.Id) is not false
            && !feeds.Exists(feed => feed.From.Items.Contains(rating.Reference));
    }

    private IEnumerable<Feed> FeedsFrom(int outlet, List<Feed> feeds)
    {
        var loads = _bare.Loads.Items.Where(load => !feeds.Exists(feed => feed.To.Items.Contains(load.Id))).ToList();
        var leads = _rig.Leads.Items.Where(lead => feeds.Count(feed => feed.Lead == lead.Id) < (lead.Count ?? 1)).ToList();
        foreach (var set in Subsets(loads))
        {
            foreach (var (from, joint, at, limitsKnown) in SourcesFrom(outlet, feeds))
            {
                if (set.Count > 1 && (!limitsKnown || set.Exists(load => load.Rating.Running is null)))
                    continue;
                if (joint == Joint.None && set.Count == 1)
                    yield return Make(from, joint, at, null, set);
                foreach (var lead in leads)
                {
                    var suits = joint switch
                    {
                        Joint.Series => lead.Type == LeadType.Series,
                        Joint.Parallel => lead.Type == LeadType.Parallel,
                        _ => lead.Type is not (LeadType.Series or LeadType.Parallel),
                    };
                    if (suits && set.Count <= (lead.LoadPlugs ?? set.Count))
                        yield return Make(from, joint, at, lead.Id, set);
                }
            }
        }
    }

    private static Feed Make(OutletRef[] from, Joint joint, Volts[] at, string? lead, List<WiredLoad> loads) =>
        new() { From = [.. from], Joined = joint, At = [.. at], Lead = lead, To = [.. loads.Select(load => load.Id)] };

    /// <summary>The outlet alone, and with every later one in series in either order, and in parallel where the two are alike.</summary>
    private IEnumerable<(OutletRef[] From, Joint Joint, Volts[] At, bool LimitsKnown)> SourcesFrom(int outlet, List<Feed> feeds)
    {
        var one = _bare.Outlets[outlet];
        foreach (var (volts, isKnown) in SettingsOf(one))
            yield return ([one.Rating.Reference], Joint.None, [volts], isKnown);

        for (var place = outlet + 1; place < _bare.Outlets.Count; place++)
        {
            var other = _bare.Outlets[place];
            if (!IsFree(place, feeds) || one.Rating.Form.Value != SupplyForm.Direct || other.Rating.Form.Value != SupplyForm.Direct)
                continue;
            foreach (var (volts, isKnown) in SettingsOf(one))
            {
                if (AreAlike(one, other) && isKnown)
                    yield return ([one.Rating.Reference, other.Rating.Reference], Joint.Parallel, [volts], true);
                if (!HasOwnReturn(one) || !HasOwnReturn(other))
                    continue;
                foreach (var (second, isSecondKnown) in SettingsOf(other))
                {
                    yield return ([one.Rating.Reference, other.Rating.Reference], Joint.Series, [volts, second], isKnown && isSecondKnown);
                    yield return ([other.Rating.Reference, one.Rating.Reference], Joint.Series, [second, volts], isKnown && isSecondKnown);
                }
            }
        }
    }

    private bool HasOwnReturn(WiredOutlet outlet) => _bare.Outlets.Items.Count(other => other.Rating.Return == outlet.Rating.Return) == 1;

    private static bool AreAlike(WiredOutlet one, WiredOutlet other) =>
        one.Rating.Supply == other.Rating.Supply && one.Rating.Modes.SequenceEqual(other.Rating.Modes)
        && one.Rating.Polarity.Value == other.Rating.Polarity.Value && one.Rating.Plug.Value == other.Rating.Plug.Value
        && (one.Rating.Isolated.Value && other.Rating.Isolated.Value || one.Rating.Return == other.Rating.Return)
        && one.Rating.Outlet.Bank == other.Rating.Outlet.Bank && one.Rating.Outlet.Surge == other.Rating.Outlet.Surge
        && one.Rating.Outlet.NoLoad == other.Rating.Outlet.NoLoad && one.Rating.Outlet.SourceOhms == other.Rating.Outlet.SourceOhms;

    private IEnumerable<(Volts Volts, bool LimitIsKnown)> SettingsOf(WiredOutlet outlet)
    {
        var printed = _bare.Loads.Items.SelectMany(load => new[] { load.Rating.Voltage.Value.Low, load.Rating.Voltage.Value.High });
        foreach (var mode in outlet.Rating.Modes)
        {
            if (mode.Volts is not { } range)
                continue;
            foreach (var volts in printed.Where(range.Contains).Concat([range.Low, range.High]).Distinct())
                yield return (volts, mode.LimitAt(volts) is not null);
        }
    }

    private static IEnumerable<List<WiredLoad>> Subsets(List<WiredLoad> loads)
    {
        for (var mask = 1; mask < 1 << loads.Count; mask++)
            yield return [.. loads.Where((_, place) => (mask >> place & 1) == 1)];
    }
}
