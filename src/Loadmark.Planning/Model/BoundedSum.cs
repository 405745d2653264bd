using System.Numerics;
using Google.OrTools.Sat;

namespace Loadmark.Planning.Model;

/// <summary>A sum of variables with whole weights, and the most it can come to.</summary>
internal sealed class BoundedSum
{
    private readonly List<(IntVar Variable, long Weight)> _terms = [];

    /// <summary>A bound on the sum from above.</summary>
    public long Most { get; private set; }

    /// <summary>Whether there is no variable in the sum.</summary>
    public bool IsEmpty => _terms.Count == 0;

    /// <summary>How many loads there are in some places.</summary>
    public static BoundedSum Of(IEnumerable<LoadCount> loads)
    {
        var sum = new BoundedSum();
        foreach (var load in loads)
            sum.Add(load.Count, 1, load.Most);
        return sum;
    }

    /// <summary>Adds a variable that is at most <paramref name="most"/>, with a weight that is not negative.</summary>
    public void Add(IntVar variable, long weight, long most)
    {
        if (weight == 0)
            return;
        _terms.Add((variable, weight));
        Most += weight * most;
    }

    /// <summary>Adds all of another sum.</summary>
    public void Add(BoundedSum other, long weight = 1)
    {
        foreach (var (variable, own) in other._terms)
            _terms.Add((variable, own * weight));
        Most += other.Most * weight;
    }

    /// <summary>Lowers the bound from above to what is known otherwise.</summary>
    public void Cap(long most) => Most = Math.Min(Most, most);

    /// <summary>What the sum, without its constant, is always a multiple of.</summary>
    public long Step
    {
        get
        {
            var step = 0L;
            foreach (var (_, weight) in _terms)
                step = (long)BigInteger.GreatestCommonDivisor(step, weight);
            return Math.Max(1, step);
        }
    }

    /// <summary>Adds the weights to those of the variables.</summary>
    /// <param name="weights">The weights by the variables' indices.</param>
    public void WeighInto(double[] weights)
    {
        foreach (var (variable, weight) in _terms)
            weights[variable.Index] += weight;
    }

    /// <summary>The sum as an expression.</summary>
    public LinearExpr Expression() =>
        LinearExpr.WeightedSum(_terms.Select(term => term.Variable), _terms.Select(term => term.Weight));

    /// <summary>The sum under a solution.</summary>
    /// <param name="values">The variables' values by their indices.</param>
    public long ValueIn(long[] values)
    {
        var sum = 0L;
        foreach (var (variable, weight) in _terms)
            sum += weight * values[variable.Index];
        return sum;
    }
}
