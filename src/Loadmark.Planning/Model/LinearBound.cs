using Google.OrTools.LinearSolver;
using Google.OrTools.Sat;

namespace Loadmark.Planning.Model;

/// <summary>
/// Bounds from below what a sum can come to, by the relaxation that lets variables be fractions: far quicker than a search,
/// and often all the proof that is needed.
/// </summary>
/// <remarks>
/// The bound is not read from the solver, which rounds, but computed from its dual values: by weak duality any dual values
/// give a bound, good ones a good bound (Neumaier and Shcherbina, "Safe bounds in linear and mixed-integer programming",
/// Mathematical Programming 99, 2004). What rounding there is in computing it, the margin covers.
/// </remarks>
internal sealed class LinearBound(WiringModel wiring)
{
    /// <summary>A double holds 53 bits; sums of a few thousand products lose less than this share of what they add up.</summary>
    private const double Rounding = 1e-12;

    /// <summary>The solution of the last relaxation where it happened to be whole and to keep every demand; else null.</summary>
    public long[]? Whole { get; private set; }

    /// <summary>A bound on a sum from below, rounded up to what the sum can be.</summary>
    /// <param name="sum">The sum.</param>
    /// <param name="limit">How long to try; after it the bound is a poor one.</param>
    public long Of(Tally sum, TimeSpan limit)
    {
        Whole = null;
        using var solver = Solver.CreateSolver("GLOP");
        solver.SetTimeLimit(Math.Max(1, (long)limit.TotalMilliseconds));
        var least = Math.Max(sum.Constant, Bound(solver, sum) ?? 0);
        var step = sum.Step;
        return sum.Constant + ((long)Math.Ceiling((least - sum.Constant) / step) * step);
    }

    private double? Bound(Solver solver, Tally sum)
    {
        var model = wiring.Model.Model;
        var variables = new Variable[model.Variables.Count];
        for (var place = 0; place < variables.Length; place++)
            variables[place] = solver.MakeNumVar(model.Variables[place].Domain[0], model.Variables[place].Domain[^1], "");

        var costs = new double[variables.Length];
        sum.WeighInto(costs);
        var objective = solver.Objective();
        for (var place = 0; place < costs.Length; place++)
        {
            if (costs[place] != 0)
                objective.SetCoefficient(variables[place], costs[place]);
        }

        objective.SetMinimization();
        var rows = new List<(Google.OrTools.LinearSolver.Constraint Row, double Scale, LinearConstraintProto Linear)>();
        foreach (var constraint in model.Constraints)
        {
            // Where nothing suits, a sum has no terms: it holds, or the search says that it does not.
            if (constraint.Linear is not { Vars.Count: > 0 } linear)
                continue;
            var scale = 1.0 / linear.Coeffs.Max(Math.Abs);
            var row = solver.MakeConstraint(Low(linear) * scale, High(linear) * scale);
            for (var term = 0; term < linear.Vars.Count; term++)
                row.SetCoefficient(variables[linear.Vars[term]], linear.Coeffs[term] * scale);
            rows.Add((row, scale, linear));
        }

        if (solver.Solve() != Solver.ResultStatus.OPTIMAL)
            return null;
        if (wiring.Variables.Round([.. variables.Select(static variable => variable.SolutionValue())]) is { } whole && wiring.Allows(whole))
            Whole = whole;

        // b·y plus, for each variable, what its reduced cost can win within its range.
        var bound = (double)sum.Constant;
        var size = Math.Abs(bound);
        foreach (var (row, scale, linear) in rows)
        {
            var dual = row.DualValue() * scale;
            var side = dual > 0 ? Low(linear) : High(linear);
            if (dual == 0 || double.IsInfinity(side))
                continue;
            bound += dual * side;
            size += Math.Abs(dual * side);
            for (var term = 0; term < linear.Vars.Count; term++)
                costs[linear.Vars[term]] -= dual * linear.Coeffs[term];
        }

        for (var place = 0; place < costs.Length; place++)
        {
            var domain = model.Variables[place].Domain;
            var least = Math.Min(costs[place] * domain[0], costs[place] * domain[^1]);
            bound += least;
            size += Math.Abs(costs[place]) * domain[^1];
        }

        return bound - (size * Rounding);
    }

    private static double Low(LinearConstraintProto linear) => linear.Domain[0] == long.MinValue ? double.NegativeInfinity : linear.Domain[0];

    private static double High(LinearConstraintProto linear) => linear.Domain[^1] == long.MaxValue ? double.PositiveInfinity : linear.Domain[^1];
}
