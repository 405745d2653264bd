using System.Diagnostics;
using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Networks;
using Loadmark.Core.Ratings;
using Loadmark.Files;
using Loadmark.Simulation.Settling;
using Loadmark.Simulation.Spreading;
using Loadmark.Simulation.Starting;
using Loadmark.Simulation.Tests.Spice;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Bench;

/// <summary>Times the simulation of rigs, ngspice beside it on the same circuits in the same run, and tells how far the two agree.</summary>
internal static class SimulationBench
{
    private const double End = 3;

    public static int Run()
    {
        var table = new ResultTable(
            "Simulation",
            $"From rig file to answer; Release. Largest error of the start-up: against ngspice with reltol 1e-6 and steps of at most 0.1 ms, at 3000 even times more than 5 ms from any event, at the last plug of each chain. Agreement: ngspice at reltol 1e-9 (steady) and 1e-6 (start-up) on the examples and 300 seeded random rigs, as in RigAgreementTests. Times are medians; those of 50 to 500 loads, which show the growth, the fastest of many. Load of the machine (1, 5, 15 minutes) when this began: {Load()}. {ResultTable.Machine}",
            "what", "time", "steps", "largest error", "bytes allocated", "ngspice's time over ours");
        StartUp(table);
        Settle(table);
        Growth(table);
        Agree(table);
        table.Add("load of the machine at the end", Load(), "", "", "", "");
        table.Write("simulation.md");
        return 0;
    }

    private static void StartUp(ResultTable table)
    {
        var circuit = SampleChains.Of(5, 40);
        string[] nodes = [.. circuit.Parts.Select(part => circuit.Loads[part.Loads[^1]].Jack!.Value.Plus)];
        var reference = SpiceRun.Transient(circuit.Netlist, End, "reltol=1e-6 abstol=1e-11 vntol=1e-8 method=gear itl4=200", 1e-4, nodes);
        var (recorders, steps) = (new List<TransientRecorder>(), 0);
        foreach (var (part, node) in circuit.Parts.Zip(nodes))
        {
            var recorder = new TransientRecorder(part.Network.Node(node));
            var result = new Transient(part.Network, new TransientOptions(End) { LongestStep = End / 200 }).Run(recorder);
            steps += result.Steps + result.Rejected + result.Located;
            recorders.Add(recorder);
        }

        double[] events = [.. recorders.SelectMany(static recorder => recorder.Events).Select(static change => change.Seconds)];
        var run = new StartUpRun(circuit, new StartUpOptions { Duration = new Seconds(3) });
        var ours = Median(() => run.Run(), 15);
        table.Add($"start-up of {End} s, 40 loads on 5 chains, {events.Length} events", $"{ours * 1e3:F2} ms", $"{steps}", $"{Error(reference, recorders, events) * 1e3:F2} mV", $"{Allocated(() => run.Run())}", "");
        foreach (var (options, step, isTogether) in new[] { ("reltol=1e-3", 5e-3, true), ("reltol=1e-3", 1e-3, true), ("reltol=1e-4", 1e-3, true), ("reltol=1e-3", 1e-3, false), ("reltol=1e-4", 1e-3, false), ("reltol=1e-4", 2e-4, false) })
        {
            var name = $"the same by ngspice{(isTogether ? "" : ", each chain by itself, times added")}, {options}, steps of at most {step * 1e3:G3} ms";
            try
            {
                SpiceRun[] runs = isTogether
                    ? [SpiceRun.Transient(circuit.Netlist, End, options, step, nodes)]
                    : [.. circuit.Parts.Zip(nodes, (part, node) => SpiceRun.Transient(new Netlist(part.Network.Devices), End, options, step, [node]))];
                var error = Largest(events, (node, seconds) => (isTogether ? runs[0].At(node, seconds) : runs[node].At(0, seconds)) - reference.At(node, seconds), nodes.Length);
                var taken = runs.Sum(static run => run.Seconds);
                table.Add(name, $"{taken * 1e3:F0} ms", $"{runs.Sum(static run => run.Times.Length)}", $"{error * 1e3:F2} mV", "", $"{taken / ours:F0}");
            }
            catch (InvalidOperationException)
            {
                table.Add(name, "stops early", "", "", "", "");
            }
        }
    }

    private static void Settle(ResultTable table)
    {
        var settlement = new Settlement(SampleChains.Of(6, 60));
        table.Add("settle, 60 loads on 6 chains, warm", $"{Median(() => settlement.Solve(), 201) * 1e6:F0} µs", "", "", $"{Allocated(() => settlement.Solve())}", "");
        var twenty = SampleChains.Of(4, 20);
        foreach (var threads in new[] { 1, 2 })
        {
            var options = new SpreadOptions { Samples = 10_000, Threads = threads };
            table.Add($"10,000 settle samples, 20 loads on 4 chains, {threads} thread{(threads == 1 ? "" : "s")}", $"{Median(() => RigSpread.Settle(twenty, options), 5) * 1e3:F0} ms", "", "", "", "");
        }

        var few = new SpreadOptions { Samples = 100, Threads = 2 };
        table.Add("100 start-up samples of 3 s, 20 loads on 4 chains, 2 threads", $"{Median(() => RigSpread.StartUp(twenty, few, new StartUpOptions { Duration = new Seconds(3) }), 3) * 1e3:F0} ms", "", "", "", "");
    }

