using System.Collections.Immutable;
using Loadmark.Circuits.Analyses;
using Loadmark.Core.Rigs;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Starting;

/// <summary>What was recorded of all parts of a circuit, put together.</summary>
internal sealed class StartUpRecording(RigCircuit circuit)
{
    /// <summary>The most values of all waveforms together: 32 MB.</summary>
    private const int MostValues = 4_000_000;

    /// <summary>The fewest evenly spaced points, however many waveforms there are.</summary>
    private const int FewestPoints = 600;

    private readonly StartUpRecorder[] _parts = [.. circuit.Parts.Select(part => new StartUpRecorder(circuit, part))];

    /// <summary>Begins to record a part, from the start.</summary>
    public ITransientObserver Begin(int part) => _parts[part] = new StartUpRecorder(circuit, circuit.Parts[part]);

    /// <summary>What happened, in order.</summary>
    public ValueList<StartUpEvent> Events() =>
        [.. _parts.SelectMany(static part => part.Events).OrderBy(static happening => happening.Time.Value)];

    /// <summary>When everything had come to rest, s.</summary>
    public double SettledAfter() => _parts.Length == 0 ? 0 : _parts.Max(static part => part.SettledAfter());

    /// <summary>The peaks of what supplies and banks give in all.</summary>
    public ValueList<TotalGiven> Totals()
    {
        var meters = TotalMeter.Of(circuit);
        foreach (var meter in meters)
        {
            var parts = meter.Outlets.Select(outlet => circuit.Outlets[outlet].Device.Part).Distinct().ToList();
            foreach (var (time, isBefore) in parts.SelectMany(part => Instants(_parts[part].Times)).Distinct())
            {
                var at = parts.ToDictionary(static part => part, part => _parts[part].At(time, isBefore));
                meter.Read(outlet => Given(outlet, at));
            }
        }

        return [.. meters.Select(static meter => meter.Result())];
    }

    /// <summary>
    /// The waveforms: evenly spaced, at each event, and before and after each jump; loads and outlets in the order of the rig. Of a very
    /// large rig or a very long start the evenly spaced points are further apart than asked for, and of the others the first are told.
    /// </summary>
    /// <param name="spacing">The distance of the evenly spaced points, s, over 0.</param>
    /// <param name="end">Up to when, s.</param>
    public Waveforms Waveforms(double spacing, double end)
    {
        var most = Math.Max(FewestPoints, MostValues / Math.Max(1, 4 * (circuit.Loads.Length + circuit.Outlets.Length)));
        spacing = Math.Max(spacing, end / most);
        var even = Enumerable.Range(0, (int)Math.Ceiling(end / spacing) + 1)
            .Select(place => (Time: Math.Min(end, place * spacing), IsBefore: false));
        var events = _parts.SelectMany(static part => part.Events)
            .Select(static happening => (Time: (double)happening.Time.Value, IsBefore: false));
        var jumps = _parts.SelectMany(static part => Jumps(part.Times))
            .SelectMany(static time => new[] { (Time: time, IsBefore: true), (Time: time, IsBefore: false) });
        var others = events.Concat(jumps).Where(row => row.Time <= end).OrderBy(static row => row.Time).Take(most);
        var rows = even.Concat(others).Distinct().OrderBy(static row => row.Time).ThenByDescending(static row => row.IsBefore)
            .ToList();

        var columns = new List<(string Subject, string Unit, int Part, int Column)>();
        foreach (var (load, part) in Members(static part => part.Loads))
            AddPair(circuit.Loads[load].Id, part, _parts[part].ColumnOfLoad(load));
        foreach (var (outlet, part) in Members(static part => part.Outlets))
            AddPair(circuit.Outlets[outlet].Name, part, _parts[part].ColumnOfOutlet(outlet));

        var values = columns.ConvertAll(_ => ImmutableArray.CreateBuilder<double>(rows.Count));
        foreach (var (time, isBefore) in rows)
        {
            var at = Array.ConvertAll(_parts, part => part.At(time, isBefore));
            for (var column = 0; column < columns.Count; column++)
                values[column].Add(at[columns[column].Part][columns[column].Column]);
        }

        return new Waveforms(
            [.. rows.Select(static row => row.Time)],
            [.. columns.Select((column, place) => new Waveform(column.Subject, column.Unit, values[place].MoveToImmutable()))]);

        void AddPair(string subject, int part, int column) => columns.AddRange(
            [(subject, "V", part, column), (subject, "A", part, column + 1)]);
    }

    private (double Volts, double Amps) Given(int outlet, Dictionary<int, double[]> at)
    {
        var part = circuit.Outlets[outlet].Device.Part;
        var column = _parts[part].ColumnOfOutlet(outlet);
        return (at[part][column], at[part][column + 1]);
    }

    private IEnumerable<(int Place, int Part)> Members(Func<CircuitPart, ImmutableArray<int>> members) =>
        circuit.Parts.SelectMany((part, number) => members(part).Select(place => (Place: place, Part: number)))
            .OrderBy(static member => member.Place);

    private static IEnumerable<(double Time, bool IsBefore)> Instants(IReadOnlyList<double> times)
    {
        for (var point = 0; point < times.Count; point++)
            yield return (times[point], point + 1 < times.Count && times[point + 1] == times[point]);
    }

    private static IEnumerable<double> Jumps(IReadOnlyList<double> times)
    {
        for (var point = 1; point < times.Count; point++)
        {
            if (times[point] == times[point - 1])
                yield return times[point];
        }
    }
}
