using Google.OrTools.LinearSolver;

namespace Loadmark.Planning.Model;

/// <summary>One demand of the relaxation: a weighted sum of variables within a range.</summary>
internal sealed class LinearConstraint
{
    private readonly Google.OrTools.LinearSolver.Constraint _row;
    private readonly int[] _places;
    private readonly long[] _weights;
    private readonly double _scale;
    private double _least;
    private double _most;

    /// <summary>Adds the constraint to a solver; weights are scaled there so that the largest is one.</summary>
    /// <param name="solver">The solver.</param>
    /// <param name="variables">Its variables.</param>
    /// <param name="places">The places of those in the sum.</param>
    /// <param name="weights">Their weights.</param>
    /// <param name="least">The least it may be; <see cref="long.MinValue"/> for any.</param>
    /// <param name="most">The most it may be; <see cref="long.MaxValue"/> for any.</param>
    public LinearConstraint(Solver solver, Variable[] variables, int[] places, long[] weights, long least, long most)
    {
        _places = places;
        _weights = weights;
        _scale = 1.0 / weights.Max(Math.Abs);
        _row = solver.MakeConstraint();
        for (var term = 0; term < places.Length; term++)
            _row.SetCoefficient(variables[places[term]], weights[term] * _scale);
        Hold(least, most);
    }

    /// <summary>Sets the range.</summary>
    public void Hold(long least, long most)
    {
        _least = least == long.MinValue ? double.NegativeInfinity : least;
        _most = most == long.MaxValue ? double.PositiveInfinity : most;
        _row.SetBounds(_least * _scale, _most * _scale);
    }

    /// <summary>What the row's dual value adds to a bound; it is taken off the variables' costs.</summary>
    public double Gain(double[] costs)
    {
        var dual = _row.DualValue() * _scale;
        var side = dual > 0 ? _least : _most;
        if (dual == 0 || double.IsInfinity(side))
            return 0;
        for (var term = 0; term < _places.Length; term++)
            costs[_places[term]] -= dual * _weights[term];
        return dual * side;
    }
}
