using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Explaining;

/// <summary>
/// Explains a plan that leaves loads dark. It asks the planner and the rules and nothing else, so that every word of it has
/// been tried: a set of loads is planned alone, a change is planned again.
/// </summary>
public sealed class PlanExplainer
{
    private const string ThinHeadroom = "thin-headroom";
    private const int MostChanges = 5;

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
            var outlets = Suitability.OutletsFor(_rig, load, _options.Only);
            if (outlets.Count == 0 && Fails(_rig with { Loads = [load], Wired = (ValueList<Feed>)[] }))
                yield return new Reason([id], $"No outlet here gives {id} what it needs: {Needs(load)}.");
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
        var suitable = core.Loads.Items.SelectMany(load => Suitability.OutletsFor(_rig, load, _options.Only)).Distinct().ToList();
        var names = string.Join(", ", core.Loads.Items.Select(static load => load.Id));
        var isOne = core.Loads.Count == 1;
        if (_rig.Mains is not null && Holds(core with { Mains = null }))
            return $"{names} could {(isOne ? "" : "all ")}be fed, but what would feed {(isOne ? "it" : "them")} is not for the mains here ({string.Join(", ", suitable)}).";
        if (suitable.Count < core.Loads.Count)
            return $"{names} need {core.Loads.Count} outlets or a chain; {(suitable.Count == 1 ? "one outlet suits" : $"{suitable.Count} outlets suit")} any of them ({string.Join(", ", suitable)}).";

        var together = isOne ? $"{names} cannot be fed:" : $"{names} cannot {(core.Loads.Count == 2 ? "both" : "all")} be fed at once:";
        if (Holds(core with { Loads = [.. core.Loads.Items.Select(static load => load with { Ground = null })] }))
            return $"{together} a load with positive ground must share no return with one whose ground is negative, and too few outlets have returns of their own.";
        if (Holds(core with { Loads = [.. core.Loads.Items.Select(static load => load with { Start = null })] }))
            return $"{together} {(isOne ? "it would run, but not start" : "they would run together, but not start together")}.";
        if (Holds(core with { Supplies = [.. core.Supplies.Items.Select(static supply => supply with { Total = Plenty, Banks = [.. supply.Banks.Items.Select(static bank => bank with { Total = Plenty })] })] }))
            return $"{together} the outlets would do, but what the supplies can give in all does not.";
        return $"{together} {(isOne ? "it asks for" : "together they are")} more than the outlets, the leads on hand or the supplies' totals allow.";
    }

    /// <summary>
    /// A rig with few of the loads that still cannot be fed: some are left out in turn and stay out if the rest still fail
    /// (deletion filtering: what remains is minimal, not the smallest of all).
    /// </summary>
    private Rig? MinimalSet(PlanResult plan, List<string> mustHold)
    {
        var pinned = (_rig.Wired ?? []).Items.SelectMany(static feed => feed.To.Items).ToHashSet(StringComparer.Ordinal);
        var hopeless = plan.Unfed.Items.Except(mustHold, StringComparer.Ordinal).ToHashSet(StringComparer.Ordinal);
        var core = _rig with { Loads = [.. _rig.Loads.Items.Where(load => !hopeless.Contains(load.Id))] };
        if (!Fails(core))
            return null;

        // Those the plan feeds first: the set then keeps the loads that the plan had to leave dark. In large pieces first,
        // since most loads have nothing to do with it.
        var others = core.Loads.Items.Where(load => !pinned.Contains(load.Id)).OrderBy(load => mustHold.Contains(load.Id)).Select(static load => load.Id).ToList();
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
        if (!plan.Check.Findings.Items.Any(static finding => finding.Rule == ThinHeadroom))
            yield break;

        var (fits, tooMuch) = (-1, (int)Math.Ceiling(_rig.HeadroomInForce * 100));
        while (tooMuch - fits > 1 && !IsOver)
        {
            var middle = fits < 0 ? 0 : (fits + tooMuch) / 2;
            var tried = Plan(_rig with { Headroom = middle / 100m });
            var isFine = tried.Unfed.Count == 0 && !tried.Check.Findings.Items.Any(static finding => finding.Rule == ThinHeadroom);
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

        var more = plan.Unfed.Items.Select(id => OutletFor(LoadOf(id))).ToList();
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

    /// <summary>An outlet that would feed the load with the rig's headroom, its current rounded up to what is sold: 50 mA steps.</summary>
    private (string Text, Outlet Outlet) OutletFor(Load load)
    {
        var rating = LoadRating.Of(load);
        var need = Math.Max(rating.Starting?.Value.Value ?? 0, (rating.Running?.Value.Value ?? 0) / (1 - _rig.HeadroomInForce));
        var amps = new Amps(Math.Max(0.05m, Math.Ceiling(need / 0.05m) * 0.05m));
        var volts = rating.Voltage.Value.Low;
        var form = rating.Form.Value == SupplyForm.Alternating ? " a.c." : "";
        var label = $"{volts} {(form.Length > 0 ? "AC" : "DC")} {amps}";
        return ($"{volts}{form} {amps}{Unusual(rating)}", new Outlet
        {
            Id = "1",
            Label = NameplateReader.Read(label),
            Polarity = rating.Polarity.Value,
            Plug = rating.Plug.Value,
        });
    }

    /// <summary>What must be said of an outlet because it is not what one takes for granted: centre negative over a plug of 5.5x2.1.</summary>
    private static string Unusual(LoadRating rating)
    {
        var polarity = rating.Form.Value == SupplyForm.Direct && rating.Polarity.Value != Polarity.CentreNegative ? $" {PolarityText.Of(rating.Polarity.Value)}" : "";
        var plug = rating.Plug.Value == Plug.Common ? "" : $" plug {rating.Plug.Value}";
        return polarity + plug;
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

    private bool? FeedsAll(Rig rig) => RigPlanner.CanFeedAll(rig with { Signal = [] }, _options with { Only = OnlyWith(rig) }, _cancellation);

    /// <summary>What is added to the rig may always be used.</summary>
    private HashSet<string>? OnlyWith(Rig rig)
    {
        if (_options.Only is not { } only)
            return null;
        var added = rig.Supplies.Items.Select(static supply => supply.Id).Except(_rig.Supplies.Items.Select(static supply => supply.Id), StringComparer.Ordinal);
        return new HashSet<string>(only.Concat(added), StringComparer.Ordinal);
    }

    private Load LoadOf(string id) => _rig.Loads.Items.First(load => load.Id == id);

    private static string Needs(Load load)
    {
        var rating = LoadRating.Of(load);
        var form = rating.Form.Value == SupplyForm.Alternating ? "a.c." : $"d.c., {PolarityText.Of(rating.Polarity.Value)}";
        var start = rating is { Starting: { } starting, Running: { } running } && starting.Value > running.Value ? $", {starting.Value} while it starts" : "";
        return $"{rating.Voltage.Value} {form}, {rating.Running?.Value.ToString() ?? "a current that is not known"}{start}, plug {rating.Plug.Value}";
    }
}
