using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Devices;
using Loadmark.Circuits.Networks;
using Loadmark.Circuits.Spice;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Tests.Spice;

/// <summary>
/// Compares start-ups of rigs with ngspice: voltages at jacks and outlets at all of its times, and when loads start and have started.
/// Both get outlets of at least 0.1 Ω and loads that start without delay, and what follows after 1 ms before the first drop-out or trip is not compared. We run with the
/// tolerances of the program.
/// </summary>
internal sealed class StartUpComparison(NgSpiceBatch batch)
{
    /// <summary>Around an event the voltages jump at slightly different times, s.</summary>
    private const double Beside = 1e-3;

    /// <summary>In part of the decks ngspice does not get past the knee of a limit behind 1 mΩ: "timestep too small". So both get this at least, in all.</summary>
    private const double LeastSourceOhms = 0.1;

    private readonly List<StartUpCase> _rigs = [];

    /// <summary>The difference of voltages, as a share of the highest outlet's, where nothing switches.</summary>
    public Agreement Smooth { get; } = new("start-up without switching: voltages at all times, share of the outlet's", "%");

    /// <summary>The same where loads start, more than 1 ms from any event.</summary>
    public Agreement Between { get; } = new("start-up with switching: voltages over 1 ms from an event, share of the outlet's", "%");

    /// <summary>The difference of the times at which loads start, or have started, s.</summary>
    public Agreement Events { get; } = new("start-up with switching: times at which loads start and have started", "ms");

    /// <summary>The rigs with a circuit: compared or tried.</summary>
    public int Rigs { get; private set; }

    /// <summary>Those that ngspice did not get through by the trapezoidal rule, so that they were given to it again by Gear's method in smaller steps.</summary>
    public List<string> Retried { get; } = [];

    /// <summary>Those that it did not get through by either ("timestep too small", or too long): nothing of them is compared.</summary>
    public List<string> StoppedEarly { get; } = [];

    /// <summary>Those in which a load drops out or a fuse trips so soon that nothing is left to compare.</summary>
    public List<string> TooShort { get; } = [];

    /// <summary>Adds a rig to the batch.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="circuit">Its circuit.</param>
    /// <param name="end">How long, s.</param>
    /// <param name="isSmooth">Whether thresholds and starting draws are taken out, so that nothing switches.</param>
    /// <param name="spoilt">The netlist that ngspice gets, of ours; null for the same.</param>
    public void Add(string name, RigCircuit circuit, double end, bool isSmooth, Func<Device, Device>? spoilt = null)
    {
        if (circuit.Parts.IsEmpty)
            return;
        var netlist = new Netlist([.. circuit.Netlist.Devices.Select(device => device switch
        {
            LoadDevice load when isSmooth => load with { StartsAbove = 0, StopsBelow = 0, BootDraw = null, BootSeconds = 0 },

            // The deck has no delay before a start, and a start while the voltage still rises is the harder thing to agree on.
            LoadDevice load => load with { DelaySeconds = 0 },
            OutletDevice outlet => outlet with { SourceOhms = Math.Max(LeastSourceOhms, outlet.SourceOhms) },
            _ => device,
        })]);
        var deck = new SpiceDeck(new Netlist([.. netlist.Devices.Select(device => spoilt?.Invoke(device) ?? device)]), isSteady: false);
        string[] nodes = [.. circuit.Loads.Where(static load => load.Jack is not null).SelectMany(static load => new[] { load.Jack!.Value.Plus, load.Jack.Value.Minus })
            .Concat(circuit.Outlets.Select(static outlet => outlet.Terminals.Plus)).Where(static node => node != Netlist.Ground).Distinct()];
        string[] loads = [.. netlist.Devices.OfType<LoadDevice>().Where(static load => load.StartsAbove > 0).Select(static load => load.Name)];
        var ours = Run(name, netlist, nodes, end);

        // From a drop-out on, loads without delay and capacitor chatter, and the deck has no hiccup.
        end = ours.Events.Where(static change => change.To is DeviceState.Off or DeviceState.Tripped).Select(static change => change.Seconds - Beside).DefaultIfEmpty(end).Min();
        Rigs++;
        if (end <= Beside)
        {
            TooShort.Add(name);
            return;
        }

        var booting = netlist.Devices.OfType<LoadDevice>().Where(static load => load.BootDraw is not null).Select(static load => load.Name).ToHashSet();
        string[] columns = [.. nodes.Select(deck.Node).Concat(loads.SelectMany(load => booting.Contains(load) ? new[] { $"{deck.Device(load)}_on", $"{deck.Device(load)}_boot" } : [$"{deck.Device(load)}_on"]))];
        _rigs.Add(new StartUpCase(name, netlist, nodes, loads, end, ours, deck, columns, batch.AddTransient(deck.Text, end, end / 400, columns)));
    }

