using Google.OrTools.Sat;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;

namespace Loadmark.Planning.Tests.Oracle.Naive;

/// <summary>The loads that may meet on one return, with what the rules on noise and grounds say of them.</summary>
internal sealed class NaiveReturns(CpModel model, HashSet<string> signal)
{
    /// <summary>The findings of noise.</summary>
    public NaiveSum Findings { get; } = new();

    /// <summary>The loads on returns with such a finding.</summary>
    public NaiveSum NoisyLoads { get; } = new();

    /// <summary>Adds a return.</summary>
    /// <param name="on">The loads that may be on it, each with the choice that puts it there; a load may come several times.</param>
    /// <param name="loads">How many there can be.</param>
    public void Add(List<(WiredLoad Load, IntVar On)> on, int loads)
    {
        Sides(on, loads);
        var all = Sum(on, _ => true);
        var several = model.NewBoolVar("");
        model.Add(all.Expression <= 1 + (loads * several));
        var noisy = model.NewBoolVar("");
        Find(on.Where(one => one.Load.Rating.IsDigital == true), several, noisy);
        Find(on.Where(one => one.Load.Rating.Load.Isolate), several, noisy);

        var path = Sum(on, load => signal.Contains(load.Id));
        if (path.Count > 1)
        {
            var loop = model.NewBoolVar("");
            model.Add(path.Expression <= 1 + (loads * loop));
            model.Add(noisy >= loop);
            Findings.Add(loop);
        }

        var count = model.NewIntVar(0, loads, "");
        model.Add(all.Expression <= count + loads - (loads * noisy));
        NoisyLoads.Add(count);
    }

    private void Find(IEnumerable<(WiredLoad Load, IntVar On)> minding, BoolVar several, BoolVar noisy)
    {
        var choices = minding.ToList();
        if (choices.Count == 0)
            return;
        var finding = model.NewBoolVar("");
        foreach (var (_, choice) in choices)
            model.Add(choice + several <= 1 + finding);
        model.Add(noisy >= finding);
        Findings.Add(finding);
    }

    private void Sides(List<(WiredLoad Load, IntVar On)> on, int loads)
    {
        var positive = Sum(on, load => load.Rating.Ground == GroundSide.Positive);
        var negative = Sum(on, load => load.Rating.Ground != GroundSide.Positive);
        if (positive.IsEmpty || negative.IsEmpty)
            return;
        var side = model.NewBoolVar("");
        model.Add(positive.Expression <= loads * side);
        model.Add(negative.Expression <= loads - (loads * side));
    }

    private static NaiveSum Sum(List<(WiredLoad Load, IntVar On)> on, Func<WiredLoad, bool> counts)
    {
        var sum = new NaiveSum();
        foreach (var (load, choice) in on)
        {
            if (counts(load))
                sum.Add(choice);
        }

        return sum;
    }
}
