using Google.OrTools.Sat;
using Loadmark.Core.Fits;
using Loadmark.Planning.Objective;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Model;

/// <summary>
/// Which loads meet on a return that several outlets share: what must not, and what hums. An instance serves once, for each or for several
/// that are alike.
/// </summary>
/// <remarks>
/// A return is in one of three states: one load that minds company is alone on it; there are loads that do not mind one
/// another; or it is noisy. What is on it is counted apart for the noisy state, so that a fraction of a state holds no more
/// than that fraction of its loads: that makes the relaxation tight.
/// </remarks>
internal sealed class ReturnModel
{
    private readonly WiringModel _wiring;
    private readonly PlanProblem _problem;
    private readonly List<OutletGroup> _outlets;
    private readonly List<LoadCount> _on;
    private readonly List<Volts> _volts;
    private readonly List<Occupant> _pinned;
    private readonly PinnedOnReturn _sharing;
    private readonly int _places;
    private readonly int _count;
    private readonly List<LoadCount> _noisy = [];

    private ReturnModel(PlanProblem problem, WiringModel wiring, string shared)
    {
        _wiring = wiring;
        _problem = problem;
        _outlets = [.. problem.Outlets.Where(group => group.SharedReturn == shared)];
        var singles = wiring.Singles.FindAll(single => single.Source.Group.SharedReturn == shared && !single.Load.IsInput);
        var slots = wiring.Slots.FindAll(slot => slot.Class.SharedReturn == shared);
        _on = [.. singles.Select(static single => single.OnReturn).Concat(slots.SelectMany(Heard))];
        _volts = [.. singles.Select(static single => single.Source.Volts)
            .Concat(slots.SelectMany(static slot => Heard(slot).Select(_ => slot.Class.Volts)))];
        _pinned = [.. problem.PinnedOccupants(shared)];
        _sharing = new PinnedOnReturn(
            _pinned.Count,
            _pinned.Exists(static load => load.IsDigital),
            _pinned.Exists(static load => load.Isolates));
        _count = problem.ReturnCounts.GetValueOrDefault(shared, 1);

        // Each lead takes an outlet, so there are no more of them on a return than outlets.
        var outlets = _outlets.Sum(static group => group.Count) / _count;
        _places = outlets + slots.GroupBy(static slot => slot.Slot)
            .SelectMany(
                static slot =>
                    Enumerable.Repeat(slot.Max(static choice => choice.Cases.Max(static inCase => inCase.Plugs)) - 1, slot.Key.Count))
            .OrderDescending().Take(outlets).Sum();
    }

    /// <summary>Adds every shared return.</summary>
    public static void Build(PlanProblem problem, WiringModel wiring)
    {
        foreach (var shared in problem.Outlets.Select(static group => group.SharedReturn).OfType<string>().Distinct(StringComparer.Ordinal))
            new ReturnModel(problem, wiring, shared).Build();
    }

    /// <summary>The loads on a lead that meet others on a return: not the inputs of supplies.</summary>
    private static IEnumerable<LoadCount> Heard(SlotChoice slot) => slot.Loads.Where(static load => !load.Load.IsInput);

    private void Build()
    {
        if (_on.Count == 0)
            return;

        KeepHarmless();
        if ((_sharing.MindsCompany || _on.Exists(static load => load.Load.MindsCompany)) && _places + _pinned.Count > 1)
            CountNoise();
    }

    private void CountNoise()
    {
        var noisy = _wiring.Whether(_count, IsNoisy);
        var quiet = _wiring.Whether(_count, values => !IsNoisy(values) && !IsAlone(values));
        var alone = _wiring.Whether(_count, values => !IsNoisy(values) && IsAlone(values));
        var model = _wiring.Model;
        model.Add(noisy + quiet + alone == _count);
        if (_pinned.Count > 0)
            model.Add(alone == 0);

        // Beside a pinned load that minds company nothing is quiet, unless there is nothing.
        var isBareQuiet = _sharing.MindsCompany;
        var aloneMinding = new List<LinearExpr>();
        foreach (var load in _on)
        {
            var each = Math.Min(load.Most, _places);
            var part = _count == 1
                ? _wiring.Variables.Following(load.Most, values => values[noisy.Index] * values[load.Count.Index])
                : _wiring.Variables.Decision(load.Most);
            _noisy.Add(load with { Count = part });
            model.Add(part <= each * noisy);
            model.Add(part <= load.Count);
            var rest = load.Count - part;
            if (load.Load.MindsCompany)
                aloneMinding.Add(rest);
            else
                model.Add(rest <= (isBareQuiet ? 0 : each) * quiet);
            _wiring[Level.NoisyLoads].Add(part, 1, load.Most);
        }

        _wiring[Level.NoisyLoads].Add(noisy, _pinned.Count, _count);
        if (aloneMinding.Count > 0)
            model.Add(LinearExpr.Sum(aloneMinding) <= alone);
        if (_sharing.MindsCompany && _pinned.Count > 1)
            model.Add(noisy == 1);

        var places = BoundedSum.Of(_noisy);
        model.Add(places.Expression() <= Math.Min(places.Most, _places) * noisy);
        LimitDraws(noisy);
        ReturnConstraints.CountFindings(_wiring, noisy, _count, _noisy, _places, _sharing);
    }

    /// <summary>
    /// What one return's outlets, and the totals they all count against, can give is all that can be on it: a fraction of a noisy return
    /// feeds no more than that fraction of it.
    /// </summary>
    private void LimitDraws(IntVar noisy)
    {
        foreach (var total in _problem.Totals.Where(total => _outlets.TrueForAll(total.Covers)))
        {
            Limit(volts => total.FactorAt(volts), static draw => draw.Run, total.Run / _count);
            Limit(volts => total.FactorAt(volts), static draw => draw.Start, total.Start / _count);
        }

        // What is rounded may come to a millionth more for each load and each outlet.
        if (_outlets.TrueForAll(static group => group.Capacity > 0))
            Limit(
                static _ => 1,
                static draw => draw.Run,
                (_outlets.Sum(static group => group.Capacity * group.Count) / _count) + (2 * _places));

        void Limit(Func<Volts, decimal> factorAt, Func<LoadDraw, decimal> which, long most)
        {
            var sum = new BoundedSum();
            foreach (var (load, volts) in _noisy.Zip(_volts))
                sum.Add(load.Count, MicroUnits.Draw(which(load.Load.DrawAt(volts)) * factorAt(volts)), load.Most);
            if (sum.Most > most)
                _wiring.Model.Add(sum.Expression() <= most * noisy);
        }
    }

    private bool IsNoisy(long[] values)
    {
        var loads = _on.Sum(load => values[load.Count.Index]) + _pinned.Count;
        return loads > 1 && (_sharing.MindsCompany || IsAnyMinding(values));
    }

    private bool IsAlone(long[] values) => _pinned.Count == 0 && IsAnyMinding(values);

    private bool IsAnyMinding(long[] values) => _on.Exists(load => load.Load.MindsCompany && values[load.Count.Index] > 0);

    private void KeepHarmless()
    {
        // What pinned feeds put there decides which loads may come to it at all.
        var there = default(ReturnOccupancy);
        foreach (var pinned in _pinned)
            there.Change(pinned, 1);
        _wiring.AtMost(BoundedSum.Of(_on.Where(load => !there.Suits(load.Occupant))), 0);
        ReturnConstraints.KeepHarmless(_wiring, _on, _count);
    }
}