    /// <summary>Compares, once the batch has run.</summary>
    public void Compare()
    {
        Retried.AddRange(Retry(4_000));
        Retry(25_000);
        foreach (var rig in _rigs)
        {
            var (times, voltages) = batch.Transient(rig.Number);
            if (!IsWhole(rig, times))
            {
                StoppedEarly.Add(rig.Name);
                continue;
            }

            CompareVoltages(rig.Name, rig.Netlist, rig.Nodes, rig.Ours, times, voltages);
            CompareEvents(rig.Name, rig.Netlist, rig.Loads, rig.Nodes.Length, rig.Ours, times, voltages, rig.End - Beside);
        }
    }

    /// <summary>Runs those again by Gear's method that ngspice has not got through. Returns which.</summary>
    private List<string> Retry(int steps)
    {
        var names = new List<string>();
        for (var index = 0; index < _rigs.Count; index++)
        {
            var rig = _rigs[index];
            if (IsWhole(rig, batch.Transient(rig.Number).Times))
                continue;
            names.Add(rig.Name);
            _rigs[index] = rig with { Number = batch.AddTransient(rig.Deck.Text, rig.End, rig.End / steps, rig.Columns, isGear: true) };
        }

        batch.Run();
        return names;
    }

    private static bool IsWhole(StartUpCase rig, double[] times) => times.Length >= 10 && times[^1] >= 0.999 * rig.End;

    private static TransientRecorder Run(string name, Netlist netlist, string[] nodes, double end)
    {
        var network = Network.Compile(netlist).Network!;
        var recorder = new TransientRecorder([.. nodes.Select(network.Node)]);
        var result = new Transient(network, new TransientOptions(end) { LongestStep = end / 200 }).Run(recorder);
        return result.Status == TransientStatus.Completed ? recorder : throw new InvalidOperationException($"{name}: the start-up ended as {result.Status}.");
    }

    private void CompareVoltages(string name, Netlist netlist, string[] nodes, TransientRecorder recorder, double[] times, double[][] voltages)
    {
        var scale = netlist.Devices.OfType<OutletDevice>().Max(static outlet => outlet.Volts) / 100;
        double[] events = [.. recorder.Events.Where(static change => change.To is not (DeviceState.Regulating or DeviceState.Limiting or DeviceState.Blocking)).Select(static change => change.Seconds)];
        var agreement = events.Length == 0 ? Smooth : Between;
        for (var index = 0; index < times.Length; index++)
        {
            if (events.Any(change => Math.Abs(change - times[index]) < Beside))
                continue;
            for (var node = 0; node < nodes.Length; node++)
                agreement.Add((voltages[node][index] - recorder.At(node, times[index])) / scale, FormattableString.Invariant($"{name}, {nodes[node]} at {times[index] * 1e3:0.###} ms"));
        }
    }

    private void CompareEvents(string name, Netlist netlist, string[] loads, int column, TransientRecorder recorder, double[] times, double[][] voltages, double end)
    {
        foreach (var load in loads)
        {
            var device = (LoadDevice)netlist.Devices.Single(device => device.Name == load);
            var changes = recorder.Events.Where(change => netlist.Devices[change.Device].Name == load && change.Seconds < end).ToList();
            var starts = Crossing(times, voltages[column++], 0.5);
            var started = device.BootDraw is null ? null : Crossing(times, voltages[column++], 1);
            foreach (var change in changes)
            {
                var theirs = change.From == DeviceState.Off ? starts : started;
                Events.Add(((theirs ?? double.PositiveInfinity) - change.Seconds) * 1e3, $"{name}, {load} to {change.To}");
            }

            if (changes.Count == 0 && starts < end)
                Events.Add(double.PositiveInfinity, $"{name}, {load} starts with ngspice only");
        }
    }

    private static double? Crossing(double[] times, double[] values, double level)
    {
        var after = Array.FindIndex(values, value => value >= level);
        if (after <= 0)
            return after < 0 ? null : times[0];
        return times[after - 1] + ((times[after] - times[after - 1]) * (level - values[after - 1]) / (values[after] - values[after - 1]));
    }
}
