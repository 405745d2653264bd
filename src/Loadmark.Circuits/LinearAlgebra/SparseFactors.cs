using System.Numerics;
using System.Runtime.CompilerServices;

namespace Loadmark.Circuits.LinearAlgebra;

/// <summary>Triangular factors of a matrix on a fixed pattern, refactored in place without allocating.</summary>
/// <remarks>
/// Gaussian elimination by rows, pivots on the diagonal in the order of the pattern. A pivot that is small beside its row
/// is refused: the caller falls back on <see cref="DenseFactors{T}"/>, which pivots.
/// </remarks>
/// <typeparam name="T"><see cref="double"/> or <see cref="Complex"/>.</typeparam>
internal sealed class SparseFactors<T>(SparsePattern pattern)
    where T : struct, INumberBase<T>
{
    /// <summary>A pivot below this share of the largest value of its row loses too many digits.</summary>
    private const double SmallestPivot = 1e-11;

    private readonly T[] _values = new T[pattern.ValueCount];
    private readonly T[] _inverse = new T[pattern.Size];
    private readonly T[] _work = new T[pattern.Size];

    /// <summary>Factors a matrix.</summary>
    /// <param name="matrix">Values in the order of the pattern; may be longer.</param>
    /// <returns>False where a pivot is too small; the factors are then of no use.</returns>
    // Generic arithmetic cannot be compiled ahead of time: compiled well at its first use, once, it is not slow meanwhile.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public bool Factor(ReadOnlySpan<T> matrix)
    {
        var starts = pattern.Starts;
        var columns = pattern.Columns;
        var diagonals = pattern.Diagonals;
        var work = _work;
        var values = _values;
        for (var row = 0; row < diagonals.Length; row++)
        {
            var start = starts[row];
            var diagonal = diagonals[row];
            var end = starts[row + 1];
            for (var index = start; index < end; index++)
                work[columns[index]] = matrix[index];

            for (var index = start; index < diagonal; index++)
            {
                var column = columns[index];
                var factor = work[column] * _inverse[column];
                values[index] = factor;
                var last = starts[column + 1];
                for (var other = diagonals[column] + 1; other < last; other++)
                    work[columns[other]] -= factor * values[other];
            }

            var largest = 0.0;
            for (var index = diagonal; index < end; index++)
            {
                values[index] = work[columns[index]];
                largest = Math.Max(largest, Size(values[index]));
            }

            if (!(Size(values[diagonal]) > SmallestPivot * largest))
                return false;
            _inverse[row] = T.One / values[diagonal];
        }

        return true;
    }

    /// <summary>Solves with the factors in place.</summary>
    /// <param name="vector">Right-hand side in the order of elimination; becomes the solution.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Solve(Span<T> vector)
    {
        var starts = pattern.Starts;
        var columns = pattern.Columns;
        var diagonals = pattern.Diagonals;
        for (var row = 0; row < diagonals.Length; row++)
        {
            var sum = vector[row];
            for (var index = starts[row]; index < diagonals[row]; index++)
                sum -= _values[index] * vector[columns[index]];
            vector[row] = sum;
        }

        for (var row = diagonals.Length - 1; row >= 0; row--)
        {
            var sum = vector[row];
            var end = starts[row + 1];
            for (var index = diagonals[row] + 1; index < end; index++)
                sum -= _values[index] * vector[columns[index]];
            vector[row] = sum * _inverse[row];
        }
    }

    private static double Size(T value) => double.CreateTruncating(T.Abs(value));
}
