using Google.OrTools.Sat;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Objective;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Model;

/// <summary>
/// The wiring as whole-number variables: how many loads of a group each group of outlets feeds, not which; so that
/// exchanging two that are alike is no other solution.
/// </summary>
internal sealed class WiringModel
{
    private readonly PlanProblem _problem;
    private readonly BoundedSum[] _levels = [.. Enum.GetValues<Level>().Select(_ => new BoundedSum())];

    /// <summary>Builds the model of a problem.</summary>
    public WiringModel(PlanProblem problem)
    {
        _problem = problem;
        Variables = new VariableTable(Model);
        AddSingles();
        foreach (var slot in problem.Slots)
            Slots.AddRange(new SlotModel(problem, this, slot).Build());
        OrderSlots();
        FeedEachOnce();
        UseEachOutletOnce();
        OrderSupplies();
        new TotalModel(problem, this).Build();
        ReturnModel.Build(problem, this);
        CapLevels();
    }

    /// <summary>The solver's model.</summary>
    public CpModel Model { get; } = new();

    /// <summary>Every variable of the model.</summary>
    public VariableTable Variables { get; }

    /// <summary>Loads fed alone.</summary>
    public List<SingleChoice> Singles { get; } = [];

    /// <summary>Leads that make feeds of their own kind, class by class.</summary>
    public List<SlotChoice> Slots { get; } = [];

    /// <summary>For each group of loads how many are not fed.</summary>
    public List<IntVar> Dark { get; } = [];

    /// <summary>What a level counts.</summary>
    public BoundedSum this[Level level] => _levels[(int)level];

    /// <summary>Whether a solution keeps every demand.</summary>
    /// <param name="values">The variables' values by their indices.</param>
    public bool Allows(long[] values)
    {
        foreach (var constraint in Model.Model.Constraints)
        {
            var linear = constraint.Linear;
            var sum = 0L;
            for (var term = 0; term < linear.Vars.Count; term++)
                sum += linear.Coeffs[term] * values[linear.Vars[term]];
            if (sum < linear.Domain[0] || sum > linear.Domain[^1])
                return false;
        }

        return true;
    }

    /// <summary>
    /// A yes-or-no that follows from variables made before it; where it stands for several that are alike, for how many it is
    /// yes, which does not follow.
    /// </summary>
    public IntVar Whether(int count, Func<long[], bool> worth) =>
        count == 1 ? Variables.Following(1, values => worth(values) ? 1 : 0) : Variables.Decision(count);

    /// <summary>Demands that a sum is at most a number.</summary>
    public void AtMost(BoundedSum sum, long most)
    {
        if (sum.Most > most)
            Model.Add(sum.Expression() <= most);
    }

    /// <summary>Demands that a sum is at most <paramref name="off"/>, or <paramref name="on"/> where a yes-or-no is yes.</summary>
    public void AtMost(BoundedSum sum, long off, long on, IntVar choice) => Model.Add(sum.Expression() <= off + ((on - off) * choice));

    private void AddSingles()
    {
        SingleLead?[] leads = [null, .. _problem.SingleLeads];
        var used = leads.Select(static _ => new BoundedSum()).ToArray();
        var found = new List<(Source Source, SingleLead? Lead, LoadCost Cost, int Moves)>();
        foreach (var load in _problem.Loads)
        {
            foreach (var alike in _problem.Singles.GroupBy(static source => source.Group))
            {
                found.Clear();
                foreach (var source in alike)
                {
                    foreach (var lead in leads)
                    {
                        if (source.CostOf(load, lead?.Ends ?? LeadEnds.Plain) is { } cost)
                            found.Add((source, lead, cost, load.IsMovedBy(Joint.None, [source.Part], lead?.Ids) ? 1 : 0));
                    }
                }

                foreach (var (source, lead, cost, moves) in found)
                {
                    if (found.Exists(other => IsBetter(other, (source, lead, cost, moves), load)))
                        continue;
                    var most = Math.Min(load.Count, Math.Min(source.Group.Count, lead?.Ids.Length ?? int.MaxValue));
                    var choice = new SingleChoice(source, load, lead, cost, Variables.Decision(most), most);
                    Singles.Add(choice);
                    this[Level.Doubtful].Add(choice.Count, cost.Doubts, most);
                    this[Level.Moves].Add(choice.Count, moves, most);
                    this[Level.Margins].Add(choice.Count, cost.Margins, most);
                    this[Level.Thin].Add(choice.Count, source.IsThin(load) ? 1 : 0, most);
                    used[lead is null ? 0 : lead.Index + 1].Add(choice.Count, 1, most);
                }
            }
        }

        foreach (var lead in _problem.SingleLeads)
        {
            AtMost(used[lead.Index + 1], lead.Ids.Length);
            this[Level.SpecialLeads].Add(used[lead.Index + 1]);
        }
    }