    private static void Growth(ResultTable table)
    {
        foreach (var loads in new[] { 50, 100, 200, 500 })
        {
            var circuit = SampleChains.Of(loads / 10, loads);
            var settlement = new Settlement(circuit);
            var run = new StartUpRun(circuit, new StartUpOptions { Duration = new Seconds(3) });
            var (settle, start) = (Times(() => settlement.Solve(), 201)[0], Times(() => run.Run(), 15)[0]);
            table.Add(
                $"{loads} loads on chains of 10: settle; start-up of {End} s; each per load", $"{settle * 1e6:F0} µs; {start * 1e3:F1} ms; {settle * 1e9 / loads:F0} ns; {start * 1e6 / loads:F0} µs", "", "",
                $"{Allocated(() => settlement.Solve())}; {Allocated(() => run.Run())}", "");
        }
    }

    private static void Agree(ResultTable table)
    {
        using var steadyBatch = new NgSpiceBatch();
        using var startBatch = new NgSpiceBatch();
        var (steady, starting) = (new SteadyComparison(steadyBatch), new StartUpComparison(startBatch));
        for (var seed = 1; seed <= 300; seed++)
        {
            steady.Add($"rig {seed}", Circuit(RandomRigs.Text(seed)));
            starting.Add($"rig {seed}", Circuit(RandomRigs.Text(seed)), 0.15, isSmooth: seed % 2 == 0);
        }

        foreach (var path in Directory.GetFiles("examples", "*.rig.yaml").Order(StringComparer.Ordinal))
        {
            steady.Add(path, Circuit(File.ReadAllText(path)));
            starting.Add(path, Circuit(File.ReadAllText(path)), 0.5, isSmooth: false);
        }

        steadyBatch.Run();
        steady.Compare();
        startBatch.Run();
        starting.Compare();
        table.Add($"agreement: rigs settled; ngspice found no state in {steady.NotFound.Count}, another solution, a lower one, in {steady.TwoSolutions.Count}, something else in {steady.Differences.Count}", "", $"{steady.Rigs}", "", "", "");
        table.Add($"agreement: rigs started; ngspice gave up by both methods in {starting.StoppedEarly.Count}, nothing to compare in {starting.TooShort.Count}", "", $"{starting.Rigs}", "", "", "");
        foreach (var agreement in new[] { steady.Volts, steady.Allowed, steady.Missing, starting.Smooth, starting.Between, starting.Events })
            table.Add($"agreement: {agreement.Quantity}; {agreement.Compared} values", "", "", $"{agreement.Largest:G3} {agreement.Unit}".TrimEnd(), "", "");
    }

    private static RigCircuit Circuit(string text) => RigCircuit.Of(WiredRig.Of(RigFileReader.Read(text, "rig").Rig ?? throw new InvalidOperationException(text)));

    private static double Error(SpiceRun reference, List<TransientRecorder> ours, double[] events) =>
        Largest(events, (node, seconds) => ours[node].At(0, seconds) - reference.At(node, seconds), ours.Count);

    private static double Largest(double[] events, Func<int, double, double> difference, int nodes)
    {
        var largest = 0.0;
        for (var sample = 1; sample < 3000; sample++)
        {
            var seconds = End * sample / 3000;
            if (events.Any(change => Math.Abs(change - seconds) < 5e-3))
                continue;
            for (var node = 0; node < nodes; node++)
                largest = Math.Max(largest, Math.Abs(difference(node, seconds)));
        }

        return largest;
    }

    private static long Allocated(Action action)
    {
        action();
        var before = GC.GetAllocatedBytesForCurrentThread();
        action();
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }

    private static string Load() => File.Exists("/proc/loadavg") ? string.Join(", ", File.ReadAllText("/proc/loadavg").Split(' ')[..3]) : "not known";

    private static double Median(Action action, int rounds) => Times(action, rounds)[rounds / 2];

    /// <summary>Times of so many rounds after half as many to warm up, s, the fastest first.</summary>
    private static double[] Times(Action action, int rounds)
    {
        var times = new List<double>();
        for (var round = -rounds / 2; round < rounds; round++)
        {
            var clock = Stopwatch.StartNew();
            action();
            if (round >= 0)
                times.Add(clock.Elapsed.TotalSeconds);
        }

        return [.. times.Order()];
    }
}
