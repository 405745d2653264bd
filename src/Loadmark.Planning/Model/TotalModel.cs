using Google.OrTools.Sat;
using Loadmark.Planning.Objective;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Model;

/// <summary>
/// Keeps what supplies and banks can give in all. The loads on a lead are counted for a class of outlets that may be of
/// several supplies; what they draw is then a flow that goes to the one whose outlet is taken. An instance serves once.
/// </summary>
internal sealed class TotalModel(PlanProblem problem, WiringModel wiring)
{
    private readonly Dictionary<TotalLimit, (BoundedSum Run, BoundedSum Start)> _sums = problem.Totals.ToDictionary(
        static total => total, static _ => (new BoundedSum(), new BoundedSum()));

    /// <summary>Adds every total.</summary>
    public void Build()
    {
        foreach (var single in wiring.Singles)
        {
            var volts = single.Source.Volts;
            foreach (var total in problem.Totals.Where(total => total.Covers(single.Source.Group)))
            {
                var draw = single.Load.DrawAt(volts);
                var factor = total.FactorAt(volts);
                _sums[total].Run.Add(single.Count, MicroUnits.Draw(draw.Run * factor), single.Most);
                _sums[total].Start.Add(single.Count, MicroUnits.Draw(draw.Start * factor), single.Most);
            }
        }

        foreach (var slot in wiring.Slots)
        {
            foreach (var leg in slot.Legs)
            {
                Count(slot, leg, inWatts: false);
                Count(slot, leg, inWatts: true);
            }
        }

        foreach (var total in problem.Totals)
            Keep(total);
    }

    private void Keep(TotalLimit total)
    {
        var (run, start) = _sums[total];
        wiring.AtMost(run, total.Run);
        wiring.AtMost(start, total.Start);
        if (total.IsOver || run.Most <= total.Usable)
            return;

        var thin = wiring.Variables.Following(1, values => run.ValueIn(values) > total.Usable ? 1 : 0);
        wiring.AtMost(run, total.Usable, total.Run, thin);
        wiring[Level.Thin].Add(thin, 1, 1);
    }

    private void Count(SlotChoice slot, LegChoice leg, bool inWatts)
    {
        var places = Enumerable.Range(0, leg.Uses.Count).ToLookup(place => CellOf(leg.Leg.Parts[place].Group, inWatts));
        if (places.All(static cell => cell.Key.Length == 0))
            return;

        // Where no load takes more to start, what flows is the same.
        var run = Draws(static draw => draw.Run);
        var start = Draws(static draw => draw.Start);
        var isAlike = slot.Loads.All(load => load.Load.DrawAt(slot.Class.Volts) is var draw && draw.Run == draw.Start);
        if (places.Count == 1)
        {
            Add(places.First().Key, run, start);
            return;
        }

        var runs = Split(run, leg, slot.Slot.Count, places, inWatts);
        var starts = isAlike ? runs : Split(start, leg, slot.Slot.Count, places, inWatts);
        foreach (var cell in places)
            Add(cell.Key, runs[cell.Key], starts[cell.Key]);

        BoundedSum Draws(Func<LoadDraw, decimal> which)
        {
            var sum = new BoundedSum();
            foreach (var load in slot.Loads)
                sum.Add(
                    load.Count,
                    MicroUnits.Draw(which(load.Load.DrawAt(slot.Class.Volts)) * (inWatts ? leg.Leg.Volts.Value : 1)),
                    load.Most);
            return sum;
        }
    }

    private void Add(Cell cell, BoundedSum run, BoundedSum start)
    {
        foreach (var total in cell.Totals)
        {
            _sums[total].Run.Add(run);
            _sums[total].Start.Add(start);
        }
    }

    /// <summary>What the loads draw, split among cells: all of it goes to the cell whose outlet is taken.</summary>
    private Dictionary<Cell, BoundedSum> Split(BoundedSum draws, LegChoice leg, int slots, ILookup<Cell, int> places, bool inWatts)
    {
        var sum = new List<IntVar>();
        var flows = new Dictionary<Cell, BoundedSum>();
        foreach (var cell in places)
        {
            var uses = cell.Select(place => leg.Uses[place]).ToList();
            var most = Math.Min(draws.Most, cell.Max(place => MostOf(leg.Leg, place, inWatts)));
            var flow = slots == 1
                ? wiring.Variables.Following(most, values => uses.Exists(use => values[use.Index] > 0) ? draws.ValueIn(values) : 0)
                : wiring.Variables.Decision(Math.Min(draws.Most, most * slots));
            wiring.Model.Add(flow <= most * LinearExpr.Sum(uses));
            sum.Add(flow);
            flows.Add(cell.Key, new BoundedSum());
            flows[cell.Key].Add(flow, 1, Math.Min(draws.Most, most * slots));
        }

        wiring.Model.Add(LinearExpr.Sum(sum) == draws.Expression());
        return flows;
    }

    /// <summary>More than flows out of an outlet is no flow; in amps every load may have been rounded up by a millionth.</summary>
    private long MostOf(FeedLeg leg, int place, bool inWatts)
    {
        if (leg.Limits[place] is not { } limit)
            return long.MaxValue;
        return inWatts ? limit.Peak : (long)Math.Ceiling(limit.Peak / limit.Scale.Factor) + problem.Loads.Sum(static load => load.Count);
    }

    /// <summary>The totals an outlet counts against; the same for all outlets of a cell.</summary>
    private Cell CellOf(OutletGroup group, bool inWatts) =>
        new([.. problem.Totals.Where(total => total.InWatts == inWatts && total.Covers(group))]);
}
