using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Spreading;

/// <summary>What was computed in each sample. Filled from several threads, each sample by one of them.</summary>
internal sealed class SampleTable
{
    private readonly int _loads;
    private readonly int _width;
    private readonly double[] _figures;
    private readonly LoadState[] _states;
    private readonly bool[] _isDone;
    private readonly bool[] _isFound;
    private int _next = -1;
    private int _done;

    /// <summary>An empty table for a circuit.</summary>
    public SampleTable(RigCircuit circuit, int samples)
    {
        Samples = samples;
        _loads = circuit.Loads.Length;
        _width = 2 * (_loads + circuit.Outlets.Length);
        _figures = new double[samples * (long)_width];
        _states = new LoadState[samples * (long)_loads];
        _isDone = new bool[samples];
        _isFound = new bool[samples];
    }

    /// <summary>How many samples there are to be.</summary>
    public int Samples { get; }

    /// <summary>How many are done.</summary>
    public int Done => _done;

    /// <summary>How many of these could not be computed in full.</summary>
    public int Uncomputed => Enumerable.Range(0, Samples).Count(sample => _isDone[sample] && !_isFound[sample]);

    /// <summary>Fills the table.</summary>
    /// <param name="samplers">One for each thread.</param>
    /// <param name="set">Sets a circuit to a sample.</param>
    /// <param name="progress">Who is told how far it has come; null: nobody.</param>
    /// <param name="cancellation">Ends it with what is done by then.</param>
    public void Fill(
        IReadOnlyList<ISampler> samplers, Action<RigCircuit, int> set, IProgress<SpreadProgress>? progress, CancellationToken cancellation)
    {
        if (samplers.Count == 1)
            Fill(samplers[0], set, progress, cancellation);
        else
            Parallel.For(
                0,
                samplers.Count,
                new ParallelOptions { MaxDegreeOfParallelism = samplers.Count },
                thread => Fill(samplers[thread], set, progress, cancellation));
    }

    /// <summary>The figures of one column that can be told, ascending.</summary>
    public double[] Sorted(int column)
    {
        var values = new List<double>(_done);
        for (var sample = 0; sample < Samples; sample++)
        {
            var value = _figures[(sample * (long)_width) + column];
            if (_isDone[sample] && !double.IsNaN(value))
                values.Add(value);
        }

        values.Sort();
        return [.. values];
    }

    /// <summary>In how many samples a load runs.</summary>
    public Chance Runs(int load) => Runs([load]);

    /// <summary>In how many samples all of some loads run.</summary>
    public Chance Runs(IReadOnlyList<int> loads) => new(
        Enumerable.Range(0, Samples)
            .Count(sample => _isDone[sample] && loads.All(load => _states[(sample * (long)_loads) + load] == LoadState.Runs)),
        _done);

    private void Fill(ISampler sampler, Action<RigCircuit, int> set, IProgress<SpreadProgress>? progress, CancellationToken cancellation)
    {
        var stride = Math.Max(1, Samples / 200);
        try
        {
            while (!cancellation.IsCancellationRequested)
            {
                var sample = Interlocked.Increment(ref _next);
                if (sample >= Samples)
                    return;
                set(sampler.Circuit, sample);
                _isFound[sample] = sampler.Sample(
                    _figures.AsSpan((int)(sample * (long)_width), _width),
                    _states.AsSpan((int)(sample * (long)_loads), _loads),
                    cancellation);
                _isDone[sample] = true;
                var done = Interlocked.Increment(ref _done);
                if (done % stride == 0)
                    progress?.Report(new SpreadProgress(done, Samples));
            }
        }
        catch (OperationCanceledException) when (cancellation.IsCancellationRequested)
        {
            // The sample that was in the works is not counted.
        }
    }
}
