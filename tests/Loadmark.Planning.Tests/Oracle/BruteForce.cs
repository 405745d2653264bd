using Loadmark.Core.Checks;
using Loadmark.Core.Fits;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Tests.Oracle;

/// <summary>
/// Tries every wiring of a small rig and judges each by the rules alone. A wiring that a rule refuses is not carried
/// further, since no feed more can mend what is wrong with those there are; nor is one whose levels are no better than the
/// best so far, since no feed more makes a level better; and of outlets alike, none in use, the first is taken.
/// </summary>
internal sealed class BruteForce
{
    private readonly Rig _rig;
    private readonly WiredRig _bare;
    private readonly Feed[] _pinned;
    private readonly HashSet<string> _idleSupplies;
    private readonly IReadOnlySet<string>? _only;
    private readonly IReadOnlySet<string>? _certain;
    private readonly bool _leavesOut;
    private readonly bool _isQuiet;
    private readonly Rig? _present;
    private readonly int _fedByPinned;
    private readonly int _usedByPinned;
    private readonly int[] _twinsBefore;
    private List<Choice>? _choices;

    /// <summary>Looks at a rig.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="only">The supplies that may be used; null for all.</param>
    /// <param name="certain">The supplies of which only what is known to suit a load may feed it; null for none.</param>
    /// <param name="leavesOut">Whether what cannot be better is left out; else every wiring that the rules allow is looked at.</param>
    /// <param name="fewestMoves">Whether the rig's own wiring is to be changed as little as can be.</param>
    /// <param name="isQuiet">Whether the rules must find no noise.</param>
    public BruteForce(
        Rig rig, IReadOnlySet<string>? only = null, IReadOnlySet<string>? certain = null, bool leavesOut = true, bool fewestMoves = false, bool isQuiet = false)
    {
        _isQuiet = isQuiet;
        _leavesOut = leavesOut;
        _present = fewestMoves ? rig : null;
        _pinned = [.. (rig.Wired ?? []).Items.Where(feed => feed.Pinned)];
        _rig = rig with { Wired = [.. _pinned] };
        _bare = WiredRig.Of(_rig);
        _only = only;
        _certain = certain;
        _idleSupplies = NameplateCheck.Of(_bare).Findings.Items.Where(finding => finding.Rule == RuleId.MainsMismatch && finding.Severity >= Severity.Fails)
            .Select(finding => finding.Subjects[0]).ToHashSet(StringComparer.Ordinal);
        _fedByPinned = Enumerable.Range(0, _bare.Loads.Count).Where(load => _bare.Loads[load].Feeds.Count > 0).Sum(static load => 1 << load);
        _usedByPinned = Enumerable.Range(0, _bare.Outlets.Count).Where(outlet => _bare.Outlets[outlet].Feeds.Count > 0).Sum(static outlet => 1 << outlet);

        // Outlets of one supply that the file gives in the same words; not where it matters what is plugged in there now.
        var used = (_present?.Wired ?? []).Items.SelectMany(static feed => feed.From.Items).ToHashSet();
        _twinsBefore = [.. Enumerable.Range(0, _bare.Outlets.Count).Select(outlet => Enumerable.Range(0, outlet)
            .Where(before => !used.Contains(_bare.Outlets[before].Rating.Reference) && !used.Contains(_bare.Outlets[outlet].Rating.Reference)
                && _bare.Outlets[before].Rating.Supply == _bare.Outlets[outlet].Rating.Supply
                && _bare.Outlets[before].Rating.Outlet with { Id = "" } == _bare.Outlets[outlet].Rating.Outlet with { Id = "" })
            .Sum(static before => 1 << before))];
    }

    /// <summary>The levels of the best wiring.</summary>
    public decimal[]? Best { get; private set; }

    /// <summary>The best wiring.</summary>
    public Rig? BestRig { get; private set; }

    /// <summary>How many wirings the rules were asked about.</summary>
    public int Tried { get; private set; }

    /// <summary>Finds the best wiring.</summary>
    public BruteForce Run()
    {
        var levels = Judge(_pinned) ?? Measured(_rig);
        Extend([.. _pinned], new Taken(0, 0, 0), levels, stopWhenFed: false);
        return this;
    }

