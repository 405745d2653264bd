using Loadmark.Circuits.Devices;
using Loadmark.Circuits.LinearAlgebra;

namespace Loadmark.Circuits.Analyses;

/// <summary>The equations of a network at one point: A·u + c + nonlinear(u) = 0, a row for each node and branch.</summary>
/// <remarks>Modified nodal analysis: C.-W. Ho, A. E. Ruehli, P. A. Brennan, IEEE Trans. CAS-22 (1975). The row of a node sums the currents
/// out of it.</remarks>
internal sealed class EquationSystem
{
    /// <summary>What a sum of currents may miss zero by, A, and as a share of the terms in it.</summary>
    private const double Tolerance = 1e-12;

    private readonly SparsePattern _pattern;
    private readonly Element[] _elements;
    private readonly Element[] _nonlinear;
    private readonly LinearSolver<double> _solver;
    private readonly double[] _matrix;
    private readonly double[] _constant;
    private readonly double[] _jacobian;
    private readonly double[] _residual;
    private readonly double[] _scale;
    private readonly double[] _step;
    private readonly bool[] _isNode;

    public EquationSystem(SparsePattern pattern, Element[] elements, bool[] isNode)
    {
        _pattern = pattern;
        _elements = elements;
        _nonlinear = [.. elements.Where(element => element.IsNonlinear)];
        _isNode = isNode;
        _solver = new LinearSolver<double>(pattern);
        _matrix = new double[pattern.ValueCount + 1];
        _jacobian = new double[pattern.ValueCount + 1];
        _constant = new double[pattern.Size + 1];
        _residual = new double[pattern.Size + 1];
        _scale = new double[pattern.Size + 1];
        _step = new double[pattern.Size];
        Unknowns = new double[pattern.Size + 1];
    }

    /// <summary>Voltages and branch currents in the order of elimination; the last place is ground and stays 0.</summary>
    public double[] Unknowns { get; }

    public int Size => _pattern.Size;

    /// <summary>What was computed with these equations so far: their number, each time that they were evaluated.</summary>
    public long Work { get; private set; }

    /// <summary>Conductance from every node to ground, S; more than 0 only while a solution is sought step by step.</summary>
    public double GroundSiemens { get; set; }

    /// <summary>Where the conductance to ground pulls the nodes to; null for 0 V.</summary>
    public double[]? Anchor { get; set; }

    /// <summary>Set by an element that could not go as far as it was asked to.</summary>
    public bool IsHeldBack { get; set; }

    public ReadOnlySpan<double> Jacobian => _jacobian;

    public ReadOnlySpan<double> Residual => _residual.AsSpan(0, Size);

    public double VoltageOf(in PairSlots pair) => Unknowns[pair.Plus] - Unknowns[pair.Minus];

    public void AddConductance(in PairSlots pair, double siemens)
    {
        _matrix[pair.PlusPlus] += siemens;
        _matrix[pair.MinusMinus] += siemens;
        _matrix[pair.PlusMinus] -= siemens;
        _matrix[pair.MinusPlus] -= siemens;
    }

    public void AddValue(int index, double value) => _matrix[index] += value;

    public void AddConstant(int row, double value) => _constant[row] += value;

    public void AddConstant(in PairSlots pair, double amps)
    {
        _constant[pair.Plus] += amps;
        _constant[pair.Minus] -= amps;
    }

    /// <summary>Adds a current from plus to minus and its slope.</summary>
    public void AddCurrent(in PairSlots pair, double amps, double siemens)
    {
        AddResidual(pair.Plus, amps);
        AddResidual(pair.Minus, -amps);
        _jacobian[pair.PlusPlus] += siemens;
        _jacobian[pair.MinusMinus] += siemens;
        _jacobian[pair.PlusMinus] -= siemens;
        _jacobian[pair.MinusPlus] -= siemens;
    }

    public void AddResidual(int row, double value)
    {
        _residual[row] += value;
        _scale[row] += Math.Abs(value);
    }

    public void AddSlope(int index, double value) => _jacobian[index] += value;

    /// <summary>Renews the linear part, after a change of parameters or of the step.</summary>
    public void StampMatrix(AnalysisPoint point)
    {
        Array.Clear(_matrix);
        foreach (var element in _elements)
            element.StampMatrix(this, point);
    }

    /// <summary>Renews the constant part, for another point in time.</summary>
    public void StampConstant(AnalysisPoint point)
    {
        Array.Clear(_constant);
        foreach (var element in _elements)
            element.StampConstant(this, point);
    }

    /// <summary>Computes residual and slopes at the present unknowns. Returns whether they solve the equations.</summary>
    public bool Evaluate(AnalysisPoint point)
    {
        Work += Size;
        Multiply();
        Array.Copy(_matrix, _jacobian, _matrix.Length);
        IsHeldBack = false;
        foreach (var element in _nonlinear)
            element.StampNonlinear(this, point);
        if (GroundSiemens > 0)
            AddGround();
        return !IsHeldBack && IsSolved();
    }

    /// <summary>Solves for the Newton step at the point evaluated last. False where the slopes are singular.</summary>
    public bool ComputeStep()
    {
        if (!_solver.Factor(_jacobian))
            return false;
        for (var row = 0; row < _step.Length; row++)
            _step[row] = -_residual[row];
        _solver.Solve(_step);
        return true;
    }

    /// <summary>Goes a share of the Newton step.</summary>
    public void Move(double share)
    {
        for (var row = 0; row < _step.Length; row++)
            Unknowns[row] += share * _step[row];
    }

    /// <summary>Solves another right-hand side with the slopes factored last.</summary>
    public void SolveInPlace(Span<double> vector) => _solver.Solve(vector);

    /// <summary>The row with the largest residual for its size.</summary>
    public int WorstRow()
    {
        var (worst, largest) = (0, -1.0);
        for (var row = 0; row < Size; row++)
        {
            var share = Math.Abs(_residual[row]) / (1 + _scale[row]);
            if (share > largest || double.IsNaN(share))
                (worst, largest) = (row, double.IsNaN(share) ? double.PositiveInfinity : share);
        }

        return worst;
    }

    private bool IsSolved()
    {
        for (var row = 0; row < Size; row++)
        {
            if (!(Math.Abs(_residual[row]) <= Tolerance * (1 + _scale[row])))
                return false;
        }

        return true;
    }

    private void Multiply()
    {
        var starts = _pattern.Starts;
        var columns = _pattern.Columns;
        var unknowns = Unknowns;
        var matrix = _matrix;
        for (var row = 0; row < Size; row++)
        {
            var sum = _constant[row];
            var scale = Math.Abs(sum);
            var end = starts[row + 1];
            for (var index = starts[row]; index < end; index++)
            {
                var term = matrix[index] * unknowns[columns[index]];
                sum += term;
                scale += Math.Abs(term);
            }

            _residual[row] = sum;
            _scale[row] = scale;
        }
    }

    private void AddGround()
    {
        for (var row = 0; row < Size; row++)
        {
            if (!_isNode[row])
                continue;
            _jacobian[_pattern.Diagonals[row]] += GroundSiemens;
            AddResidual(row, GroundSiemens * (Unknowns[row] - (Anchor is null ? 0 : Anchor[row])));
        }
    }
}
