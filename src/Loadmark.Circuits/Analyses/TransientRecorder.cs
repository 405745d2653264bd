using Loadmark.Circuits.Networks;

namespace Loadmark.Circuits.Analyses;

/// <summary>Stores the voltages of chosen nodes at every point, and all events.</summary>
public sealed class TransientRecorder : ITransientObserver
{
    private readonly int[] _nodes;
    private readonly List<double> _times = [];
    private readonly List<double>[] _voltages;
    private readonly List<TransientEvent> _events = [];

    /// <summary>Prepares to record.</summary>
    /// <param name="nodes">Numbers of the nodes, from <see cref="Network.Node"/>.</param>
    public TransientRecorder(params int[] nodes)
    {
        ArgumentNullException.ThrowIfNull(nodes);
        _nodes = nodes;
        _voltages = [.. nodes.Select(_ => new List<double>())];
    }

    /// <summary>The times of the points, s, ascending; equal at a jump.</summary>
    public IReadOnlyList<double> Times => _times;

    /// <summary>What happened, in order.</summary>
    public IReadOnlyList<TransientEvent> Events => _events;

    /// <summary>The voltages of a node at <see cref="Times"/>, V.</summary>
    /// <param name="index">Place of the node among those recorded.</param>
    public IReadOnlyList<double> Voltages(int index) => _voltages[index];

    /// <summary>The voltage of a node between points, V; at a jump the value after it.</summary>
    /// <remarks>
    /// Monotone cubic pieces: F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984). They never overshoot, and keep jumps.
    /// </remarks>
    /// <param name="index">Place of the node among those recorded.</param>
    /// <param name="seconds">Time, s, within what was recorded.</param>
    public double At(int index, double seconds)
    {
        var found = _times.BinarySearch(seconds);
        var after = found >= 0 ? found : ~found;
        while (after + 1 < _times.Count && _times[after + 1] == seconds)
            after++;
        var values = _voltages[index];
        if (after == 0 || (after < _times.Count && _times[after] == seconds))
            return values[after];
        if (after == _times.Count)
            return values[^1];

        var before = after - 1;
        var length = _times[after] - _times[before];
        var share = (seconds - _times[before]) / length;
        var (start, end) = (Slope(values, before, after), Slope(values, after, before));
        var rise = values[after] - values[before];
        var bend = (length * start) - rise;
        var counterBend = rise - (length * end);
        return values[before] + (share * (rise + ((1 - share) * (((1 - share) * bend) + (share * counterBend)))));
    }

    /// <summary>The slope at a point for the piece to another; beside a jump or an end that of the straight line.</summary>
    private double Slope(List<double> values, int point, int other)
    {
        var inside = (values[other] - values[point]) / (_times[other] - _times[point]);
        var outer = point + (point - other);
        if (outer < 0 || outer >= _times.Count || _times[outer] == _times[point])
            return inside;
        var outside = (values[outer] - values[point]) / (_times[outer] - _times[point]);
        if (inside * outside <= 0)
            return 0;
        var (near, far) = (Math.Abs(_times[other] - _times[point]), Math.Abs(_times[outer] - _times[point]));
        var weight = (near + (2 * far)) / (3 * (near + far));
        return inside * outside / ((weight * outside) + ((1 - weight) * inside));
    }

    /// <inheritdoc/>
    public void OnPoint(double seconds, Network network)
    {
        ArgumentNullException.ThrowIfNull(network);
        _times.Add(seconds);
        for (var index = 0; index < _nodes.Length; index++)
            _voltages[index].Add(network.Voltage(_nodes[index]));
    }

    /// <inheritdoc/>
    public void OnEvent(in TransientEvent change) => _events.Add(change);
}