    /// <summary>Whether some wiring feeds every load; tried until one does.</summary>
    public bool FeedsAll()
    {
        Extend([.. _pinned], new Taken(0, 0, 0), Measured(_rig), stopWhenFed: true);
        return Best is not null;
    }

    /// <summary>One of the feeds that the rules allow alone; null when there is none.</summary>
    public Feed? AnyFeed(int pick) => Choices.Count == 0 ? null : Choices[pick % Choices.Count].Feed;

    /// <summary>The feeds that the rules allow alone.</summary>
    private List<Choice> Choices => _choices ??= [.. AllChoices()];

    /// <summary>
    /// Decides about the first load that nothing was decided about: each feed that has it, or dark. So every set of feeds comes up
    /// once. No level but those of dark loads gets better by one feed more (a supply that is fed wakes what it feeds), so what is no better
    /// already than the best wiring is not carried further.
    /// </summary>
    private void Extend(List<Feed> feeds, Taken taken, decimal[] levels, bool stopWhenFed)
    {
        if (stopWhenFed ? Best is not null || (taken.Dark & AllLoads) != 0 || (IsHopeless(feeds, taken) & AllLoads) != 0 : !CouldBeBetter(feeds, taken, levels))
            return;
        var load = 0;
        while (load < _bare.Loads.Count && ((_fedByPinned | taken.Fed | taken.Dark) >> load & 1) == 1)
            load++;
        if (load == _bare.Loads.Count)
        {
            if (stopWhenFed && levels[0] > 0)
                return;
            if (Best is null || Levels.Compare(levels, Best) < 0)
                (Best, BestRig) = (levels, _rig with { Wired = [.. feeds] });
            return;
        }

        foreach (var choice in Choices)
        {
            if ((choice.Loads >> load & 1) == 0 || !IsOpen(choice, feeds, taken) || IsTwin(choice, taken))
                continue;
            feeds.Add(choice.Feed);
            if (Judge(feeds) is { } now)
                Extend(feeds, taken with { Fed = taken.Fed | choice.Loads, Outlets = taken.Outlets | choice.Outlets }, now, stopWhenFed);
            feeds.RemoveAt(feeds.Count - 1);
        }

        Extend(feeds, taken with { Dark = taken.Dark | 1 << load }, levels, stopWhenFed);
    }

    private bool CouldBeBetter(List<Feed> feeds, Taken taken, decimal[] levels)
    {
        if (Best is null || !_leavesOut)
            return true;
        var dark = taken.Dark | IsHopeless(feeds, taken);
        var least = levels.ToArray();
        (least[0], least[1], least[2]) = (0, 0, 0);

        // A load that is still open may yet stay where it is.
        if (_present is { } present)
            least[Levels.Moves] -= Enumerable.Range(0, _bare.Loads.Count).Count(load => ((_fedByPinned | taken.Fed | taken.Dark) >> load & 1) == 0 && Levels.IsWired(present, _bare.Loads[load].Id));
        for (var load = 0; load < _rig.Loads.Count; load++)
        {
            if ((dark >> load & 1) == 0)
                continue;
            least[0]++;
            least[1] += _rig.Loads[load].Priority == 1 ? 1 : 0;
            least[2] += _rig.Loads[load].Priority is null or 2 ? 1 : 0;
        }

        least[0] = Math.Max(least[0], Undecided(taken) - MostMore(feeds, taken) + System.Numerics.BitOperations.PopCount((uint)(taken.Dark & AllLoads)));
        return Levels.Compare(least, Best) < 0;
    }

    /// <summary>The undecided loads that no feed which is still open has.</summary>
    private int IsHopeless(List<Feed> feeds, Taken taken)
    {
        var all = ((1 << _bare.Loads.Count) - 1) & ~(_fedByPinned | taken.Fed | taken.Dark);
        foreach (var choice in Choices)
        {
            if ((all & choice.Loads) != 0 && IsOpen(choice, feeds, taken))
                all &= ~choice.Loads;
        }

        return all;
    }

