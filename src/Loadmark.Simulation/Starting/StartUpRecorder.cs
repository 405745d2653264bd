using System.Collections.Immutable;
using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Networks;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Starting;

/// <summary>Records the start-up of one part of a circuit: what happened, and every point.</summary>
internal sealed class StartUpRecorder(RigCircuit circuit, CircuitPart part) : ITransientObserver
{
    private const double SettledShare = 0.01;

    private readonly StartUpStory _story = new(circuit, part);
    private readonly List<double> _times = [];
    private readonly List<double[]> _points = [];
    private double? _repetition;

    /// <summary>What happened, in order.</summary>
    public ImmutableArray<StartUpEvent> Events => _story.Events;

    /// <summary>The times of the points, s, ascending; equal before and after a jump.</summary>
    public IReadOnlyList<double> Times => _times;

    /// <inheritdoc/>
    public void OnPoint(double seconds, Network network)
    {
        var point = new double[2 * (part.Loads.Length + part.Outlets.Length)];
        var place = 0;
        foreach (var load in part.Loads)
            (point[place++], point[place++]) = (circuit.LoadVolts(load), circuit.LoadAmps(load));
        foreach (var outlet in part.Outlets)
            (point[place++], point[place++]) = (circuit.OutletVolts(outlet), circuit.OutletAmps(outlet));
        _times.Add(seconds);
        _points.Add(point);
    }

    /// <inheritdoc/>
    public void OnEvent(in TransientEvent change) => _story.OnEvent(change);

    /// <inheritdoc/>
    public void OnRepeat(double seconds, double repetition, int rounds)
    {
        _repetition = repetition;
        _story.OnRepeat(seconds, repetition, rounds);
    }

    /// <summary>Where the voltage of a load stands in a point; its current is next to it.</summary>
    public int ColumnOfLoad(int load) => 2 * part.Loads.IndexOf(load);

    /// <summary>Where the voltage of an outlet stands in a point; its current is next to it.</summary>
    public int ColumnOfOutlet(int outlet) => 2 * (part.Loads.Length + part.Outlets.IndexOf(outlet));

    /// <summary>The last time at which something happened, or a load's voltage was more than 1 % away from its end value, s.</summary>
    public double SettledAfter()
    {
        var last = Events.IsEmpty ? 0 : (double)Events[^1].Time.Value;
        for (var point = _points.Count - 1; point >= 0; point--)
        {
            for (var load = 0; load < part.Loads.Length; load++)
            {
                var end = _points[^1][2 * load];
                if (Math.Abs(_points[point][2 * load] - end) > SettledShare * Math.Abs(end))
                    return Math.Max(last, _times[Math.Min(point + 1, _times.Count - 1)]);
            }
        }

        return last;
    }

    /// <summary>
    /// Voltages and currents at a time: as recorded, and straight between two points; after the end the repetition that was seen last goes
    /// on, and the end value where there is none.
    /// </summary>
    /// <param name="seconds">When, s.</param>
    /// <param name="isBefore">Whether before a jump at that time; after it otherwise.</param>
    public double[] At(double seconds, bool isBefore)
    {
        var end = _times[^1];
        if (_repetition is { } repetition && seconds > end)
            seconds = end - repetition + ((seconds - end) % repetition);
        var found = _times.BinarySearch(seconds);
        if (found >= 0)
        {
            while (isBefore && found > 0 && _times[found - 1] == seconds)
                found--;
            while (!isBefore && found + 1 < _times.Count && _times[found + 1] == seconds)
                found++;
            return _points[found];
        }

        var after = ~found;
        if (after == 0 || after == _times.Count)
            return _points[Math.Min(after, _times.Count - 1)];
        var share = (seconds - _times[after - 1]) / (_times[after] - _times[after - 1]);
        return [.. _points[after - 1].Zip(_points[after], (low, high) => low + (share * (high - low)))];
    }
}
