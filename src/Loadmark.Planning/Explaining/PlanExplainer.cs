using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Search;

namespace Loadmark.Planning.Explaining;

/// <summary>
/// Explains a plan that leaves loads dark. It asks the planner and the rules and nothing else, so that every word of it has
/// been tried: a set of loads is planned alone, a change is planned again.
/// </summary>
public sealed class PlanExplainer
{
    private const int MostChanges = 5;
    private const int MostOutletsTold = 4;

    /// <summary>A signal path with this in it has no load of the rig in it.</summary>
    private const string NoLoad = "";

    /// <summary>The share of the whole time that one question may take.</summary>
    private const double ShareOfTime = 0.1;

    /// <summary>A total that binds nothing, in place of what is typed or printed.</summary>
    private static readonly SupplyTotal Plenty = new(new Amps(100_000m), null);

    private readonly Rig _rig;
    private readonly PlanOptions _options;
    private readonly TimeSpan _limit;
    private readonly TimeProvider _time;
    private readonly long _begin;
    private readonly CancellationToken _cancellation;

    private PlanExplainer(Rig rig, PlanOptions options, TimeProvider time, CancellationToken cancellation)
    {
        _rig = rig;
        _options = options with { TimeLimit = options.TimeLimit * ShareOfTime, Progress = null };
        _time = time;
        _begin = time.GetTimestamp();
        _cancellation = cancellation;
        _limit = options.TimeLimit;
    }

    private bool IsOver => _cancellation.IsCancellationRequested || _time.GetElapsedTime(_begin) > _limit;

    /// <summary>
    /// Explains what stands in the way of the loads that a plan does not feed; of one that feeds all but leaves less free
    /// than the headroom, which headroom would do.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="options">How it was planned; its time limit holds for all questions asked on the way together.</param>
    /// <param name="cancellation">Stops asking; what was found so far is returned.</param>
    public static PlanExplanation Explain(PlanResult plan, PlanOptions options, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(options);

        // The planned wiring itself must not bind: only pinned feeds do.
        var pinned = new ValueList<Feed>([.. (plan.Rig.Wired ?? []).Items.Where(static feed => feed.Pinned)]);
        var explainer = new PlanExplainer(plan.Rig with { Wired = pinned }, options, TimeProvider.System, cancellation);
        if (plan.Unfed.Count == 0)
            return new PlanExplanation([], [.. explainer.Headrooms(plan)]);
        return new PlanExplanation([.. explainer.Reasons(plan)], [.. explainer.Changes(plan)]);
    }

    private IEnumerable<Reason> Reasons(PlanResult plan)
    {
        var together = new List<string>();
        foreach (var id in plan.Unfed)
        {
            var load = LoadOf(id);
            var outlets = SuitableOutlets.For(_rig, load, _options.Only);
            if (outlets.Count == 0 && Fails(_rig with { Loads = [load], Wired = (ValueList<Feed>)[] }))
                yield return new Reason([id], $"No outlet here gives {id} what it needs: {LoadNeeds.Of(load)}.{Against(load)}");
            else
                together.Add(id);
        }

        if (together.Count == 0 || MinimalSet(plan, together) is not { } core)
            yield break;

        yield return new Reason([.. core.Loads.Items.Select(static load => load.Id)], Because(core));
    }

    /// <summary>What of a rig that cannot be fed stands in the way: that without which it could be, tried one after the other.</summary>
    private string Because(Rig core)
    {
        var suitable = core.Loads.Items.SelectMany(load => SuitableOutlets.For(_rig, load, _options.Only)).Distinct().ToList();
        var names = string.Join(", ", core.Loads.Items.Select(static load => load.Id));
        var isOne = core.Loads.Count == 1;
        var outlets = string.Join(", ", suitable);
        if (_rig.Mains is not null && Holds(core with { Mains = null }))
            return $"{names} could {(isOne ? "" : "all ")}be fed, but what would feed {(isOne ? "it" : "them")} is not for the mains here ({outlets}).";
        if (suitable.Count < core.Loads.Count)
        {
            var suit = suitable.Count == 1 ? "one outlet suits" : $"{suitable.Count} outlets suit";
            return $"{names} need {core.Loads.Count} outlets or a chain; {suit} any of them ({outlets}).";
        }

        var together = isOne ? $"{names} cannot be fed:" : $"{names} cannot {(core.Loads.Count == 2 ? "both" : "all")} be fed at once:";
        if (BecauseOfReturns(core) is { } returns)
            return $"{together} {returns}";
        if (Holds(WithEach(core, static load => LoadRating.Of(load).Running is null ? load with { Run = new Amps(0) } : load)))
            return $"{together} nothing tells what {Unknown(core, static rating => rating.Running is null)} draws, so it shares an outlet with nothing.";
        if (Holds(WithEach(core, static load => load with { Start = null })))
            return $"{together} {(isOne ? "it would run, but not start" : "they would run together, but not start together")}.";
        if (Holds(core with { Supplies = [.. core.Supplies.Items.Select(WithoutTotals)] }))
            return $"{together} the outlets would do, but what the supplies can give in all does not.";
        return $"{together} {(isOne ? "it asks for" : "together they are")} more than the outlets, the leads on hand or the supplies' totals allow.";
    }

