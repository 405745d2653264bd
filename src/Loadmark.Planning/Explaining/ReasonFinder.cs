using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Explaining;

/// <summary>Finds what stands in the way of each load that a plan leaves dark; an instance serves once.</summary>
internal sealed class ReasonFinder(PlanResult plan, RigTrials trials)
{
    private const int MostOutletsTold = 4;

    /// <summary>The share of the time that reasons may take; the rest is for what would mend it.</summary>
    private const double ShareOfTime = 0.6;

    /// <summary>A signal path with this in it has no load of the rig in it.</summary>
    private const string NoLoad = "";

    /// <summary>A total that binds nothing, in place of what is typed or printed.</summary>
    private static readonly SupplyTotal Plenty = new(new Amps(100_000m), null);

    /// <summary>Dark loads that no reason names yet, in the order of the file.</summary>
    private readonly List<string> _open = [];

    private Rig Rig => trials.Rig;

    /// <summary>The reasons; every load that the plan leaves dark is in one of them.</summary>
    public IEnumerable<Reason> Find()
    {
        foreach (var id in plan.Unfed)
        {
            var load = trials.LoadOf(id);
            var alone = Rig with { Loads = [load], Wired = (ValueList<Feed>)[] };
            if (SuitableFor(load).Count == 0 && trials.Fails(alone))
                yield return new Reason([id], $"No outlet {Here(load)} gives {id} what it needs: {LoadNeeds.Of(load)}.{Against(load)}", []);
            else
                _open.Add(id);
        }

        // All at once first, so that a set has several dark loads in it where it can. Then each that is in no set yet, beside those that
        // are fed: they can be fed together, so a set that cannot has the dark one in it.
        if (_open.Count > 0 && MinimalSet(_open) is { } all)
            yield return ReasonOf(all);
        while (_open.Count > 0)
        {
            var dark = _open[0];
            if (!IsOver && MinimalSet([dark]) is { } core)
                yield return ReasonOf(core);
            if (_open.Remove(dark))
                yield return NotFound(dark);
        }
    }

    private bool IsOver => trials.IsSpent(ShareOfTime);

    private Reason NotFound(string dark) => new(
        [dark],
        $"Whether {dark} could be fed beside the loads that are was not found out in the time. "
            + $"It needs {LoadNeeds.Of(trials.LoadOf(dark))}.",
        []);

    /// <summary>
    /// What stands in the way of a minimal set; dark loads in no set yet are tried in the place of the last dark one in it.
    /// </summary>
    private Reason ReasonOf(Rig core)
    {
        var loads = core.Loads.Items.Select(static load => load.Id).ToList();
        _open.RemoveAll(loads.Contains);
        var place = loads.FindLastIndex(id => plan.Unfed.Items.Contains(id));
        var because = Because(core);
        if (place < 0)
            return new Reason([.. loads], because, []);

        var also = _open.TakeWhile(_ => !IsOver).Where(id => trials.Fails(With(trials.LoadOf(id)))).ToList();
        _open.RemoveAll(also.Contains);
        if (also.Count > 0)
            because += $" The same goes for {(also.Count == 1 ? "" : "each of ")}{Phrases.List(also)} in the place of {loads[place]}.";
        return new Reason([.. loads], because, [.. also]);

        Rig With(Load other) => core with { Loads = [.. core.Loads.Items.Select((load, index) => index == place ? other : load)] };
    }

