using System.Numerics;

namespace Loadmark.Circuits.LinearAlgebra;

/// <summary>Triangular factors with row pivoting: slow and safe, for the few matrices that the sparse order cannot take.</summary>
/// <typeparam name="T"><see cref="double"/> or <see cref="Complex"/>.</typeparam>
internal sealed class DenseFactors<T>(SparsePattern pattern)
    where T : struct, INumberBase<T>
{
    private readonly int _size = pattern.Size;
    private readonly T[] _values = new T[pattern.Size * pattern.Size];
    private readonly int[] _rows = new int[pattern.Size];
    private readonly T[] _work = new T[pattern.Size];

    /// <summary>Factors a matrix given on the sparse pattern.</summary>
    /// <returns>False where the matrix is singular to working precision.</returns>
    public bool Factor(ReadOnlySpan<T> matrix)
    {
        Array.Clear(_values);
        for (var row = 0; row < _size; row++)
        {
            _rows[row] = row;
            for (var index = pattern.Starts[row]; index < pattern.Starts[row + 1]; index++)
                _values[(row * _size) + pattern.Columns[index]] = matrix[index];
        }

        for (var step = 0; step < _size; step++)
        {
            if (!Pivot(step))
                return false;
            var top = _rows[step] * _size;
            var inverse = T.One / _values[top + step];
            for (var below = step + 1; below < _size; below++)
            {
                var row = _rows[below] * _size;
                if (T.IsZero(_values[row + step]))
                    continue;
                var factor = _values[row + step] * inverse;
                _values[row + step] = factor;
                for (var column = step + 1; column < _size; column++)
                    _values[row + column] -= factor * _values[top + column];
            }
        }

        return true;
    }

    /// <summary>Solves with the factors in place.</summary>
    public void Solve(Span<T> vector)
    {
        for (var step = 0; step < _size; step++)
        {
            var sum = vector[_rows[step]];
            for (var column = 0; column < step; column++)
                sum -= _values[(_rows[step] * _size) + column] * _work[column];
            _work[step] = sum;
        }

        for (var step = _size - 1; step >= 0; step--)
        {
            var row = _rows[step] * _size;
            for (var column = step + 1; column < _size; column++)
                _work[step] -= _values[row + column] * _work[column];
            _work[step] /= _values[row + step];
        }

        _work.AsSpan().CopyTo(vector);
    }

    private bool Pivot(int step)
    {
        var best = step;
        var largest = 0.0;
        for (var candidate = step; candidate < _size; candidate++)
        {
            var size = double.CreateTruncating(T.Abs(_values[(_rows[candidate] * _size) + step]));
            if (size > largest)
                (best, largest) = (candidate, size);
        }

        (_rows[step], _rows[best]) = (_rows[best], _rows[step]);
        return largest > 1e-280;
    }
}
