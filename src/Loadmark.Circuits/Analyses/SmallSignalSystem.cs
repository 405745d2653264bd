using System.Numerics;
using Loadmark.Circuits.Devices;
using Loadmark.Circuits.LinearAlgebra;

namespace Loadmark.Circuits.Analyses;

/// <summary>The linear equations of a small signal around an operating point, at one frequency.</summary>
internal sealed class SmallSignalSystem(SparsePattern pattern)
{
    private readonly LinearSolver<Complex> _solver = new(pattern);
    private readonly Complex[] _matrix = new Complex[pattern.ValueCount + 1];

    /// <summary>Amplitudes in the order of elimination, once solved; ground is last.</summary>
    public Complex[] Unknowns { get; } = new Complex[pattern.Size + 1];

    public void AddAdmittance(in PairSlots pair, Complex siemens)
    {
        _matrix[pair.PlusPlus] += siemens;
        _matrix[pair.MinusMinus] += siemens;
        _matrix[pair.PlusMinus] -= siemens;
        _matrix[pair.MinusPlus] -= siemens;
    }

    public void AddValue(int index, Complex value) => _matrix[index] += value;

    public void AddSource(int row, double value) => Unknowns[row] += value;

    /// <summary>Starts from the slopes at the operating point.</summary>
    public void Begin(ReadOnlySpan<double> jacobian)
    {
        for (var index = 0; index < _matrix.Length; index++)
            _matrix[index] = jacobian[index];
        Array.Clear(Unknowns);
    }

    /// <summary>Solves; false where the equations are singular.</summary>
    public bool Solve()
    {
        Unknowns[^1] = 0;
        if (!_solver.Factor(_matrix))
            return false;
        _solver.Solve(Unknowns.AsSpan(0, pattern.Size));
        return true;
    }
}
