using System.Numerics;

namespace Loadmark.Circuits.LinearAlgebra;

/// <summary>Solves on one pattern again and again: sparse where that is safe, dense with pivoting where it is not.</summary>
internal sealed class LinearSolver<T>(SparsePattern pattern)
    where T : struct, INumberBase<T>
{
    private readonly SparseFactors<T> _sparse = new(pattern);
    private DenseFactors<T>? _dense;
    private bool _isDense;

    /// <summary>How often the dense solver had to stand in.</summary>
    public int DenseCount { get; private set; }

    /// <summary>Factors a matrix; false where it is singular.</summary>
    public bool Factor(ReadOnlySpan<T> matrix)
    {
        _isDense = false;
        if (_sparse.Factor(matrix))
            return true;
        _dense ??= new DenseFactors<T>(pattern);
        _isDense = true;
        DenseCount++;
        return _dense.Factor(matrix);
    }

    /// <summary>Solves with the matrix factored last.</summary>
    public void Solve(Span<T> vector)
    {
        if (_isDense)
            _dense!.Solve(vector);
        else
            _sparse.Solve(vector);
    }
}