    /// <summary>
    /// Whether one way to feed a load alone from a group of outlets makes another needless: not worse in anything, or the earlier of two as
    /// good.
    /// </summary>
    private bool IsBetter(
        (Source Source, SingleLead? Lead, LoadCost Cost, int Moves) one,
        (Source Source, SingleLead? Lead, LoadCost Cost, int Moves) other,
        LoadGroup load)
    {
        if (one == other || (one.Lead is not null && one.Lead != other.Lead) || one.Cost.Doubts > other.Cost.Doubts
            || one.Moves > other.Moves || one.Cost.Margins > other.Cost.Margins)
            return false;

        var (ones, others) = (Costs(one.Source), Costs(other.Source));
        if (ones.Zip(others).Any(static pair => pair.First > pair.Second))
            return false;
        return one.Cost != other.Cost || one.Moves != other.Moves || one.Lead != other.Lead || !ones.SequenceEqual(others)
            || one.Source.Volts < other.Source.Volts;

        List<long> Costs(Source source)
        {
            var draw = load.DrawAt(source.Volts);
            var costs = new List<long> { source.IsThin(load) ? 1 : 0 };
            foreach (var total in _problem.Totals.Where(total => total.Covers(source.Group)))
            {
                var factor = total.FactorAt(source.Volts);
                costs.Add(MicroUnits.Draw(draw.Run * factor));
                costs.Add(MicroUnits.Draw(draw.Start * factor));
            }

            return costs;
        }
    }

    /// <summary>Of leads that are alike the first are used, and the fuller ones first.</summary>
    private void OrderSlots()
    {
        SlotChoice[]? last = null;
        foreach (var slot in Slots.GroupBy(choice => choice.Slot))
        {
            var choices = slot.ToArray();
            if (last is not null && last[0].Slot.Kind == slot.Key.Kind)
            {
                Model.Add(LinearExpr.Sum(last.Select(choice => choice.Used)) >= LinearExpr.Sum(choices.Select(choice => choice.Used)));
                Model.Add(CountOn(last) >= CountOn(choices));
            }

            last = choices;
        }

        static LinearExpr CountOn(SlotChoice[] choices) => BoundedSum.Of(choices.SelectMany(static choice => choice.Loads)).Expression();
    }

    private void FeedEachOnce()
    {
        var fed = _problem.Loads.Select(static _ => new BoundedSum()).ToArray();
        foreach (var single in Singles)
            fed[single.Load.Index].Add(single.Count, 1, single.Most);
        foreach (var load in Slots.SelectMany(static slot => slot.Loads))
            fed[load.Load.Index].Add(load.Count, 1, load.Most);
        foreach (var load in _problem.Loads)
        {
            var those = fed[load.Index];
            var dark = Variables.Following(load.Count, values => load.Count - those.ValueIn(values));
            Dark.Add(dark);
            Model.Add(those.Expression() + dark == load.Count);
            this[Level.Unfed].Add(dark, load.Darkness, load.Count);
            this[Level.Moves].Add(dark, load.IsWired ? 1 : 0, load.Count);
            if (load.IsInput)
                continue;
            if (load.Priority == 1)
                this[Level.UnfedFirst].Add(dark, 1, load.Count);
            else if (load.Priority == 2)
                this[Level.UnfedSecond].Add(dark, 1, load.Count);
        }
    }

    private void UseEachOutletOnce()
    {
        foreach (var group in _problem.Outlets)
        {
            var used = UsesOf(group);
            AtMost(used, group.Count);
            used.Cap(group.Count);
            this[Level.Capacity].Add(used, group.Capacity);
        }
    }

    private BoundedSum UsesOf(OutletGroup group)
    {
        var used = new BoundedSum();
        foreach (var single in Singles.Where(single => single.Source.Group == group))
            used.Add(single.Count, 1, single.Most);
        foreach (var slot in Slots)
        {
            foreach (var leg in slot.Legs)
            {
                for (var place = 0; place < leg.Uses.Count; place++)
                {
                    if (leg.Leg.Parts[place].Group == group)
                        used.Add(leg.Uses[place], slot.Class.OutletsALeg, slot.Slot.Count);
                }
            }
        }

        return used;
    }

    /// <summary>Of supplies that are alike the first have the more outlets in use.</summary>
    private void OrderSupplies()
    {
        // Where something is plugged in now, exchanging alike supplies is another solution.
        foreach (var alike in _problem.AlikeSupplies.Where(_ => _problem.Homes is null))
        {
            var uses = alike.Select(groups =>
            {
                var sum = new BoundedSum();
                foreach (var group in groups)
                    sum.Add(UsesOf(group));
                return sum;
            }).ToList();
            for (var place = 1; place < uses.Count; place++)
                Model.Add(uses[place - 1].Expression() >= uses[place].Expression());
        }
    }

    /// <summary>What is known of the levels without solving keeps their weights small.</summary>
    private void CapLevels()
    {
        var loads = _problem.Loads.Sum(load => load.Count);
        this[Level.Doubtful].Cap(loads);
        this[Level.Moves].Cap(loads);
        this[Level.Margins].Cap(3 * loads);
        this[Level.Sharing].Cap(loads);
        this[Level.NoisyLoads].Cap(loads + _problem.PinnedOnReturn.Values.Sum(pinned => pinned.Length));
        this[Level.SpecialLeads].Cap(_problem.Outlets.Sum(group => group.Count));
        this[Level.Thin].Cap(_problem.Outlets.Sum(group => group.Count) + _problem.Totals.Length);
    }
}
