using Google.OrTools.Sat;
using Loadmark.Planning.Objective;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Model;

/// <summary>Builds what one lead may do; an instance serves once.</summary>
internal sealed class SlotModel(PlanProblem problem, WiringModel wiring, LeadSlot slot)
{
    /// <summary>One choice for each class of sources that suits enough loads; at most one of them is taken.</summary>
    public List<SlotChoice> Build()
    {
        var choices = slot.Classes.Select(Choose).OfType<SlotChoice>().ToList();
        var used = new BoundedSum();
        foreach (var choice in choices)
            used.Add(choice.Used, 1, slot.Count);
        wiring.AtMost(used, slot.Count);
        wiring[Level.SpecialLeads].Add(used);
        return choices;
    }

    private SlotChoice? Choose(FeedClass from)
    {
        var suiting = problem.Loads.Select(load => (Load: load, Cost: from.CostOf(load, slot.Ends)))
            .Where(pair => pair.Cost is not null && IsBorne(from, pair.Load)).ToList();
        var known = suiting.Where(static pair => pair.Load.IsDrawKnown).Select(static pair => pair.Load).ToList();
        var plugs = from.AllowsSeveral ? Places(from, known) : 1;
        var cases = new List<LoadsInCase>();
        if (slot.Least == 1 && suiting.Count > 0)
            cases.Add(NewCrew(from, SharingCase.Alone, suiting.ConvertAll(static pair => pair.Load), 1));
        if (plugs > 1)
            cases.AddRange(Several(from, known, plugs));
        if (cases.Count == 0)
            return null;

        var used = cases is [var only] ? only.IsOn : Sum(cases.ConvertAll(static inCase => inCase.IsOn));
        var legs = from.Legs.Select(leg => new LegChoice(leg, Uses(leg, used))).ToList();
        if (from.LegsAreAlike && slot.Count == 1)
            OrderLegs(legs);
        var choice = new SlotChoice(slot, from, used, legs, cases);
        foreach (var leg in legs)
            Keep(choice, leg);
        var costs = suiting.ToDictionary(static pair => pair.Load, static pair => pair.Cost!.Value);
        foreach (var load in choice.Loads)
        {
            wiring[Level.Doubtful].Add(load.Count, costs[load.Load].Doubts, load.Most);
            wiring[Level.Margins].Add(load.Count, costs[load.Load].Margins, load.Most);
            var isMoved = load.Load.IsMovedBy(from.Joined, from.FirstParts, problem.SlotLeads[slot.Kind]);
            wiring[Level.Moves].Add(load.Count, isMoved ? 1 : 0, load.Most);
        }

        return choice;
    }

    private static bool IsBorne(FeedClass from, LoadGroup load) =>
        from.Legs.All(leg => leg.Limits.Any(limit => limit?.Bears(load, from.Volts) is not false));

    /// <summary>How many loads there may be: no more than plugs, nor than of the smallest loads the largest outlet bears.</summary>
    private int Places(FeedClass from, List<LoadGroup> loads)
    {
        var places = Math.Min(slot.Plugs, loads.Sum(static load => load.Count));
        foreach (var leg in from.Legs)
        {
            var scale = leg.Scale!;
            places = Math.Min(places, Fitting(loads, load => scale.RunOf(load, from.Volts), leg.Limits.Max(static limit => limit!.Most)));
            places = Math.Min(places, Fitting(loads, load => scale.StartOf(load, from.Volts), leg.Limits.Max(static limit => limit!.Peak)));
        }

        return places;
    }

    private static int Fitting(List<LoadGroup> loads, Func<LoadGroup, long> draw, long most)
    {
        var places = 0;
        foreach (var (each, count) in loads.Select(load => (Each: draw(load), load.Count)).OrderBy(static pair => pair.Each))
        {
            var more = each == 0 ? count : (int)Math.Min(count, most / each);
            places += more;
            most -= more * each;
            if (more < count)
                break;
        }

        return places;
    }

    private IEnumerable<LoadsInCase> Several(FeedClass from, List<LoadGroup> loads, int plugs)
    {
        if (from.SharedReturn is not null)
        {
            yield return Share(NewCrew(from, SharingCase.OnSharedReturn, loads, plugs));
            yield break;
        }

        if (WithInputs(from, loads, plugs) is { } unheard)
            yield return unheard;

        var quiet = loads.FindAll(static load => !load.MindsCompany);
        var places = Math.Min(plugs, quiet.Sum(static load => load.Count));
        if (places > 1)
        {
            var inCase = Share(NewCrew(from, SharingCase.Quiet, quiet, places));
            ReturnConstraints.KeepHarmless(wiring, Heard(inCase), slot.Count);
            yield return inCase;
        }

        if (loads.Exists(static load => load.MindsCompany))
        {
            var inCase = Share(NewCrew(from, SharingCase.Noisy, loads, plugs));
            var heard = Heard(inCase);
            wiring.Model.Add(BoundedSum.Of(heard).Expression() >= 2 * inCase.IsOn);
            ReturnConstraints.KeepHarmless(wiring, heard, slot.Count);
            wiring[Level.NoisyLoads].Add(BoundedSum.Of(heard));
            ReturnConstraints.CountFindings(wiring, inCase.IsOn, slot.Count, heard, inCase.Plugs, default);
            yield return inCase;
        }
    }

    /// <summary>Inputs of supplies with one load at the most; null where none may be here.</summary>
    private LoadsInCase? WithInputs(FeedClass from, List<LoadGroup> loads, int plugs)
    {
        if (!loads.Exists(static load => load.IsInput))
            return null;
        var inCase = Share(NewCrew(from, SharingCase.WithInputs, loads, plugs));
        wiring.Model.Add(BoundedSum.Of(Heard(inCase)).Expression() <= inCase.IsOn);
        return inCase;
    }

