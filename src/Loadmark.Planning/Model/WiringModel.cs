using Google.OrTools.Sat;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Model;

/// <summary>
/// The wiring as whole-number variables: how many loads of a group each group of outlets feeds, not which; so that
/// exchanging two that are alike is no other solution.
/// </summary>
internal sealed class WiringModel
{
    private readonly PlanProblem _problem;
    private readonly Tally[] _levels = [.. Enum.GetValues<Level>().Select(_ => new Tally())];

    /// <summary>Builds the model of a problem.</summary>
    public WiringModel(PlanProblem problem)
    {
        _problem = problem;
        AddSingles();
        AddSlots();
        OrderSlots();
        FeedEachOnce();
        UseEachOutletOnce();
        KeepTotals();
        new ReturnModel(problem, this).Build();
        CapLevels();
    }

    /// <summary>The solver's model.</summary>
    public CpModel Model { get; } = new();

    /// <summary>Every variable, for handing a solution on.</summary>
    public List<IntVar> Variables { get; } = [];

    /// <summary>Loads fed alone.</summary>
    public List<SingleChoice> Singles { get; } = [];

    /// <summary>Leads that make feeds of their own kind, source by source.</summary>
    public List<SlotChoice> Slots { get; } = [];

    /// <summary>For each group of loads how many are not fed.</summary>
    public List<IntVar> Dark { get; } = [];

    /// <summary>What a level counts.</summary>
    public Tally this[Level level] => _levels[(int)level];

    /// <summary>A new whole number from 0 to <paramref name="most"/>.</summary>
    public IntVar Number(long most)
    {
        var variable = Model.NewIntVar(0, most, "");
        Variables.Add(variable);
        return variable;
    }

    /// <summary>Demands that a sum is at most a number.</summary>
    public void AtMost(Tally sum, long most)
    {
        if (sum.Most > most)
            Model.Add(sum.Expression() <= most);
    }

    /// <summary>Demands that a sum is at most <paramref name="off"/>, or <paramref name="on"/> where a yes-or-no is yes.</summary>
    public void AtMost(Tally sum, long off, long on, IntVar choice) => Model.Add(sum.Expression() <= off + ((on - off) * choice));

    private void AddSingles()
    {
        var reversing = new Tally();
        foreach (var source in _problem.Singles)
        {
            foreach (var load in _problem.Loads)
            {
                for (var reverses = 0; reverses < (_problem.Reversing.Length > 0 ? 2 : 1); reverses++)
                {
                    if (source.MarginsOf(load, reverses == 1) is not { } margins || (reverses == 1 && source.MarginsOf(load, reverses: false) is not null))
                        continue;

                    var most = Math.Min(load.Count, source.Parts[0].Group.Count);
                    var count = Number(most);
                    Singles.Add(new SingleChoice(source, load, reverses == 1, count));
                    this[Level.Margins].Add(count, margins, most);
                    this[Level.Thin].Add(count, source.Limits.Count(limit => limit.IsThin(load)), most);
                    if (reverses == 1)
                        reversing.Add(count, 1, most);
                }
            }
        }

        AtMost(reversing, _problem.Reversing.Length);
        this[Level.SpecialLeads].Add(reversing);
    }

    private void AddSlots()
    {
        foreach (var slot in _problem.Slots)
        {
            var choices = slot.Sources.Select(source => Choose(slot, source)).OfType<SlotChoice>().ToList();
            var used = new Tally();
            foreach (var choice in choices)
                used.Add(choice.Used, 1, 1);
            AtMost(used, 1);
            this[Level.SpecialLeads].Add(used);
            Slots.AddRange(choices);
        }
    }

    private SlotChoice? Choose(LeadSlot slot, Source source)
    {
        var plugs = source.AllowsSeveral ? slot.Plugs : 1;
        var suiting = _problem.Loads
            .Select(load => (Load: load, Margins: source.MarginsOf(load, slot.Reverses)))
            .Where(pair => pair.Margins is not null && (pair.Load.IsDrawKnown || slot.Least == 1)).ToList();
        if (suiting.Sum(pair => pair.Load.Count) < slot.Least)
            return null;

        var used = Number(1);
        var choice = new SlotChoice(slot, source, used, []);
        var all = new Tally();
        foreach (var (load, margins) in suiting)
        {
            var most = Math.Min(load.IsDrawKnown ? load.Count : 1, plugs);
            var count = Number(most);
            choice.Loads.Add((load, count, most));
            all.Add(count, 1, most);
            this[Level.Margins].Add(count, margins!.Value, most);
            Model.Add(count <= most * used);
        }

        Model.Add(all.Expression() <= plugs * used);
        Model.Add(all.Expression() >= slot.Least * used);
        KeepAlone(choice, plugs);
        foreach (var limit in source.Limits)
            Keep(choice, limit);
        Share(choice, all, plugs);
        return choice;
    }

