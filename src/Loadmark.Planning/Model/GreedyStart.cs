using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Model;

/// <summary>
/// A first wiring for the search to start from, and the plan where the time ends before it: some leads for several loads
/// are filled with the smallest loads, then the largest loads first, each alone on the smallest outlet that bears it.
/// It is made with several numbers of such leads, and the best counts.
/// </summary>
internal sealed class GreedyStart(PlanProblem problem, WiringModel wiring)
{
    private readonly Dictionary<LoadGroup, List<SingleChoice>> _singles = wiring.Singles.GroupBy(static single => single.Load)
        .ToDictionary(static load => load.Key, static load => load.OrderBy(single => single.Source.IsThin(load.Key)).ThenBy(static single => single.Margins)
            .ThenBy(static single => single.Source.Group.SharedReturn is not null).ThenBy(static single => single.Lead is not null)
            .ThenBy(static single => single.Source.Group.Capacity).ToList());

    private readonly List<List<SlotChoice>> _slots = [.. wiring.Slots.GroupBy(static choice => choice.Slot)
        .OrderByDescending(static slot => slot.Key.Least).ThenByDescending(static slot => slot.Key.Plugs).Select(static slot => slot.ToList())];

    /// <summary>Makes the wiring.</summary>
    /// <returns>The variables' values by their indices.</returns>
    public long[] Make()
    {
        var chains = _slots.Count(static slot => slot[0].Slot.Least > 1);
        var lacking = problem.Loads.Sum(static load => load.Count) - problem.Outlets.Sum(static group => group.Count);
        var few = 0;
        for (var spare = 0; few < chains && spare < lacking; few++)
            spare += _slots[few][0].Slot.Plugs - 1;

        long[]? best = null;
        foreach (var count in new[] { 0, few, few + 1, few + 2, few + 4, chains }.Where(count => count <= chains).Distinct())
        {
            foreach (var thin in new[] { false, true })
            {
                var values = Make(count, thin);
                if (best is null || Compare(values, best) < 0)
                    best = values;
            }
        }

        return best!;
    }

    /// <summary>Compares two solutions by the levels, the first level that differs counting.</summary>
    public int Compare(long[] one, long[] other) => Enum.GetValues<Level>()
        .Select(level => wiring[level].ValueIn(one).CompareTo(wiring[level].ValueIn(other))).FirstOrDefault(static order => order != 0);

    private long[] Make(int chains, bool thin)
    {
        var draft = new Draft(problem, wiring);
        for (var place = 0; place < chains; place++)
            Fill(draft, _slots[place], thin);
        foreach (var load in problem.Loads.OrderByDescending(load => _singles.TryGetValue(load, out var choices) ? choices.Max(choice => load.DrawAt(choice.Source.Point.Volts).Run) : 0)
            .ThenBy(static load => load.Priority).ThenBy(static load => load.Index))
        {
            foreach (var choice in _singles.GetValueOrDefault(load, []))
            {
                while (draft.Dark[load.Index] > 0 && draft.Take(choice))
                {
                    // As many as it takes.
                }
            }
        }

        for (var place = chains; place < _slots.Count; place++)
        {
            if (Array.Exists(draft.Dark, static dark => dark > 0))
                Fill(draft, _slots[place], thin: true);
        }

        return draft.Values();
    }

    /// <summary>Puts as many loads as can be on a lead, on the smallest outlet that allows it.</summary>
    private static void Fill(Draft draft, List<SlotChoice> slot, bool thin)
    {
        (int Choice, int[] Places, List<LoadGroup> Loads, long Capacity, bool IsNoisy)? best = null;
        for (var index = 0; index < slot.Count; index++)
        {
            var choice = slot[index];
            foreach (var places in PlacesOf(choice).Where(places => draft.IsFree(choice, places)))
            {
                foreach (var crew in choice.Crews)
                {
                    var loads = Crowd(draft, choice, places, crew, thin);
                    var capacity = choice.Legs.Select((leg, place) => leg.Leg.Parts[places[place]].Group.Capacity).Sum();
                    var isNoisy = crew.Company is Company.Noisy or Company.OnSharedReturn;
                    if (loads.Count < (crew.Company == Company.Alone ? 1 : 2))
                        continue;
                    if (best is not { } held || loads.Count > held.Loads.Count
                        || (loads.Count == held.Loads.Count && (isNoisy, capacity).CompareTo((held.IsNoisy, held.Capacity)) < 0))
                        best = (index, places, loads, capacity, isNoisy);
                }
            }
        }

        if (best is { } found)
            draft.Take(slot[found.Choice], found.Choice, found.Places, found.Loads);
    }

    private static IEnumerable<int[]> PlacesOf(SlotChoice choice)
    {
        // Of many outlets the first suffice for a start.
        const int most = 24;
        var first = Math.Min(most, choice.Legs[0].Uses.Count);
        if (choice.Legs.Count == 1)
            return Enumerable.Range(0, first).Select(static place => new[] { place });
        var second = Math.Min(most, choice.Legs[1].Uses.Count);
        return Enumerable.Range(0, first).SelectMany(one => Enumerable.Range(0, second)
            .Where(other => !choice.Class.LegsAreAlike || one <= other).Select(other => new[] { one, other }));
    }

    /// <summary>The smallest loads that are not fed yet, as many as the outlet bears; those that mind company last.</summary>
    private static List<LoadGroup> Crowd(Draft draft, SlotChoice choice, int[] places, Crew crew, bool thin)
    {
        var fed = choice.Class.Point.Volts;
        var loads = new List<LoadGroup>();
        var sums = new (long Run, long Start, long After)[places.Length];
        var signal = 0;
        bool? positive = null;
        foreach (var load in crew.Loads.Select(static count => count.Load).Where(load => draft.Dark[load.Index] > 0)
            .OrderBy(static load => load.MindsCompany).ThenBy(load => load.DrawAt(fed).Start))
        {
            for (var left = draft.Dark[load.Index]; left > 0 && loads.Count < crew.Plugs; left--)
            {
                if ((positive is { } side && side != load.IsPositiveGround)
                    || (crew.Company == Company.Quiet && load.IsInSignal && signal > 0) || !Bears(load))
                    break;
                positive = load.IsPositiveGround;
                signal += load.IsInSignal ? 1 : 0;
                loads.Add(load);
            }
        }

        return loads;

        bool Bears(LoadGroup load)
        {
            var after = new (long Run, long Start, long After)[places.Length];
            for (var leg = 0; leg < places.Length; leg++)
            {
                if (choice.Legs[leg].Leg.Limits[places[leg]] is not { } limit)
                    continue;
                var scale = limit.Scale;
                after[leg] = (sums[leg].Run + scale.RunOf(load, fed), sums[leg].Start + scale.StartOf(load, fed), sums[leg].After + scale.AfterSurgeOf(load, fed));
                if (after[leg].Run > (thin ? limit.Most : limit.Usable) || after[leg].Start > limit.Peak || after[leg].After > limit.Most)
                    return false;
            }

            sums = after;
            return true;
        }
    }
}