    /// <summary>The loads, a bit each, without the inputs of supplies that are fed by others, which may stay dark.</summary>
    private int AllLoads => (1 << _rig.Loads.Count) - 1;

    private int Undecided(Taken taken) =>
        _rig.Loads.Count - System.Numerics.BitOperations.PopCount((uint)((_fedByPinned | taken.Fed | taken.Dark) & AllLoads));

    /// <summary>More loads than this cannot be fed from the outlets left: one each, and as many more as the leads left have plugs for.</summary>
    private int MostMore(List<Feed> feeds, Taken taken)
    {
        var most = _bare.Outlets.Count - System.Numerics.BitOperations.PopCount((uint)(_usedByPinned | taken.Outlets));
        foreach (var lead in _rig.Leads)
            most += ((lead.LoadPlugs ?? _bare.Loads.Count) - 1) * Math.Max(0, CountOf(lead) - feeds.Count(feed => feed.Lead == lead.Id));
        return most;
    }

    private bool IsOpen(Choice choice, List<Feed> feeds, Taken taken) =>
        (choice.Loads & (taken.Fed | taken.Dark)) == 0 && (choice.Outlets & taken.Outlets) == 0
        && (choice.Feed.Lead is not { } lead || feeds.Count(feed => feed.Lead == lead) < CountOf(_rig.Leads.Items.First(one => one.Id == lead)));

    /// <summary>Whether an outlet before it, in use by nothing, could change names with an outlet of the feed.</summary>
    private bool IsTwin(Choice choice, Taken taken)
    {
        for (var outlet = 0; outlet < _bare.Outlets.Count && _leavesOut; outlet++)
        {
            if ((choice.Outlets >> outlet & 1) == 1 && (_twinsBefore[outlet] & ~(taken.Outlets | _usedByPinned | choice.Outlets)) != 0)
                return true;
        }

        return false;
    }

    /// <summary>The levels of a wiring; null where a rule refuses it.</summary>
    private decimal[]? Judge(IReadOnlyList<Feed> feeds)
    {
        Tried++;
        var rig = _rig with { Wired = [.. feeds] };
        var wired = WiredRig.Of(rig);
        var check = NameplateCheck.Of(wired);
        return check.Findings.Items.Any(finding => Refuses(finding) || (_isQuiet && finding.Severity == Severity.Noise)) || wired.Feeds.Items.Any(IsDoubtfulPurchase) ? null : Measured(rig, wired, check);
    }

    private decimal[] Measured(Rig rig, WiredRig? wired = null, CheckResult? check = null)
    {
        var levels = wired is null ? Levels.Of(rig) : Levels.Of(rig, wired, check!);
        return _present is { } present ? Levels.WithMoves(levels, present, rig) : levels;
    }

    /// <summary>Dark loads are counted, and supplies for other mains stay idle; what is joined must be known to be harmless.</summary>
    public static bool Refuses(Finding finding) => finding.Severity switch
    {
        >= Severity.Fails => finding.Rule != RuleId.Unfed && finding.Rule != RuleId.MainsMismatch,
        Severity.Unsure => finding.Rule == RuleId.GroundShort || finding.Rule == RuleId.AcShared || finding.Rule == RuleId.SeriesShort || finding.Rule == RuleId.ParallelUnequal,
        _ => false,
    };

    private bool IsDoubtfulPurchase(WiredFeed feed) =>
        _certain is not null && feed.Outlets.Any(outlet => _certain.Contains(outlet.Rating.Supply.Id))
        && feed.Loads.Any(load => Suitability.Of(FeedPoint.Of(feed), load.Rating).IsDoubtful);

