using Google.OrTools.Sat;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Model;

/// <summary>Which loads meet on a return that several outlets share: what must not, and what hums.</summary>
internal sealed class ReturnModel(PlanProblem problem, WiringModel wiring)
{
    /// <summary>Adds every shared return.</summary>
    public void Build()
    {
        foreach (var shared in problem.Outlets.Select(static group => group.SharedReturn).OfType<string>().Distinct(StringComparer.Ordinal))
        {
            var on = wiring.Singles.Where(single => single.Source.Group.SharedReturn == shared)
                .Select(static single => new LoadCount(single.Load, single.Count, single.Most))
                .Concat(wiring.Slots.Where(slot => slot.Class.SharedReturn == shared).SelectMany(static slot => slot.Loads)).ToList();
            var plugs = wiring.Slots.Where(slot => slot.Class.SharedReturn == shared).GroupBy(static slot => slot.Slot)
                .Sum(static slot => slot.Max(static choice => choice.Crews.Max(static crew => crew.Plugs)) - 1);
            var outlets = problem.Outlets.Where(group => group.SharedReturn == shared).Sum(static group => group.Count);
            Add(on, outlets + plugs, problem.PinnedOnReturn.TryGetValue(shared, out var pinned) ? [.. pinned.Select(static load => load.Rating)] : []);
        }
    }

    /// <summary>Adds a return.</summary>
    /// <param name="on">The loads that may be on it.</param>
    /// <param name="places">How many there may be at the most; a tight figure makes for a quick proof.</param>
    /// <param name="pinned">The loads that are on it in any case.</param>
    private void Add(List<LoadCount> on, int places, List<LoadRating> pinned)
    {
        if (on.Count == 0)
            return;

        KeepGroundsApart(on, places, pinned);
        var all = Sum(on, places, static _ => true, pinned.Count);
        if (all.Most < 2)
            return;
        var several = wiring.IsOver(all, 1);
        var findings = new List<IntVar>();
        AddFinding(on.FindAll(static load => load.Load.Rating.IsDigital == true), pinned.Exists(static load => load.IsDigital == true));
        AddFinding(on.FindAll(static load => load.Load.Rating.Load.Isolate), pinned.Exists(static load => load.Load.Isolate));
        var signal = Sum(on, places, static load => load.IsInSignal, pinned.Count(load => problem.Pinned.Rig.Signal.Contains(load.Id)));
        if (signal.Most > 1)
            findings.Add(wiring.IsOver(signal, 1));
        if (findings.Count == 0)
            return;

        var noisy = wiring.Variables.Following(1, values => findings.Exists(finding => values[finding.Index] > 0) ? 1 : 0);
        foreach (var finding in findings)
        {
            wiring.Model.Add(finding <= noisy);
            wiring[Level.Noise].Add(finding, 1, 1);
        }

        var loads = wiring.Variables.Following(all.Most, values => values[noisy.Index] * all.ValueIn(values));
        wiring.Model.Add(all.Expression() - all.Most + (all.Most * noisy) <= loads);
        wiring[Level.NoisyLoads].Add(loads, 1, all.Most);

        // Where several loads are on the return and one of them is of the kind that minds.
        void AddFinding(List<LoadCount> minding, bool isPinned)
        {
            if (isPinned)
            {
                findings.Add(several);
                return;
            }

            if (minding.Count == 0)
                return;
            var any = wiring.Variables.Following(1, values => minding.Exists(load => values[load.Count.Index] > 0) ? 1 : 0);
            foreach (var load in minding)
                wiring.Model.Add(load.Count <= load.Most * any);
            var finding = wiring.Variables.Following(1, values => values[several.Index] * values[any.Index]);
            wiring.Model.Add(several + any - 1 <= finding);
            findings.Add(finding);
        }
    }

    private void KeepGroundsApart(List<LoadCount> on, int places, List<LoadRating> pinned)
    {
        var positive = Sum(on, places, static load => load.IsPositiveGround, 0);
        var negative = Sum(on, places, static load => !load.IsPositiveGround, 0);
        var pinnedPositive = pinned.Exists(static load => load.Ground == GroundSide.Positive);
        var pinnedNegative = pinned.Exists(static load => load.Ground != GroundSide.Positive);
        if (pinnedPositive)
            wiring.AtMost(negative, 0);
        if (pinnedNegative)
            wiring.AtMost(positive, 0);
        if (pinned.Count > 0 || positive.IsEmpty || negative.IsEmpty)
            return;

        var side = wiring.IsOver(positive, 0);
        wiring.AtMost(negative, negative.Most, 0, side);
    }

    private static Tally Sum(List<LoadCount> on, int places, Func<LoadGroup, bool> counts, int constant)
    {
        var sum = new Tally();
        sum.Add(constant);
        foreach (var (load, count, most) in on)
        {
            if (counts(load))
                sum.Add(count, 1, most);
        }

        var there = on.Select(static one => one.Load).Where(counts).Distinct().Sum(static load => load.Count);
        sum.Cap(constant + Math.Min(places, there));
        return sum;
    }
}
