using Google.OrTools.Sat;
using Loadmark.Core.Fits;
using Loadmark.Planning.Objective;

namespace Loadmark.Planning.Model;

/// <summary>
/// What follows where loads meet on one return, be it that of a lead or one that outlets share: as <see cref="ReturnOccupancy"/> has it.
/// </summary>
internal static class ReturnConstraints
{
    /// <summary>
    /// Keeps apart what must not meet: loads whose ground is positive and loads whose ground is negative; one whose ground is not known and
    /// any other; two that take alternating current from one winding, and one that does and any that takes direct current from that return.
    /// </summary>
    /// <param name="wiring">The model.</param>
    /// <param name="loads">The loads that may be there.</param>
    /// <param name="count">How many returns that are alike it stands for: of several nobody can tell which load is on which.</param>
    public static void KeepHarmless(WiringModel wiring, List<LoadCount> loads, int count)
    {
        var windings = BoundedSum.Of(loads.Where(static load => load.Occupant.IsOnWinding));
        wiring.AtMost(windings, count);
        if (!windings.IsEmpty)
        {
            foreach (var load in loads.Where(static load => load.Occupant.MeetsWindings))
                wiring.Model.Add(load.Count + (load.Most * windings.Expression()) <= load.Most * count);
        }

        var direct = loads.FindAll(static load => !load.Occupant.IsOnWinding);
        var sides = direct.GroupBy(static load => load.Occupant.Ground).ToList();
        wiring.AtMost(BoundedSum.Of(direct.Where(static load => load.Occupant.Ground is null)), count);
        if (count > 1 || sides.Count < 2)
            return;

        var sum = new List<IntVar>();
        foreach (var side in sides)
        {
            var own = side.ToList();
            var isOn = wiring.Variables.Following(1, values => own.Exists(load => values[load.Count.Index] > 0) ? 1 : 0);
            foreach (var load in own)
                wiring.Model.Add(load.Count <= (side.Key is null ? 1 : load.Most) * isOn);
            sum.Add(isOn);
        }

        wiring.Model.Add(LinearExpr.Sum(sum) <= 1);
    }

    /// <summary>Counts what the rules would say of a noisy return: at least one thing, else it were not noisy.</summary>
    /// <param name="wiring">The model.</param>
    /// <param name="noisy">Whether it is noisy, or how many of them are.</param>
    /// <param name="count">How many returns that are alike it stands for.</param>
    /// <param name="loads">The loads that are on it then.</param>
    /// <param name="places">How many of them there may be on one.</param>
    /// <param name="pinned">What is on it in any case.</param>
    public static void CountFindings(WiringModel wiring, IntVar noisy, int count, List<LoadCount> loads, int places, PinnedOnReturn pinned)
    {
        var findings = new List<IntVar>();
        AddAny(static load => load.IsDigital, pinned.HasDigital);
        AddAny(static load => load.Isolates, pinned.HasIsolate);
        foreach (var finding in findings)
            wiring[Level.Noise].Add(finding, 1, count);
        if (!findings.Contains(noisy))
            wiring.Model.Add(LinearExpr.Sum(findings) >= noisy);

        void AddAny(Func<Occupant, bool> minds, bool isPinned)
        {
            var minding = loads.FindAll(load => minds(load.Occupant));
            if (minding.Count == 0 && !isPinned)
                return;
            if (isPinned || (pinned.Count == 0 && minding.Count == loads.Count))
            {
                findings.Add(noisy);
                return;
            }

            var any = wiring.Whether(count, values => minding.Exists(load => values[load.Count.Index] > 0));
            foreach (var load in minding)
                wiring.Model.Add(load.Count <= Math.Min(load.Most, places) * any);
            wiring.Model.Add(any <= noisy);
            findings.Add(any);
        }
    }
}
