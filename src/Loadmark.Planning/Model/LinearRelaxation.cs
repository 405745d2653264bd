using Google.OrTools.LinearSolver;
using Loadmark.Planning.Objective;

namespace Loadmark.Planning.Model;

/// <summary>
/// Bounds from below what a level can come to, by the linear relaxation, which lets variables be fractions: far quicker than a search,
/// and often all the proof that is needed. The relaxation is kept between calls, so each one after the first begins where the
/// last ended.
/// </summary>
/// <remarks>
/// The bound is not read from the solver, which rounds, but computed from its dual values: by weak duality any dual values
/// give a bound, good ones a good bound (Neumaier and Shcherbina, "Safe bounds in linear and mixed-integer programming",
/// Mathematical Programming 99, 2004). What rounding there is in computing it, the margin covers.
/// </remarks>
internal sealed class LinearRelaxation : IDisposable
{
    /// <summary>A double holds 53 bits; sums of a few thousand products lose less than this share of what they add up.</summary>
    private const double Rounding = 1e-12;

    private readonly WiringModel _wiring;
    private readonly Solver _solver = Solver.CreateSolver("GLOP");
    private readonly Variable[] _variables;
    private readonly List<LinearConstraint> _rows = [];
    private readonly LinearConstraint?[] _levels;

    /// <summary>Relaxes a model.</summary>
    public LinearRelaxation(WiringModel wiring)
    {
        _wiring = wiring;

        // What it would prepare it would prepare anew each time, and begin from nothing.
        _solver.SetSolverSpecificParametersAsString("use_preprocessing: false");
        var model = wiring.Model.Model;
        _variables = new Variable[model.Variables.Count];
        for (var place = 0; place < _variables.Length; place++)
            _variables[place] = _solver.MakeNumVar(model.Variables[place].Domain[0], model.Variables[place].Domain[^1], "");
        foreach (var constraint in model.Constraints)
        {
            // Where nothing suits, a sum has no terms: it holds, or the search says that it does not.
            if (constraint.Linear is { Vars.Count: > 0 } linear)
                _rows.Add(
                    new LinearConstraint(_solver, _variables, [.. linear.Vars], [.. linear.Coeffs], linear.Domain[0], linear.Domain[^1]));
        }

        _levels = [.. Enum.GetValues<Level>().Select(level => RowOf(wiring[level]))];
        _rows.AddRange(_levels.OfType<LinearConstraint>());
    }

    /// <summary>The solution of the last relaxation where it happened to be whole and to keep every demand; else null.</summary>
    public long[]? Whole { get; private set; }

    /// <summary>Demands for all that follows that a level is within a range.</summary>
    /// <param name="level">The level.</param>
    /// <param name="least">The least it may be.</param>
    /// <param name="most">The most it may be; <see cref="long.MaxValue"/> for any.</param>
    public void Hold(Level level, long least, long most) => _levels[(int)level]?.Hold(least, most);

    /// <summary>A bound on a level from below, rounded up to what the level can be.</summary>
    /// <param name="level">The level.</param>
    /// <param name="limit">How long to try; after it the bound is a poor one.</param>
    /// <param name="cancellation">Stops trying.</param>
    public long Of(Level level, TimeSpan limit, CancellationToken cancellation = default)
    {
        // A request that comes before the solving has begun is lost; whoever asks for several bounds looks in between.
        using var registration = cancellation.Register(() => _solver.InterruptSolve());
        Whole = null;
        var sum = _wiring[level];
        _solver.SetTimeLimit(Math.Max(1, (long)limit.TotalMilliseconds));
        var least = Math.Max(0, Bound(sum) ?? 0);
        var step = sum.Step;
        return (long)Math.Ceiling(least / step) * step;
    }

    /// <inheritdoc />
    public void Dispose() => _solver.Dispose();

    private LinearConstraint? RowOf(BoundedSum sum)
    {
        var weights = new double[_variables.Length];
        sum.WeighInto(weights);
        int[] places = [.. Enumerable.Range(0, weights.Length).Where(place => weights[place] != 0)];
        return places.Length == 0
            ? null
            : new LinearConstraint(
                _solver, _variables, places, [.. places.Select(place => (long)weights[place])], long.MinValue, long.MaxValue);
    }

    private double? Bound(BoundedSum sum)
    {
        var costs = new double[_variables.Length];
        sum.WeighInto(costs);
        var objective = _solver.Objective();
        objective.Clear();
        for (var place = 0; place < costs.Length; place++)
        {
            if (costs[place] != 0)
                objective.SetCoefficient(_variables[place], costs[place]);
        }

        objective.SetMinimization();
        if (_solver.Solve() != Solver.ResultStatus.OPTIMAL)
            return null;
        if (_wiring.Variables.Round([.. _variables.Select(static variable => variable.SolutionValue())]) is { } whole
            && _wiring.Allows(whole))
            Whole = whole;

        // b·y plus, for each variable, what its reduced cost can win within its range.
        var (bound, size) = (0.0, 0.0);
        foreach (var row in _rows)
        {
            var gain = row.Gain(costs);
            bound += gain;
            size += Math.Abs(gain);
        }

        var model = _wiring.Model.Model;
        for (var place = 0; place < costs.Length; place++)
        {
            var domain = model.Variables[place].Domain;
            bound += Math.Min(costs[place] * domain[0], costs[place] * domain[^1]);
            size += Math.Abs(costs[place]) * domain[^1];
        }

        return bound - (size * Rounding);
    }
}
