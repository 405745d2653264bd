using System.Collections.Immutable;
using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Networks;

namespace Loadmark.Simulation.Starting;

/// <summary>Records a start-up: what happened, and the waveforms.</summary>
internal sealed class StartUpRecorder : ITransientObserver
{
    private const double SettledShare = 0.01;

    private readonly RigCircuit _circuit;
    private readonly StartUpStory _story;
    private readonly (string Subject, string Unit, Func<double> Read)[] _series;
    private readonly List<double> _times = [];
    private readonly List<double[]> _points = [];
    private readonly int _voltages;

    public StartUpRecorder(RigCircuit circuit)
    {
        _circuit = circuit;
        _story = new StartUpStory(circuit);
        var series = new List<(string, string, Func<double>)>();
        var loads = Enumerable.Range(0, circuit.Loads.Length).Where(load => circuit.Loads[load].Jack is not null).ToList();
        foreach (var load in loads)
            series.Add((circuit.Loads[load].Id, "V", () => circuit.LoadVolts(load)));
        _voltages = series.Count;
        foreach (var load in loads)
            series.Add((circuit.Loads[load].Id, "A", () => circuit.LoadAmps(load)));
        for (var place = 0; place < circuit.Outlets.Length; place++)
        {
            var outlet = place;
            series.Add((circuit.Outlets[outlet].Name, "V", () => circuit.OutletVolts(outlet)));
            series.Add((circuit.Outlets[outlet].Name, "A", () => circuit.OutletAmps(outlet)));
        }

        _series = [.. series];
        Meters = Wiring.TotalMeter.Of(circuit);
    }

    /// <summary>What happened, in order.</summary>
    public ImmutableArray<StartUpEvent> Events => _story.Events;

    /// <summary>The peaks of what supplies and banks give in all.</summary>
    public Wiring.TotalMeter[] Meters { get; }

    /// <inheritdoc/>
    public void OnPoint(double seconds, Network network)
    {
        _times.Add(seconds);
        _points.Add(Array.ConvertAll(_series, static series => series.Read()));
        foreach (var meter in Meters)
            meter.Read();
    }

    /// <inheritdoc/>
    public void OnEvent(in TransientEvent change) => _story.Tell(change);

    /// <summary>The last time at which a load's voltage was more than 1 % of its end value away from that, or something happened, s.</summary>
    public double SettledAfter()
    {
        var last = Events.IsEmpty ? 0 : (double)Events[^1].Time.Value;
        for (var point = _points.Count - 1; point >= 0; point--)
        {
            for (var series = 0; series < _voltages; series++)
            {
                var end = _points[^1][series];
                if (Math.Abs(_points[point][series] - end) > SettledShare * Math.Abs(end))
                    return Math.Max(last, _times[Math.Min(point + 1, _times.Count - 1)]);
            }
        }

        return last;
    }

    /// <summary>The waveforms.</summary>
    /// <param name="evenPoints">How many evenly spaced points beside those at events.</param>
    public Waveforms Waveforms(int evenPoints)
    {
        var end = _times.Count == 0 ? 0 : _times[^1];
        var wanted = new List<(double Time, int Exact)>();
        for (var place = 0; place < evenPoints && _times.Count > 0; place++)
            wanted.Add((end * place / (evenPoints - 1), -1));
        for (var point = 1; point < _times.Count; point++)
        {
            if (_times[point] == _times[point - 1])
                wanted.AddRange([(_times[point], point - 1), (_times[point], point)]);
        }

        var rows = wanted.OrderBy(static row => row.Time).ThenBy(static row => row.Exact).DistinctBy(static row => row).ToList();
        var values = rows.ConvertAll(row => row.Exact >= 0 ? _points[row.Exact] : At(row.Time));
        return new Waveforms(
            [.. rows.Select(static row => row.Time)],
            [.. _series.Select((series, column) => new Waveform(series.Subject, series.Unit, [.. values.Select(row => row[column])]))]);
    }

    /// <summary>Straight between two points.</summary>
    private double[] At(double seconds)
    {
        var found = _times.BinarySearch(seconds);
        if (found >= 0)
            return _points[found];
        var after = Math.Clamp(~found, 1, _times.Count - 1);
        var share = (seconds - _times[after - 1]) / (_times[after] - _times[after - 1]);
        return [.. _points[after - 1].Zip(_points[after], (low, high) => low + (share * (high - low)))];
    }
}
