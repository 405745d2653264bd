using System.Numerics;
using CsCheck;
using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Devices;
using Loadmark.Circuits.LinearAlgebra;
using static Loadmark.Circuits.Tests.Solved;

namespace Loadmark.Circuits.Tests;

/// <summary>The sparse factors agree with the dense ones, fill in nothing on trees, and step aside where a pivot is too small.</summary>
public sealed class LinearSolverTests
{
    [Fact]
    public void A_tree_is_eliminated_without_fill() => Gen.Int[1, 100_000].Sample(seed =>
    {
        var random = new Random(seed);
        var size = 2 + random.Next(60);
        (int, int)[] edges = [.. Enumerable.Range(1, size - 1).Select(node => (node, random.Next(node)))];
        Assert.Equal(size + (2 * edges.Length), SparsePattern.Create(size, edges, Free(size)).ValueCount);
    });

    [Fact]
    public void Sparse_and_dense_solve_the_same() => Gen.Int[1, 100_000].Sample(seed =>
    {
        var (pattern, matrix, right) = Problem(seed, value => value);
        var (sparse, dense) = (new SparseFactors<double>(pattern), new DenseFactors<double>(pattern));
        Assert.True(sparse.Factor(matrix));
        Assert.True(dense.Factor(matrix));
        var (one, other) = ((double[])right.Clone(), (double[])right.Clone());
        sparse.Solve(one);
        dense.Solve(other);
        for (var row = 0; row < right.Length; row++)
        {
            Near(other[row], one[row], 1e-9, 1e-9);
            Near(right[row], Enumerable.Range(pattern.Starts[row], pattern.Starts[row + 1] - pattern.Starts[row]).Sum(index => matrix[index] * one[pattern.Columns[index]]), 1e-9, 1e-9);
        }
    });

    [Fact]
    public void Complex_matrices_too() => Gen.Int[1, 100_000].Sample(seed =>
    {
        var (pattern, matrix, right) = Problem(seed, value => new Complex(value, value / 3));
        var solver = new LinearSolver<Complex>(pattern);
        Assert.True(solver.Factor(matrix));
        var solution = (Complex[])right.Clone();
        solver.Solve(solution);
        for (var row = 0; row < right.Length; row++)
        {
            var sum = Complex.Zero;
            for (var index = pattern.Starts[row]; index < pattern.Starts[row + 1]; index++)
                sum += matrix[index] * solution[pattern.Columns[index]];
            Near(0, (sum - right[row]).Magnitude, 0, 1e-9);
        }
    });

    /// <summary>Ideal sources in series have a node between them that nothing else holds: its pivot is 0, and rows must be exchanged.</summary>
    [Fact]
    public void Ideal_sources_in_series()
    {
        var network = Settled(
            new VoltageSource("V1", "a", "0", 9), new VoltageSource("V2", "b", "a", 9), new VoltageSource("V3", "c", "b", -4), new Resistor("R", "c", "0", 7));
        Near(18, network.Voltage("b"));
        Near(2, network.Amps("V1"));
        Near(2, network.Amps("V3"));
    }

    /// <summary>An ideal source at each end of a lead, and one without any resistor at its node.</summary>
    [Fact]
    public void Ideal_sources_alone_and_in_pairs()
    {
        var network = Settled(
            new VoltageSource("V1", "a", "0", 9), new Resistor("R", "a", "b", 2), new VoltageSource("V2", "b", "0", 5), new VoltageSource("V3", "d", "0", 1),
            new LoadDevice("L", "d", "0", LoadLaw.Current, 0.25));
        Near(2, network.Amps("V1"));
        Near(-2, network.Amps("V2"));
        Near(0.25, network.Amps("V3"));
        Assert.True(new SmallSignal(network).Solve(50));
    }

    private static IReadOnlyList<int>[] Free(int size) => [.. Enumerable.Range(0, size).Select(_ => (IReadOnlyList<int>)Array.Empty<int>())];

    private static (SparsePattern Pattern, T[] Matrix, T[] Right) Problem<T>(int seed, Func<double, T> value)
        where T : struct
    {
        var random = new Random(seed);
        var size = 2 + random.Next(30);
        (int, int)[] edges = [.. Enumerable.Range(0, 2 * size).Select(_ => (random.Next(size), random.Next(size)))];
        var pattern = SparsePattern.Create(size, edges, Free(size));
        var matrix = new T[pattern.ValueCount];
        for (var row = 0; row < size; row++)
        {
            for (var index = pattern.Starts[row]; index < pattern.Starts[row + 1]; index++)
                matrix[index] = value(pattern.Columns[index] == row ? 20 + random.NextDouble() : random.NextDouble() - 0.5);
        }

        return (pattern, matrix, [.. Enumerable.Range(0, size).Select(_ => value(random.NextDouble()))]);
    }
}
