using Google.OrTools.Sat;
using Loadmark.Core.Gear;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Model;

/// <summary>
/// A first wiring for the search to start from, and the plan where the time ends before it: the largest loads first, each
/// alone on the smallest outlet that bears it with its headroom. It keeps every limit; grounds it keeps apart by leaving
/// loads with positive ground off shared returns.
/// </summary>
internal sealed class GreedyStart
{
    private readonly WiringModel _wiring;
    private readonly Dictionary<int, long> _values = [];

    /// <summary>Makes the wiring.</summary>
    public GreedyStart(PlanProblem problem, WiringModel wiring)
    {
        _wiring = wiring;
        var counts = wiring.Singles.ToDictionary(single => single, _ => 0L);
        var free = problem.Outlets.ToDictionary(group => group, group => group.Count);
        var totals = problem.Totals.ToDictionary(total => total, total => (total.Run, total.Start));
        var reversing = problem.Reversing.Length;
        var dark = problem.Loads.Select(load => (long)load.Count).ToArray();
        var byLoad = wiring.Singles.ToLookup(single => single.Load);
        foreach (var load in problem.Loads.OrderByDescending(load => load.Run).ThenBy(load => load.Index))
        {
            var choices = byLoad[load].OrderBy(single => single.Source.Limits.Any(limit => limit.IsThin(load)))
                .ThenBy(single => single.Reverses).ThenBy(single => single.Source.SharedReturn is not null)
                .ThenBy(single => single.Source.Parts[0].Group.Capacity);
            foreach (var choice in choices.Where(choice => KeepsGrounds(choice, problem)))
            {
                var group = choice.Source.Parts[0].Group;
                while (dark[load.Index] > 0 && free[group] > 0 && (!choice.Reverses || reversing > 0) && Take(choice, totals))
                {
                    counts[choice]++;
                    free[group]--;
                    dark[load.Index]--;
                    reversing -= choice.Reverses ? 1 : 0;
                }
            }
        }

        foreach (var (single, count) in counts)
            _values[single.Count.Index] = count;
        for (var load = 0; load < dark.Length; load++)
            _values[wiring.Dark[load].Index] = dark[load];
    }

    /// <summary>A variable's value in this wiring, of those that say what feeds what.</summary>
    public long ValueOf(IntVar variable) => _values.GetValueOrDefault(variable.Index);

    /// <summary>Hands the wiring to the solver.</summary>
    public void Hint()
    {
        foreach (var variable in _wiring.Singles.Select(single => single.Count).Concat(_wiring.Dark))
            _wiring.Model.AddHint(variable, ValueOf(variable));
        foreach (var slot in _wiring.Slots)
        {
            _wiring.Model.AddHint(slot.Used, 0);
            foreach (var (_, count, _) in slot.Loads)
                _wiring.Model.AddHint(count, 0);
        }
    }

    private static bool KeepsGrounds(SingleChoice choice, PlanProblem problem) =>
        choice.Source.SharedReturn is not { } shared
        || (!choice.Load.IsPositiveGround
            && !(problem.PinnedOnReturn.TryGetValue(shared, out var pinned) && pinned.Any(load => load.Rating.Ground == GroundSide.Positive)));

    private static bool Take(SingleChoice choice, Dictionary<TotalLimit, (long Run, long Start)> totals)
    {
        var takes = totals.Keys.Select(total => (Total: total, Factor: total.FactorOf(choice.Source))).Where(pair => pair.Factor > 0)
            .Select(pair => (pair.Total, Run: MicroUnits.Draw(choice.Load.Run * pair.Factor), Start: MicroUnits.Draw(choice.Load.Start * pair.Factor))).ToList();
        if (takes.Exists(take => take.Run > totals[take.Total].Run || take.Start > totals[take.Total].Start))
            return false;
        foreach (var (total, run, start) in takes)
            totals[total] = (totals[total].Run - run, totals[total].Start - start);
        return true;
    }
}
