using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Model;

/// <summary>
/// A first wiring for the search to start from: the largest loads first, each alone on the smallest outlet that bears it
/// with its headroom. Only a hint: whatever it gets wrong, the model puts right.
/// </summary>
internal sealed class GreedyStart(PlanProblem problem)
{
    /// <summary>Hands the wiring to the solver.</summary>
    public void Hint(WiringModel wiring)
    {
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
            foreach (var choice in choices)
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
            wiring.Model.AddHint(single.Count, count);
        for (var load = 0; load < dark.Length; load++)
            wiring.Model.AddHint(wiring.Dark[load], dark[load]);
        foreach (var slot in wiring.Slots)
        {
            wiring.Model.AddHint(slot.Used, 0);
            foreach (var (_, count, _) in slot.Loads)
                wiring.Model.AddHint(count, 0);
        }
    }

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
