using Loadmark.Core.Gear;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Model;

/// <summary>A wiring that is being made feed by feed; it takes no feed that breaks a limit.</summary>
internal sealed class Draft
{
    private readonly PlanProblem _problem;
    private readonly WiringModel _wiring;
    private readonly Dictionary<TotalLimit, (long Run, long Start)> _totals;
    private readonly int[] _free;
    private readonly int[] _leads;
    private readonly Dictionary<string, bool> _positive = new(StringComparer.Ordinal);
    private readonly Dictionary<SingleChoice, long> _singles = [];
    private readonly Dictionary<int, List<SlotFill>> _fills = [];

    /// <summary>Begins with nothing planned.</summary>
    public Draft(PlanProblem problem, WiringModel wiring)
    {
        _problem = problem;
        _wiring = wiring;
        _totals = problem.Totals.ToDictionary(static total => total, static total => (total.Run, total.Start));
        _free = [.. problem.Outlets.Select(static group => group.Count)];
        _leads = [.. problem.SingleLeads.Select(static lead => lead.Ids.Length)];
        Dark = [.. problem.Loads.Select(static load => load.Count)];
        foreach (var (shared, loads) in problem.PinnedOnReturn)
        {
            if (loads.Length > 0)
                _positive[shared] = loads[0].Rating.Ground == GroundSide.Positive;
        }
    }

    /// <summary>For each group of loads how many are not fed yet.</summary>
    public int[] Dark { get; }

    /// <summary>Feeds one load alone, if nothing forbids it.</summary>
    public bool Take(SingleChoice choice)
    {
        var group = choice.Source.Group;
        if (Dark[choice.Load.Index] == 0 || _free[group.Index] == 0 || (choice.Lead is { } lead && _leads[lead.Index] == 0)
            || !SuitsReturn(group.SharedReturn, [choice.Load]) || !TakeTotals([choice.Source.Part], choice.Source.Point.Volts, [choice.Load]))
            return false;

        _free[group.Index]--;
        Dark[choice.Load.Index]--;
        if (choice.Lead is { } used)
            _leads[used.Index]--;
        _singles[choice] = _singles.GetValueOrDefault(choice) + 1;
        NoteReturn(group.SharedReturn, choice.Load);
        return true;
    }

    /// <summary>Whether the outlets of a choice are free.</summary>
    public bool IsFree(SlotChoice choice, int[] places)
    {
        for (var leg = 0; leg < places.Length; leg++)
        {
            var group = choice.Legs[leg].Leg.Parts[places[leg]].Group;
            var needed = choice.Class.OutletsALeg;
            for (var other = 0; other < leg; other++)
                needed += choice.Legs[other].Leg.Parts[places[other]].Group == group ? 1 : 0;
            if (_free[group.Index] < needed)
                return false;
        }

        return true;
    }

    /// <summary>Puts loads on a lead, if nothing forbids it.</summary>
    /// <param name="choice">What the lead takes from.</param>
    /// <param name="index">The place of the choice among those of its slot.</param>
    /// <param name="places">For each leg the place of its outlet.</param>
    /// <param name="loads">The loads, each group once for each load.</param>
    public bool Take(SlotChoice choice, int index, int[] places, List<LoadGroup> loads)
    {
        var crew = choice.Crews.FindIndex(crew => Admits(crew, loads));
        if (crew < 0 || !IsFree(choice, places) || !SuitsReturn(choice.Class.SharedReturn, loads))
            return false;

        var share = choice.Class.OutletsALeg;
        var parts = choice.Legs.Select((leg, place) => leg.Leg.Parts[places[place]]).ToList();
        if (!TakeTotals(parts, choice.Class.Point.Volts, loads))
            return false;

        foreach (var part in parts)
            _free[part.Group.Index] -= share;
        foreach (var load in loads)
            Dark[load.Index]--;
        NoteReturn(choice.Class.SharedReturn, loads[0]);
        if (!_fills.TryGetValue(choice.Slot.Kind, out var fills))
            _fills.Add(choice.Slot.Kind, fills = []);
        fills.Add(new SlotFill(index, places, crew, loads));
        return true;
    }

    /// <summary>The wiring as a solution of the model.</summary>
    public long[] Values()
    {
        var values = new long[_wiring.Variables.Count];
        foreach (var (single, count) in _singles)
            values[single.Count.Index] = count;
        foreach (var kind in _wiring.Slots.GroupBy(static choice => choice.Slot).GroupBy(static slot => slot.Key.Kind))
        {
            if (!_fills.TryGetValue(kind.Key, out var fills))
                continue;
            foreach (var (slot, fill) in kind.Zip(fills.OrderByDescending(static fill => fill.Loads.Count)))
                Write(slot.ElementAt(fill.Choice), fill, values);
        }

        _wiring.Variables.Complete(values);
        return values;
    }

    private static void Write(SlotChoice choice, SlotFill fill, long[] values)
    {
        foreach (var load in fill.Loads)
            values[choice.Crews[fill.Crew].Loads.Find(count => count.Load == load).Count.Index]++;
        for (var leg = 0; leg < fill.Places.Length; leg++)
            values[choice.Legs[leg].Uses[fill.Places[leg]].Index] = 1;
    }

    private static bool Admits(Crew crew, List<LoadGroup> loads)
    {
        if (loads.Count > crew.Plugs || (crew.Company == Company.Alone) != (loads.Count == 1))
            return false;
        foreach (var same in loads.CountBy(static load => load))
        {
            var place = crew.Loads.FindIndex(count => count.Load == same.Key);
            if (place < 0 || same.Value > crew.Loads[place].Most)
                return false;
        }

        return (crew.Company != Company.Quiet || loads.Count(static load => load.IsInSignal) <= 1)
            && loads.TrueForAll(load => load.IsPositiveGround == loads[0].IsPositiveGround);
    }

    private bool SuitsReturn(string? shared, List<LoadGroup> loads) => shared is null
        || !_positive.TryGetValue(shared, out var positive) || loads.TrueForAll(load => load.IsPositiveGround == positive);

    private void NoteReturn(string? shared, LoadGroup load)
    {
        if (shared is not null)
            _positive[shared] = load.IsPositiveGround;
    }

    private bool TakeTotals(List<SourcePart> parts, Volts fed, List<LoadGroup> loads)
    {
        var takes = new Dictionary<TotalLimit, (long Run, long Start)>();
        foreach (var part in parts)
        {
            foreach (var total in _problem.Totals.Where(total => total.Covers(part.Group)))
            {
                var factor = total.FactorAt(part.Setting.Volts);
                var (run, start) = takes.TryGetValue(total, out var before) ? before : _totals[total];
                foreach (var load in loads)
                {
                    var draw = load.DrawAt(fed);
                    run -= MicroUnits.Draw(draw.Run * factor);
                    start -= MicroUnits.Draw(draw.Start * factor);
                }

                if (run < 0 || start < 0)
                    return false;
                takes[total] = (run, start);
            }
        }

        foreach (var (total, left) in takes)
            _totals[total] = left;
        return true;
    }
}
