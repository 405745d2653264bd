using Google.OrTools.Sat;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Model;

/// <summary>Which loads share a return: what must not, and what hums.</summary>
internal sealed class ReturnModel(PlanProblem problem, WiringModel wiring)
{
    /// <summary>Adds every return on which loads may meet.</summary>
    public void Build()
    {
        foreach (var shared in problem.Outlets.Select(group => group.SharedReturn).OfType<string>().Distinct(StringComparer.Ordinal))
        {
            var on = wiring.Singles.Where(single => single.Source.SharedReturn == shared)
                .Select(single => (single.Load, single.Count, (long)Math.Min(single.Load.Count, single.Source.Parts[0].Group.Count)))
                .Concat(wiring.Slots.Where(slot => slot.Source.SharedReturn == shared).SelectMany(slot => slot.Loads));
            var outlets = problem.Outlets.Where(group => group.SharedReturn == shared).Sum(group => group.Count);
            Add([.. on], outlets + problem.Slots.Sum(slot => slot.Plugs - 1), problem.PinnedOnReturn.TryGetValue(shared, out var pinned) ? [.. pinned.Select(load => load.Rating)] : []);
        }

        // A lead on an outlet with a return of its own makes a return for its loads; it takes from one source at a time.
        foreach (var slot in wiring.Slots.Where(choice => choice.Source.SharedReturn is null).GroupBy(choice => choice.Slot))
        {
            if (slot.Key.Plugs > 1)
                Add([.. slot.SelectMany(choice => choice.Loads)], slot.Key.Plugs, []);
        }
    }

    /// <summary>Adds a return.</summary>
    /// <param name="on">The loads that may be on it.</param>
    /// <param name="places">How many there may be at the most; a tight figure makes for a quick proof.</param>
    /// <param name="pinned">The loads that are on it in any case.</param>
    private void Add(List<(LoadGroup Load, IntVar Count, long Most)> on, int places, List<LoadRating> pinned)
    {
        if (on.Count == 0)
            return;

        KeepGroundsApart(on, places, pinned);
        var all = Sum(on, places, _ => true, pinned.Count);
        var several = wiring.Number(1);
        wiring.AtMost(all, 1, Math.Max(1, all.Most), several);

        var noisy = wiring.Number(1);
        var digital = Sum(on, places, load => load.Rating.IsDigital == true, pinned.Count(load => load.IsDigital == true));
        var isolate = Sum(on, places, load => load.Rating.Load.Isolate, pinned.Count(load => load.Load.Isolate));
        var signal = Sum(on, places, load => load.IsInSignal, pinned.Count(load => problem.Pinned.Rig.Signal.Contains(load.Id)));
        var finds = AddFinding(digital, several, noisy) | AddFinding(isolate, several, noisy);
        if (signal.Most > 1)
        {
            var loop = wiring.Number(1);
            wiring.AtMost(signal, 1, signal.Most, loop);
            Report(loop, noisy);
            finds = true;
        }

        if (!finds)
            return;
        var loads = wiring.Number(all.Most);
        wiring.Model.Add(all.Expression() - all.Most + (all.Most * noisy) <= loads);
        wiring[Level.NoisyLoads].Add(loads, 1, all.Most);
    }

    /// <summary>A finding where several loads are on a return and one of them is of the kind that minds.</summary>
    private bool AddFinding(Tally minding, IntVar several, IntVar noisy)
    {
        if (minding.Most == 0)
            return false;

        var any = wiring.Number(1);
        wiring.AtMost(minding, 0, minding.Most, any);
        var finding = wiring.Number(1);
        wiring.Model.Add(several + any - 1 <= finding);
        Report(finding, noisy);
        return true;
    }

    private void Report(IntVar finding, IntVar noisy)
    {
        wiring.Model.Add(finding <= noisy);
        wiring[Level.Noise].Add(finding, 1, 1);
    }

    private void KeepGroundsApart(List<(LoadGroup Load, IntVar Count, long Most)> on, int places, List<LoadRating> pinned)
    {
        var positive = Sum(on, places, load => load.IsPositiveGround, 0);
        var negative = Sum(on, places, load => !load.IsPositiveGround, 0);
        var pinnedPositive = pinned.Any(load => load.Ground == GroundSide.Positive);
        var pinnedNegative = pinned.Any(load => load.Ground != GroundSide.Positive);
        if (pinnedPositive)
            wiring.AtMost(negative, 0);
        if (pinnedNegative)
            wiring.AtMost(positive, 0);
        if (pinned.Count > 0 || positive.IsEmpty || negative.IsEmpty)
            return;

        var side = wiring.Number(1);
        wiring.AtMost(positive, 0, positive.Most, side);
        wiring.AtMost(negative, negative.Most, 0, side);
    }

    private static Tally Sum(List<(LoadGroup Load, IntVar Count, long Most)> on, int places, Func<LoadGroup, bool> counts, int constant)
    {
        var sum = new Tally();
        sum.Add(constant);
        foreach (var (load, count, most) in on)
        {
            if (counts(load))
                sum.Add(count, 1, most);
        }

        var there = on.Select(one => one.Load).Where(counts).Distinct().Sum(load => load.Count);
        sum.Cap(constant + Math.Min(places, there));
        return sum;
    }
}