    /// <summary>What stands in the way of loads that would have to meet on a return; null where nothing of that does.</summary>
    private string? BecauseOfReturns(Rig core)
    {
        const string tooFew = "and too few outlets have returns of their own.";
        if (Holds(WithEach(core, static load => LoadRating.Of(load).Ground.IsKnown ? load : load with { Ground = GroundSide.Negative })))
            return $"which side the ground of {Unknown(core, static rating => !rating.Ground.IsKnown)} is on is not known, so it must share no return, {tooFew}";
        if (Holds(WithEach(core, static load => load with { Ground = GroundSide.Negative })))
        {
            return core.Loads.Items.Any(static load => LoadRating.Of(load).Ground.Value == GroundSide.Positive)
                ? $"a load with positive ground must share no return with one whose ground is negative, {tooFew}"
                : $"a load on a reversing lead, whose ground is then not known, must share no return, {tooFew}";
        }

        return Holds(core with { Signal = [NoLoad] })
            ? "loads for alternating current must not share one winding, because their audio leads join their grounds."
            : null;
    }

    private static Rig WithEach(Rig rig, Func<Load, Load> change) => rig with { Loads = [.. rig.Loads.Items.Select(change)] };

    private static Supply WithoutTotals(Supply supply) =>
        supply with { Total = Plenty, Banks = [.. supply.Banks.Items.Select(static bank => bank with { Total = Plenty })] };

    /// <summary>
    /// A rig with few of the loads that still cannot be fed: some are left out in turn and stay out if the rest still fail
    /// (deletion filtering: what remains is minimal, not the smallest of all).
    /// </summary>
    private Rig? MinimalSet(PlanResult plan, List<string> mustHold)
    {
        var pinned = (_rig.Wired ?? []).Items.SelectMany(static feed => feed.To.Items).ToHashSet(StringComparer.Ordinal);
        var unfeedable = plan.Unfed.Items.Except(mustHold, StringComparer.Ordinal).ToHashSet(StringComparer.Ordinal);
        var core = _rig with { Loads = [.. _rig.Loads.Items.Where(load => !unfeedable.Contains(load.Id))] };
        if (!Fails(core))
            return null;

        // Those the plan feeds first: the set then keeps the loads that the plan had to leave dark. In large pieces first,
        // since most loads have nothing to do with it.
        var others = core.Loads.Items.Where(load => !pinned.Contains(load.Id)).OrderBy(load => mustHold.Contains(load.Id))
            .Select(static load => load.Id).ToList();
        for (var size = Math.Max(1, others.Count / 2); size > 0; size /= 2)
        {
            for (var from = 0; from < others.Count;)
            {
                if (IsOver)
                    return null;
                var piece = others.GetRange(from, Math.Min(size, others.Count - from)).ToHashSet(StringComparer.Ordinal);
                var without = core with { Loads = [.. core.Loads.Items.Where(load => !piece.Contains(load.Id))] };
                if (Fails(without))
                {
                    core = without;
                    others.RemoveRange(from, piece.Count);
                }
                else
                {
                    from += size;
                }
            }
        }

        return core;
    }

    private List<PlanChange> Changes(PlanResult plan)
    {
        var changes = new List<PlanChange>();
        foreach (var (text, rig) in Candidates(plan))
        {
            if (changes.Count == MostChanges || IsOver)
                break;
            if (Holds(rig))
                changes.Add(new PlanChange(text + Sharing(rig), rig));
        }

        return changes;
    }

    /// <summary>Which loads share an outlet over a lead that was added.</summary>
    private string Sharing(Rig rig)
    {
        if (rig.Leads.Count == _rig.Leads.Count || rig.Leads[^1].LoadPlugs is 1)
            return "";

        var wired = Plan(rig).Rig.Wired ?? [];
        return wired.Items.FirstOrDefault(feed => feed.Lead == rig.Leads[^1].Id) is { } feed && feed.To.Count > 1
            ? $", so that {Words(feed.To)} share {string.Join(" and ", feed.From.Select(static outlet => $"{outlet.Supply}/{outlet.Outlet}"))}"
            : "";
    }

