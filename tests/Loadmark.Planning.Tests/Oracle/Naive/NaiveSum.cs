using Google.OrTools.Sat;

namespace Loadmark.Planning.Tests.Oracle.Naive;

/// <summary>A sum of whole-number variables with whole weights.</summary>
internal sealed class NaiveSum
{
    private readonly List<IntVar> _variables = [];
    private readonly List<long> _weights = [];

    /// <summary>Whether nothing is in it.</summary>
    public bool IsEmpty => _variables.Count == 0;

    /// <summary>How many terms it has.</summary>
    public int Count => _variables.Count;

    /// <summary>The sum as an expression.</summary>
    public LinearExpr Expression => LinearExpr.WeightedSum(_variables, _weights);

    /// <summary>Adds a term.</summary>
    public void Add(IntVar variable, long weight = 1)
    {
        if (weight == 0)
            return;
        _variables.Add(variable);
        _weights.Add(weight);
    }
}