    /// <summary>A load whose draw nothing tells may take all that the outlet gives: it stays alone.</summary>
    private void KeepAlone(SlotChoice choice, int plugs)
    {
        if (plugs == 1)
            return;
        foreach (var (load, count, _) in choice.Loads.Where(one => !one.Load.IsDrawKnown))
        {
            var others = new Tally();
            foreach (var other in choice.Loads.Where(one => one.Load != load))
                others.Add(other.Count, 1, other.Most);
            Model.Add(others.Expression() <= plugs - (plugs * count));
        }
    }

    /// <summary>Running and starting sums within a limit; a finding where the running sum leaves less free than the headroom.</summary>
    private void Keep(SlotChoice choice, SourceLimit limit)
    {
        var run = new Tally();
        var start = new Tally();
        var slow = new Tally();
        foreach (var (load, count, most) in choice.Loads)
        {
            run.Add(count, limit.RunOf(load), most);
            start.Add(count, limit.StartOf(load), most);
            if (limit.Outlasts(load))
                slow.Add(count, 1, most);
        }

        var thin = Number(1);
        Model.Add(thin <= choice.Used);
        Model.Add(run.Expression() <= (limit.Usable * choice.Used) + ((limit.Most - limit.Usable) * thin));
        this[Level.Thin].Add(thin, 1, 1);
        if (slow.IsEmpty || limit.Peak == limit.Most)
        {
            Model.Add(start.Expression() <= limit.Peak * choice.Used);
            return;
        }

        var isSlow = Number(1);
        AtMost(slow, 0, slow.Most, isSlow);
        Model.Add(start.Expression() <= (limit.Peak * choice.Used) - ((limit.Peak - limit.Most) * isSlow));
        Model.Add(isSlow <= choice.Used);
    }

    private void Share(SlotChoice choice, Tally all, int plugs)
    {
        if (choice.Slot.Least >= 2)
        {
            this[Level.Sharing].Add(all);
            return;
        }

        if (plugs == 1)
            return;
        var several = Number(1);
        AtMost(all, 1, plugs, several);
        var sharing = Number(plugs);
        Model.Add(all.Expression() - plugs + (plugs * several) <= sharing);
        this[Level.Sharing].Add(sharing, 1, plugs);
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
                Model.Add(CountOn(last).Expression() >= CountOn(choices).Expression());
            }

            last = choices;
        }
    }

    private static Tally CountOn(IEnumerable<SlotChoice> choices)
    {
        var count = new Tally();
        foreach (var load in choices.SelectMany(choice => choice.Loads))
            count.Add(load.Count, 1, load.Most);
        return count;
    }

    private void FeedEachOnce()
    {
        foreach (var load in _problem.Loads)
        {
            var dark = Number(load.Count);
            Dark.Add(dark);
            var fed = new Tally();
            foreach (var single in Singles.Where(single => single.Load == load))
                fed.Add(single.Count, 1, load.Count);
            foreach (var slot in Slots)
            {
                foreach (var one in slot.Loads.Where(one => one.Load == load))
                    fed.Add(one.Count, 1, one.Most);
            }

            fed.Add(dark, 1, load.Count);
            Model.Add(fed.Expression() == load.Count);
            this[Level.Unfed].Add(dark, 1, load.Count);
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
            var used = new Tally();
            foreach (var single in Singles.Where(single => single.Source.Parts[0].Group == group))
                used.Add(single.Count, 1, group.Count);
            foreach (var slot in Slots)
                used.Add(slot.Used, slot.Source.CountOf(group), 1);
            AtMost(used, group.Count);
            used.Cap(group.Count);
            this[Level.Capacity].Add(used, group.Capacity);
        }
    }

    private void KeepTotals()
    {
        foreach (var total in _problem.Totals)
        {
            var run = new Tally();
            var start = new Tally();
            foreach (var single in Singles)
                Count(single.Source, single.Load, single.Count, single.Load.Count);
            foreach (var slot in Slots)
            {
                foreach (var (load, count, most) in slot.Loads)
                    Count(slot.Source, load, count, most);
            }

            void Count(Source source, LoadGroup load, IntVar count, long most)
            {
                var factor = total.FactorOf(source);
                run.Add(count, MicroUnits.Draw(load.Run * factor), most);
                start.Add(count, MicroUnits.Draw(load.Start * factor), most);
            }

            AtMost(run, total.Run);
            AtMost(start, total.Start);
            if (total.IsOver || run.Most <= total.Usable)
                continue;

            var thin = Number(1);
            AtMost(run, total.Usable, total.Run, thin);
            this[Level.Thin].Add(thin, 1, 1);
        }
    }

    /// <summary>What is known of the levels without solving keeps their weights small.</summary>
    private void CapLevels()
    {
        var loads = _problem.Loads.Sum(load => load.Count);
        this[Level.Margins].Cap(3 * loads);
        this[Level.Sharing].Cap(loads);
        this[Level.NoisyLoads].Cap(loads + _problem.PinnedOnReturn.Values.Sum(pinned => pinned.Length));
        this[Level.SpecialLeads].Cap(_problem.Outlets.Sum(group => group.Count));
        this[Level.Thin].Cap(_problem.Outlets.Sum(group => group.Count) + _problem.Totals.Length);
    }
}