    /// <summary>What outlets allow whose twins were asked already is not asked again: only their names differ, which no rule looks at.</summary>
    private IEnumerable<Choice> AllChoices()
    {
        var asked = new Dictionary<(string From, Joint Joint, string At, string? Lead), List<List<int>>>();
        for (var outlet = 0; outlet < _bare.Outlets.Count; outlet++)
        {
            if (!IsFree(outlet, _pinned))
                continue;
            foreach (var (from, joint, at, limitsKnown) in SourcesFrom(outlet, _pinned))
            {
                foreach (var lead in LeadsFor(joint))
                {
                    var key = (string.Join(' ', from.Select(FirstTwin)), joint, string.Join(' ', at), lead?.Id);
                    if (!_leavesOut || !asked.TryGetValue(key, out var sets))
                        asked[key] = sets = [.. Sets([], 0, lead is null ? 1 : lead.LoadPlugs ?? int.MaxValue, limitsKnown, set => Make(from, joint, at, lead?.Id, set))];
                    foreach (var set in sets)
                    {
                        var feed = Make(from, joint, at, lead?.Id, [.. set.Select(load => _bare.Loads[load])]);
                        yield return new Choice(
                            feed, set.Sum(static load => 1 << load),
                            Enumerable.Range(0, _bare.Outlets.Count).Where(place => from.Contains(_bare.Outlets[place].Rating.Reference)).Sum(static place => 1 << place));
                    }
                }
            }
        }
    }

    /// <summary>The place of the first free outlet that is alike; its own when there is none before it.</summary>
    private int FirstTwin(OutletRef outlet)
    {
        var place = Enumerable.Range(0, _bare.Outlets.Count).First(place => _bare.Outlets[place].Rating.Reference == outlet);
        return Enumerable.Range(0, place).FirstOrDefault(before => (_twinsBefore[place] >> before & 1) == 1, place);
    }

    /// <summary>The leads that suit, no lead of the list among them where a plain one does.</summary>
    private IEnumerable<Lead?> LeadsFor(Joint joint)
    {
        if (joint == Joint.None)
            yield return null;
        foreach (var lead in _rig.Leads.Items.Where(lead => _pinned.Count(feed => feed.Lead == lead.Id) < CountOf(lead)))
        {
            var suits = joint switch
            {
                Joint.Series => lead.Type == LeadType.Series,
                Joint.Parallel => lead.Type == LeadType.Parallel,
                _ => lead.Type is not (LeadType.Series or LeadType.Parallel),
            };
            if (suits)
                yield return lead;
        }
    }

    /// <summary>The sets of loads that one feed may have. What the rules refuse is not grown: no load more can mend it.</summary>
    private IEnumerable<List<int>> Sets(List<int> set, int from, int plugs, bool limitsKnown, Func<List<WiredLoad>, Feed> make)
    {
        for (var load = from; load < _bare.Loads.Count && set.Count < plugs; load++)
        {
            List<int> more = [.. set, load];
            if ((_fedByPinned >> load & 1) == 1 || (more.Count > 1 && (!limitsKnown || more.Exists(one => _bare.Loads[one].Rating.Running is null))))
                continue;
            if (make([]).From.Items.Any(outlet => IsApart(outlet, _bare.Loads[load].Rating.Load.Board)))
                continue;
            if (Judge([.. _pinned, make([.. more.Select(one => _bare.Loads[one])])]) is null)
                continue;
            yield return more;
            foreach (var larger in Sets(more, load + 1, plugs, limitsKnown, make))
                yield return larger;
        }
    }

    /// <summary>Whether an outlet and a load are of two boards.</summary>
    private bool IsApart(OutletRef outlet, string? board) =>
        board is not null && _rig.Supplies.Items.First(supply => supply.Id == outlet.Supply).Board is { } own && own != board;

    /// <summary>How many there are of a lead: of a straight one that gives no count as many as are wanted.</summary>
    private int CountOf(Lead lead) => lead.Count ?? (lead.Type == LeadType.Straight ? _bare.Loads.Count : 1);

    private bool IsFree(int outlet, IReadOnlyList<Feed> feeds)
    {
        var rating = _bare.Outlets[outlet].Rating;
        return !_idleSupplies.Contains(rating.Supply.Id)
            && _only?.Contains(rating.Supply.Id) is not false
            && !feeds.Any(feed => feed.From.Items.Contains(rating.Reference));
    }

    private static Feed Make(OutletRef[] from, Joint joint, Volts?[] at, string? lead, List<WiredLoad> loads) =>
        new() { From = [.. from], Joined = joint, At = [.. at.OfType<Volts>()], Lead = lead, To = [.. loads.Select(load => load.Id)] };

