using Google.OrTools.Sat;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Model;

/// <summary>What follows where loads meet on one return, be it that of a lead or one that outlets share.</summary>
internal static class Meeting
{
    /// <summary>Keeps loads with positive ground from meeting those with negative.</summary>
    /// <param name="wiring">The model.</param>
    /// <param name="loads">The loads that may be there.</param>
    public static void KeepGroundsApart(WiringModel wiring, List<LoadCount> loads)
    {
        var positive = loads.FindAll(static load => load.Load.IsPositiveGround);
        if (positive.Count == 0 || positive.Count == loads.Count)
            return;

        var side = wiring.Variables.Following(1, values => positive.Exists(load => values[load.Count.Index] > 0) ? 1 : 0);
        foreach (var load in loads)
            wiring.Model.Add(load.Load.IsPositiveGround ? load.Count <= load.Most * side : load.Count <= load.Most - (load.Most * side));
    }

    /// <summary>Counts what the rules would say of a noisy return: at least one thing, else it were not noisy.</summary>
    /// <param name="wiring">The model.</param>
    /// <param name="noisy">Whether it is noisy, or how many of them are.</param>
    /// <param name="count">How many returns that are alike it stands for.</param>
    /// <param name="loads">The loads that are on it then.</param>
    /// <param name="places">How many of them there may be on one.</param>
    /// <param name="pinned">What is on it in any case.</param>
    public static void CountFindings(WiringModel wiring, IntVar noisy, int count, List<LoadCount> loads, int places, PinnedCompany pinned)
    {
        var findings = new List<IntVar>();
        AddAny(static load => load.Rating.IsDigital == true, pinned.HasDigital);
        AddAny(static load => load.Rating.Load.Isolate, pinned.HasIsolate);
        AddLoop();
        foreach (var finding in findings)
            wiring[Level.Noise].Add(finding, 1, count);
        if (!findings.Contains(noisy))
            wiring.Model.Add(LinearExpr.Sum(findings) >= noisy);

        void AddAny(Func<LoadGroup, bool> minds, bool isPinned)
        {
            var minding = loads.FindAll(load => minds(load.Load));
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

        // Two loads of the signal path make a loop.
        void AddLoop()
        {
            var signal = Tally.Of(loads.Where(static load => load.Load.IsInSignal));
            var quiet = 1 - pinned.InSignal;
            if (quiet < 0 || (pinned.Count == 0 && loads.TrueForAll(static load => load.Load.IsInSignal)))
            {
                findings.Add(noisy);
            }
            else if (signal.Most > quiet)
            {
                var loop = wiring.Whether(count, values => signal.ValueIn(values) > quiet);
                wiring.Model.Add(signal.Expression() <= (quiet * noisy) + (Math.Max(0, Math.Min(places, signal.Most) - quiet) * loop));
                wiring.Model.Add(loop <= noisy);
                findings.Add(loop);
            }
        }
    }
}