    /// <summary>The loads that meet others on the lead: not the inputs of supplies.</summary>
    private static List<LoadCount> Heard(LoadsInCase inCase) => inCase.Loads.FindAll(static load => !load.Load.IsInput);

    private LoadsInCase NewCrew(FeedClass from, SharingCase sharing, List<LoadGroup> loads, int plugs)
    {
        var counts = loads.ConvertAll(load =>
        {
            var most = Math.Min(load.Count, plugs * slot.Count);
            return new LoadCount(load, wiring.Variables.Decision(most), most, load.OccupantAt(from.Point, slot.Ends.Reverses));
        });
        var all = BoundedSum.Of(counts);
        var isOn = wiring.Whether(slot.Count, values => all.ValueIn(values) > 0);
        wiring.Model.Add(all.Expression() <= plugs * isOn);

        // Said for each group too: then a fraction of a lead holds no more than that fraction of a group.
        foreach (var count in counts)
        {
            if (count.Load.Count < plugs)
                wiring.Model.Add(count.Count <= count.Load.Count * isOn);
        }

        wiring.Model.Add(all.Expression() >= (sharing == SharingCase.Alone ? 1 : 2) * isOn);
        return new LoadsInCase(sharing, isOn, plugs, counts);
    }

    private LoadsInCase Share(LoadsInCase inCase)
    {
        wiring[Level.Sharing].Add(BoundedSum.Of(inCase.Loads));
        return inCase;
    }

    private IntVar Sum(List<IntVar> parts)
    {
        var sum = wiring.Variables.Following(slot.Count, values => parts.Sum(part => values[part.Index]));
        wiring.Model.Add(LinearExpr.Sum(parts) == sum);
        return sum;
    }

    /// <summary>Which outlets the slot takes; where there is one sort only, the slot's use says it.</summary>
    private List<IntVar> Uses(FeedLeg leg, IntVar used)
    {
        if (leg.Parts.Length == 1)
            return [used];
        var uses = leg.Parts.Select(_ => wiring.Variables.Decision(slot.Count)).ToList();
        wiring.Model.Add(LinearExpr.Sum(uses) == used);
        return uses;
    }

    private void OrderLegs(List<LegChoice> legs)
    {
        var places = Enumerable.Range(0, legs[0].Uses.Count).Select(static place => (long)place).ToList();
        if (places.Count > 1)
            wiring.Model.Add(LinearExpr.WeightedSum(legs[0].Uses, places) <= LinearExpr.WeightedSum(legs[1].Uses, places));
    }

    /// <summary>
    /// Running and starting sums within the limit of the outlet; a finding where the running sum leaves less free than the headroom.
    /// </summary>
    private void Keep(SlotChoice choice, LegChoice leg)
    {
        if (leg.Leg.Scale is not { } scale)
            return;

        var fed = choice.Class.Volts;
        var run = Draws(scale.RunOf);
        var most = LinearExpr.WeightedSum(leg.Uses, leg.Leg.Limits.Select(static limit => limit!.Most));
        if (leg.Leg.Limits.Any(limit => limit!.Usable < Math.Min(limit.Most, run.Most)))
            KeepHeadroom(run, leg);
        else
            wiring.Model.Add(run.Expression() <= most);

        // Said for each case of sharing too: then a fraction of a lead gives no more than that fraction of what an outlet can.
        if (choice.Cases.Count > 1)
        {
            var largest = leg.Leg.Limits.Max(static limit => limit!.Most);
            foreach (var inCase in choice.Cases)
                wiring.Model.Add(DrawsOf(inCase.Loads, scale.RunOf).Expression() <= largest * inCase.IsOn);
        }

        // Where no load takes more to start, the running sum says it all.
        if (choice.Loads.Any(load => scale.StartOf(load.Load, fed) != scale.RunOf(load.Load, fed)))
            wiring.Model.Add(
                Draws(scale.StartOf).Expression() <= LinearExpr.WeightedSum(leg.Uses, leg.Leg.Limits.Select(static limit => limit!.Peak)));
        if (choice.Loads.Any(load => scale.AfterSurgeOf(load.Load, fed) != scale.RunOf(load.Load, fed)))
            wiring.Model.Add(Draws(scale.AfterSurgeOf).Expression() <= most);

        BoundedSum Draws(Func<LoadGroup, Volts, long> draw) => DrawsOf(choice.Loads, draw);

        BoundedSum DrawsOf(IEnumerable<LoadCount> loads, Func<LoadGroup, Volts, long> draw)
        {
            var sum = new BoundedSum();
            foreach (var load in loads)
                sum.Add(load.Count, draw(load.Load, fed), load.Most);
            return sum;
        }
    }

    private void KeepHeadroom(BoundedSum run, LegChoice leg)
    {
        var thins = new List<IntVar>();
        foreach (var (use, limit) in leg.Uses.Zip(leg.Leg.Limits))
        {
            var usable = limit!.Usable;
            var thin = wiring.Whether(slot.Count, values => values[use.Index] > 0 && run.ValueIn(values) > usable);
            wiring.Model.Add(thin <= use);
            wiring[Level.Thin].Add(thin, 1, slot.Count);
            thins.Add(thin);
        }

        wiring.Model.Add(run.Expression()
            <= LinearExpr.WeightedSum(leg.Uses, leg.Leg.Limits.Select(static limit => limit!.Usable))
            + LinearExpr.WeightedSum(thins, leg.Leg.Limits.Select(static limit => limit!.Most - limit.Usable)));
    }
}