    /// <summary>The outlet alone, and with every later one in series in either order, and in parallel where the two are alike.</summary>
    private IEnumerable<(OutletRef[] From, Joint Joint, Volts?[] At, bool LimitsKnown)> SourcesFrom(int outlet, IReadOnlyList<Feed> feeds)
    {
        var one = _bare.Outlets[outlet];
        foreach (var (volts, isKnown) in SettingsOf(one))
            yield return ([one.Rating.Reference], Joint.None, [volts], isKnown);

        for (var place = outlet + 1; place < _bare.Outlets.Count; place++)
        {
            var other = _bare.Outlets[place];
            if (!IsFree(place, feeds) || !IsForJoining(one.Rating) || !IsForJoining(other.Rating))
                continue;
            foreach (var (volts, isKnown) in SettingsOf(one).Where(static setting => setting.Volts is not null))
            {
                if (AreAlike(one, other) && isKnown)
                    yield return ([one.Rating.Reference, other.Rating.Reference], Joint.Parallel, [volts], true);
                if (!HasOwnReturn(one) || !HasOwnReturn(other))
                    continue;
                foreach (var (second, isSecondKnown) in SettingsOf(other).Where(static setting => setting.Volts is not null))
                {
                    yield return ([one.Rating.Reference, other.Rating.Reference], Joint.Series, [volts, second], isKnown && isSecondKnown);
                    yield return ([other.Rating.Reference, one.Rating.Reference], Joint.Series, [second, volts], isKnown && isSecondKnown);
                }
            }
        }
    }

    /// <summary>Only outlets of which it is known that they are d.c., and of which polarity, are joined.</summary>
    private static bool IsForJoining(OutletRating outlet) => outlet is { Form: { IsKnown: true, Value: SupplyForm.Direct }, Polarity.IsKnown: true };

    private bool HasOwnReturn(WiredOutlet outlet) => _bare.Outlets.Items.Count(other => other.Rating.Return == outlet.Rating.Return) == 1;

    private bool AreAlike(WiredOutlet one, WiredOutlet other) =>
        one.Rating.Supply == other.Rating.Supply && one.Rating.Modes.SequenceEqual(other.Rating.Modes)
        && one.Rating.Polarity.Value == other.Rating.Polarity.Value && one.Rating.Plug.Value == other.Rating.Plug.Value
        && one.Rating.Plug.IsKnown == other.Rating.Plug.IsKnown
        && (HasOwnReturn(one) && HasOwnReturn(other) || one.Rating.Return == other.Rating.Return)
        && one.Rating.Outlet.Bank == other.Rating.Outlet.Bank && one.Rating.Outlet.Surge == other.Rating.Outlet.Surge
        && one.Rating.Outlet.NoLoad == other.Rating.Outlet.NoLoad && one.Rating.Outlet.SourceOhms == other.Rating.Outlet.SourceOhms;

    private IEnumerable<(Volts? Volts, bool LimitIsKnown)> SettingsOf(WiredOutlet outlet)
    {
        if (outlet.Rating.Modes is [{ Volts: null } only])
            yield return (null, only.Limit is not null);
        var printed = _bare.Loads.Items.SelectMany(load => new[] { load.Rating.Voltage.Value.Low, load.Rating.Voltage.Value.High });
        foreach (var mode in outlet.Rating.Modes)
        {
            if (mode.Volts is not { } range)
                continue;
            foreach (var volts in printed.Where(range.Contains).Concat([range.Low, range.High]).Distinct())
                yield return (volts, mode.LimitAt(volts) is not null);
        }
    }

    /// <summary>A feed that the rules allow alone.</summary>
    /// <param name="Feed">The feed.</param>
    /// <param name="Loads">Its loads, a bit each.</param>
    /// <param name="Outlets">Its outlets, a bit each.</param>
    private sealed record Choice(Feed Feed, int Loads, int Outlets);

    /// <summary>What is decided, a bit each; pinned feeds apart.</summary>
    private readonly record struct Taken(int Fed, int Dark, int Outlets);
}