    /// <summary>The largest headroom, in whole percents, with which no limit is past it.</summary>
    private IEnumerable<PlanChange> Headrooms(PlanResult plan)
    {
        if (!plan.Check.Findings.Items.Any(static finding => finding.Rule == RuleId.ThinHeadroom))
            yield break;

        var (fits, tooMuch) = (-1, (int)Math.Ceiling(_rig.HeadroomInForce * 100));
        while (tooMuch - fits > 1 && !IsOver)
        {
            var middle = fits < 0 ? 0 : (fits + tooMuch) / 2;
            var tried = Plan(_rig with { Headroom = middle / 100m });
            var isFine = tried.Unfed.Count == 0 && !tried.Check.Findings.Items.Any(static finding => finding.Rule == RuleId.ThinHeadroom);
            if (!isFine && middle == 0)
                yield break;
            (fits, tooMuch) = isFine ? (middle, tooMuch) : (fits, middle);
        }

        if (fits >= 0)
            yield return new PlanChange($"set headroom to {fits} %: then no limit is past it", _rig with { Headroom = fits / 100m });
    }

    private IEnumerable<(string Text, Rig Rig)> Candidates(PlanResult plan)
    {
        yield return ("one more reversing lead", With(new Lead { Id = Free("reversing lead"), Type = LeadType.Reversing }));
        foreach (var plugs in new[] { 2, 3, 5 })
            yield return ($"one more daisy chain with {plugs} plugs", With(new Lead { Id = Free("chain"), Type = LeadType.DaisyChain, Plugs = plugs }));
        yield return ("one more series lead", With(new Lead { Id = Free("series lead"), Type = LeadType.Series }));
        yield return ("one more parallel lead", With(new Lead { Id = Free("parallel lead"), Type = LeadType.Parallel }));

        var more = plan.Unfed.Items.Select(id => MissingOutlet.For(LoadOf(id), _rig.HeadroomInForce)).ToList();
        foreach (var (text, outlet) in more.DistinctBy(static entry => entry.Text))
            yield return ($"one more outlet of {text}", With([outlet]));
        if (more.Count > 1)
            yield return ($"{more.Count} more outlets: {string.Join("; ", more.Select(static entry => entry.Text))}", With([.. more.Select(static entry => entry.Outlet)]));

        // Least important first; a load that a pinned feed holds stays.
        var pinned = (_rig.Wired ?? []).Items.SelectMany(static feed => feed.To.Items).ToHashSet(StringComparer.Ordinal);
        foreach (var load in _rig.Loads.Items.Where(load => !pinned.Contains(load.Id)).OrderByDescending(static load => load.Priority ?? 2))
            yield return ($"take {load.Id} off", _rig with { Loads = [.. _rig.Loads.Items.Where(other => other.Id != load.Id)] });
    }

    private Rig With(Lead lead) => _rig with { Leads = [.. _rig.Leads, lead] };

    private Rig With(List<Outlet> outlets)
    {
        var id = "more";
        while (_rig.Supplies.Items.Any(supply => supply.Id == id))
            id += "+";
        var extra = new Supply { Id = id, Isolated = true, Outlets = [.. outlets.Select(static (outlet, index) => outlet with { Id = $"{index + 1}" })] };
        return _rig with { Supplies = [.. _rig.Supplies, extra] };
    }

    private string Free(string name)
    {
        while (_rig.Leads.Items.Any(lead => lead.Id == name))
            name += "+";
        return name;
    }

    private static string Words(ValueList<string> ids) => $"{string.Join(", ", ids.Items.SkipLast(1))} and {ids[^1]}";

    private PlanResult Plan(Rig rig) => RigPlanner.Plan(rig, _options with { Only = OnlyWith(rig) }, _cancellation);

    private bool Holds(Rig rig) => FeedsAll(rig) is true;

    private bool Fails(Rig rig) => FeedsAll(rig) is false;

    private bool? FeedsAll(Rig rig) => RigPlanner.CanFeedAll(rig, _options with { Only = OnlyWith(rig) }, _cancellation);

    /// <summary>What is added to the rig may always be used.</summary>
    private HashSet<string>? OnlyWith(Rig rig)
    {
        if (_options.Only is not { } only)
            return null;
        var added = rig.Supplies.Items.Select(static supply => supply.Id)
            .Except(_rig.Supplies.Items.Select(static supply => supply.Id), StringComparer.Ordinal);
        return new HashSet<string>(only.Concat(added), StringComparer.Ordinal);
    }

    private Load LoadOf(string id) => _rig.Loads.Items.First(load => load.Id == id);

    /// <summary>What stands against the outlets there are, a sentence for each of the first few.</summary>
    private string Against(Load load)
    {
        var reasons = SuitableOutlets.Against(_rig, load, _options.Only).ToList();
        var more = reasons.Count > MostOutletsTold ? $" And {reasons.Count - MostOutletsTold} more." : "";
        return string.Concat(reasons.Take(MostOutletsTold).Select(static reason => $" {reason}.")) + more;
    }

    private static string Unknown(Rig rig, Func<LoadRating, bool> isUnknown) =>
        string.Join(", ", rig.Loads.Items.Where(load => isUnknown(LoadRating.Of(load))).Select(static load => load.Id));
}
