using Google.OrTools.Sat;
using Loadmark.Core.Fits;
using Loadmark.Core.Gear;

namespace Loadmark.Planning.Tests.Oracle.Naive;

/// <summary>The loads that may meet on one return, with what the rules on noise and grounds say of them.</summary>
internal sealed class NaiveReturns(CpModel model)
{
    /// <summary>The findings of noise.</summary>
    public NaiveSum Findings { get; } = new();

    /// <summary>The loads on returns with such a finding.</summary>
    public NaiveSum NoisyLoads { get; } = new();

    /// <summary>Adds a return.</summary>
    /// <param name="on">The loads that may be on it, each with the choice that puts it there; a load may come several times.</param>
    /// <param name="loads">How many there can be.</param>
    public void Add(List<(Occupant Load, IntVar On)> on, int loads)
    {
        Sides(on, loads);
        var all = Sum(on, _ => true);
        var several = model.NewBoolVar("");
        model.Add(all.Expression <= 1 + (loads * several));
        var noisy = model.NewBoolVar("");
        Find(on.Where(one => one.Load.IsDigital), several, noisy);
        Find(on.Where(one => one.Load.Isolates), several, noisy);

        var count = model.NewIntVar(0, loads, "");
        model.Add(all.Expression <= count + loads - (loads * noisy));
        NoisyLoads.Add(count);
    }

    private void Find(IEnumerable<(Occupant Load, IntVar On)> minding, BoolVar several, BoolVar noisy)
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

    private void Sides(List<(Occupant Load, IntVar On)> on, int loads)
    {
        var windings = Sum(on, static load => load.IsOnWinding);
        if (!windings.IsEmpty)
        {
            model.Add(windings.Expression <= 1);
            foreach (var (_, choice) in on.Where(static one => one.Load.MeetsWindings))
                model.Add(windings.Expression + choice <= 1);
        }

        // Of those whose ground is not known one, and then no other.
        var sides = new List<BoolVar>();
        Func<Occupant, bool>[] grounds =
        [
            static load => !load.IsOnWinding && load.Ground == GroundSide.Positive,
            static load => !load.IsOnWinding && load.Ground == GroundSide.Negative,
            static load => !load.IsOnWinding && load.Ground is null,
        ];
        foreach (var (side, most) in grounds.Zip([loads, loads, 1]))
        {
            var there = Sum(on, side);
            if (there.IsEmpty)
                continue;
            sides.Add(model.NewBoolVar(""));
            model.Add(there.Expression <= most * sides[^1]);
        }

        if (sides.Count > 0)
            model.Add(LinearExpr.Sum(sides) <= 1);
    }

    private static NaiveSum Sum(List<(Occupant Load, IntVar On)> on, Func<Occupant, bool> counts)
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
