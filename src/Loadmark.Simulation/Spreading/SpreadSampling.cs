using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Spreading;

/// <summary>Samples a circuit and writes down what came of it.</summary>
internal sealed class SpreadSampling
{
    private static readonly double[] Shares = [0.05, 0.5, 0.95];

    private readonly RigCircuit _circuit;
    private readonly SpreadOptions _options;
    private readonly SpreadRanges _ranges;
    private readonly SampleTable _table;
    private readonly bool _isStartUp;
    private readonly double[][] _corners = new double[2][];
    private readonly LoadState[][] _states = new LoadState[2][];

    private SpreadSampling(RigCircuit circuit, SpreadOptions options, bool isStartUp)
    {
        (_circuit, _options, _isStartUp) = (circuit, options, isStartUp);
        _ranges = new SpreadRanges(circuit, options.Widths);
        _table = new SampleTable(circuit, options.Samples);
    }

    /// <summary>Draws the samples and computes each.</summary>
    /// <param name="circuit">The circuit; it is left as it is.</param>
    /// <param name="options">How.</param>
    /// <param name="isStartUp">Whether the first seconds; else the steady state.</param>
    /// <param name="sampler">Makes what computes a circuit.</param>
    /// <param name="cancellation">Ends it with what is done by then.</param>
    public static SpreadResult Run(
        RigCircuit circuit, SpreadOptions options, bool isStartUp, Func<RigCircuit, ISampler> sampler, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(circuit);
        ArgumentOutOfRangeException.ThrowIfLessThan(options.Samples, 1, nameof(options));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(options.Samples, SpreadOptions.MostSamples, nameof(options));
        var threads = Math.Min(options.Threads ?? Environment.ProcessorCount, options.Samples);
        ArgumentOutOfRangeException.ThrowIfLessThan(threads, 1, nameof(options));

        var sampling = new SpreadSampling(circuit, options, isStartUp);
        ISampler[] samplers = [.. Enumerable.Range(0, threads).Select(_ => sampler(circuit.Copy()))];
        sampling.ComputeCorner(0, samplers[0]);
        sampling.ComputeCorner(1, samplers[0]);
        sampling._table.Fill(samplers, (copy, sample) => sampling._ranges.Set(copy, options.Seed, sample), options.Progress, cancellation);
        return sampling.Result();
    }

    private void ComputeCorner(int corner, ISampler sampler)
    {
        _corners[corner] = new double[2 * (_circuit.Loads.Length + _circuit.Outlets.Length)];
        _states[corner] = new LoadState[_circuit.Loads.Length];
        _ranges.SetCorner(sampler.Circuit, isHeavy: corner == 0);

        // The corners are quick, and an answer without them would be none: they are not stopped.
        sampler.Sample(_corners[corner], _states[corner], CancellationToken.None);
    }

    private SpreadResult Result()
    {
        var untold = Enumerable.Range(0, _circuit.Loads.Length).Where(load => IsUntold(_circuit.Loads[load])).ToList();
        return new SpreadResult
        {
            IsStartUp = _isStartUp,
            Asked = _options.Samples,
            Samples = _table.Done,
            Seed = _options.Seed,
            Runs = _table.Runs([.. Enumerable.Range(0, _circuit.Loads.Length).Except(untold)]),
            Uncomputed = _table.Uncomputed,
            Loads = [.. Enumerable.Range(0, _circuit.Loads.Length).Select(Load)],
            Outlets = [.. Enumerable.Range(0, _circuit.Outlets.Length).Select(Outlet)],
            LeftOut = [.. untold.Select(load => _circuit.Loads[load].Id)],
            OpenUpwards = [.. _ranges.OpenUpwards],
            Assumptions = [.. _ranges.Assumptions],
        };
    }

    private SpreadLoad Load(int load) => new(_circuit.Loads[load].Id, Percentiles<Volt>(2 * load, isLowWorse: true), _table.Runs(load))
    {
        Amps = _isStartUp ? null : Percentiles<Ampere>((2 * load) + 1, isLowWorse: false),
        RunsAfter = _isStartUp ? Percentiles<Second>((2 * load) + 1, isLowWorse: false) : null,
        Corner = _states[0][load] > _states[1][load] ? _states[0][load] : _states[1][load],
        Because = _circuit.Loads[load].Because,
    };

    private SpreadOutlet Outlet(int outlet)
    {
        var column = 2 * (_circuit.Loads.Length + outlet);
        return new SpreadOutlet(_circuit.Outlets[outlet].Outlet.Rating.Reference, Percentiles<Ampere>(column + 1, isLowWorse: false))
        {
            Volts = _isStartUp ? null : Percentiles<Volt>(column, isLowWorse: true),
            Limit = _circuit.Outlets[outlet].Outlet.Limit?.Value,
        };
    }

    private Percentiles<TUnit> Percentiles<TUnit>(int column, bool isLowWorse)
        where TUnit : struct, IUnit
    {
        var sorted = _table.Sorted(column);
        var worse = isLowWorse
            ? double.MinNumber(_corners[0][column], _corners[1][column])
            : double.MaxNumber(_corners[0][column], _corners[1][column]);
        var values = Array.ConvertAll(Shares, share => sorted.Length == 0 ? null : SiConversion.Of<TUnit>(Quantile.Of(sorted, share)));
        return new Percentiles<TUnit>(values[0], values[1], values[2], SiConversion.Of<TUnit>(worse), sorted.Length);
    }

    /// <summary>Whether nothing can be told of a load; one that is not fed, or the wrong way round, surely does not run.</summary>
    private static bool IsUntold(LoadBranch branch) =>
        branch.Device is null && (branch.Feed is null ? branch.Load.Feeds.Count > 0 : branch.Load.Rating.Running is null);
}