    /// <summary>What of a rig that cannot be fed stands in the way: that without which it could be, tried one after the other.</summary>
    private string Because(Rig core)
    {
        var suitable = core.Loads.Items.SelectMany(SuitableFor).Distinct().ToList();
        var names = string.Join(", ", core.Loads.Items.Select(static load => load.Id));
        var isOne = core.Loads.Count == 1;
        var outlets = string.Join(", ", suitable);
        if (Rig.Mains is not null && trials.Holds(core with { Mains = null }))
        {
            var all = isOne ? "" : "all ";
            return $"{names} could {all}be fed, but what would feed {(isOne ? "it" : "them")} is not for the mains here ({outlets}).";
        }

        if (!trials.AcrossBoards && core.Loads.Items.Any(static load => load.Board is not null) && trials.Holds(WithoutBoards(core)))
            return $"{names} could {(isOne ? "" : "all ")}be fed if boards helped each other, which they do only where that is allowed.";
        if (suitable.Count < core.Loads.Count)
        {
            var suit = suitable.Count == 1 ? "one outlet suits" : $"{suitable.Count} outlets suit";
            var chain = core.Leads.Items.Any(static lead => lead.LoadPlugs is null or > 1) ? "more plugs on chains" : "a chain";
            return $"{names} need {core.Loads.Count} outlets or {chain}; {suit} any of them ({outlets}).";
        }

        var together = isOne ? $"{names} cannot be fed:" : $"{names} cannot {(core.Loads.Count == 2 ? "both" : "all")} be fed at once:";
        if (BecauseOfReturns(core) is { } returns)
            return $"{together} {returns}";
        if (trials.Holds(WithEach(core, static load => LoadRating.Of(load).Running is null ? load with { Run = new Amps(0) } : load)))
        {
            var unknown = Unknown(core, static rating => rating.Running is null);
            return $"{together} nothing tells what {unknown} draws, so it shares an outlet with nothing.";
        }

        if (trials.Holds(WithEach(core, static load => load with { Start = null })))
            return $"{together} {(isOne ? "it would run, but not start" : "they would run together, but not start together")}.";
        if (trials.Holds(core with { Supplies = [.. core.Supplies.Items.Select(WithoutTotals)] }))
            return $"{together} the outlets would do, but what the supplies can give in all does not.";
        var ask = isOne ? "it asks for" : "together they are";
        return $"{together} {ask} more than the outlets, the leads on hand or the supplies' totals allow.";
    }

    /// <summary>What stands in the way of loads that would have to meet on a return; null where nothing of that does.</summary>
    private string? BecauseOfReturns(Rig core)
    {
        const string tooFew = "and too few outlets are isolated.";
        var told = WithEach(core, static load => LoadRating.Of(load).Ground.IsKnown ? load : load with { Ground = GroundSide.Negative });
        if (trials.Holds(told))
        {
            var unknown = Unknown(core, static rating => !rating.Ground.IsKnown);
            return $"which side the ground of {unknown} is on is not known, so it must share no return, {tooFew}";
        }

        if (trials.Holds(WithEach(core, static load => load with { Ground = GroundSide.Negative })))
        {
            return core.Loads.Items.Any(static load => LoadRating.Of(load).Ground.Value == GroundSide.Positive)
                ? $"a load with positive ground must share no return with one whose ground is negative, {tooFew}"
                : $"a load on a reversing lead, whose ground is then not known, must share no return, {tooFew}";
        }

        return trials.Holds(core with { Signal = [NoLoad] })
            ? "loads for alternating current must not share one winding, because their audio leads join their grounds."
            : null;
    }

    private static Rig WithoutBoards(Rig rig) => WithEach(rig, static load => load with { Board = null });

    private static Rig WithEach(Rig rig, Func<Load, Load> change) => rig with { Loads = [.. rig.Loads.Items.Select(change)] };

    private static Supply WithoutTotals(Supply supply) =>
        supply with { Total = Plenty, Banks = [.. supply.Banks.Items.Select(static bank => bank with { Total = Plenty })] };

    /// <summary>
    /// A rig with few of the loads that still cannot be fed: some are left out in turn and stay out if the rest still fail
    /// (deletion filtering: what remains is minimal, not the smallest of all).
    /// </summary>
    private Rig? MinimalSet(List<string> mustHold)
    {
        var pinned = (Rig.Wired ?? []).Items.SelectMany(static feed => feed.To.Items).ToHashSet(StringComparer.Ordinal);
        var unfeedable = plan.Unfed.Items.Except(mustHold, StringComparer.Ordinal).ToHashSet(StringComparer.Ordinal);
        var core = Rig with { Loads = [.. Rig.Loads.Items.Where(load => !unfeedable.Contains(load.Id))] };
        if (!trials.Fails(core))
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
                if (trials.Fails(without))
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

    /// <summary>What stands against the outlets there are, a sentence for each of the first few.</summary>
    private string Against(Load load)
    {
        var reasons = SuitableOutlets.Against(Rig, load, trials.Only, trials.AcrossBoards).ToList();
        var more = reasons.Count > MostOutletsTold ? $" And {reasons.Count - MostOutletsTold} more." : "";
        return string.Concat(reasons.Take(MostOutletsTold).Select(static reason => $" {reason}.")) + more;
    }

    private List<OutletRef> SuitableFor(Load load) => SuitableOutlets.For(Rig, load, trials.Only, acrossBoards: trials.AcrossBoards);

    private string Here(Load load) => load.Board is null || trials.AcrossBoards ? "here" : $"of the board {load.Board}, or of none,";

    private static string Unknown(Rig rig, Func<LoadRating, bool> isUnknown) =>
        string.Join(", ", rig.Loads.Items.Where(load => isUnknown(LoadRating.Of(load))).Select(static load => load.Id));
}
