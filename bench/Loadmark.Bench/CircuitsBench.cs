using System.Diagnostics;
using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Networks;

namespace Loadmark.Bench;

/// <summary>Times the circuit engine, and ngspice beside it on the same circuit in the same run.</summary>
internal static class CircuitsBench
{
    private const double End = 3;

    public static int Run()
    {
        var table = new ResultTable(
            "Circuits",
            $"One thread, Release. Error: the largest difference from ngspice with reltol 1e-6 and steps of at most 0.1 ms, at 3000 even times more than 5 ms from any event, on the last node of each chain. {ResultTable.Machine}",
            "what", "time", "steps or iterations", "largest error", "bytes allocated", "ngspice's time over ours");
        StartUp(table);
        OperatingPoints(table);
        Growth(table);
        table.Write("circuits.md");
        return 0;
    }

    private static void StartUp(ResultTable table)
    {
        var netlist = SampleCircuit.Of(5, 40, isStarting: true);
        string[] nodes = ["c0f8", "c1f8", "c2f8", "c3f8", "c4f8"];
        var network = Compiled(netlist);
        var reference = SpiceRun.Transient(netlist, End, "reltol=1e-6 abstol=1e-11 vntol=1e-8 method=gear itl4=200", 1e-4, nodes);

        var recorder = new TransientRecorder([.. nodes.Select(network.Node)]);
        var analysis = new Transient(network, new TransientOptions(End));
        var result = analysis.Run(recorder);
        if (result.Status != TransientStatus.Completed)
            throw new InvalidOperationException($"The start-up ended as {result}.");
        var ours = Median(() => analysis.Run(), 15);
        var before = GC.GetAllocatedBytesForCurrentThread();
        analysis.Run();
        var bytes = GC.GetAllocatedBytesForCurrentThread() - before;
        var events = recorder.Events.Select(change => change.Seconds).ToArray();
        table.Add(
            $"start-up of {End} s, 40 loads on 5 chains, {network.Nodes.Length} nodes, {events.Length} events", $"{ours * 1e3:F2} ms", $"{result.Steps} + {result.Rejected} + {result.Located} steps",
            $"{Error(reference, recorder.At, events, nodes.Length) * 1e3:F2} mV", $"{bytes}", "");

        foreach (var (options, step) in new[] { ("reltol=1e-3", 0.06), ("reltol=1e-3", 5e-3), ("reltol=1e-3", 1e-3), ("reltol=1e-4", 1e-3), ("reltol=1e-4", 2e-4) })
        {
            try
            {
                var runs = Enumerable.Range(0, 3).Select(_ => SpiceRun.Transient(netlist, End, options, step, nodes)).OrderBy(run => run.Seconds).ToArray();
                table.Add(
                    $"the same by ngspice, {options}, steps of at most {step * 1e3:G3} ms", $"{runs[1].Seconds * 1e3:F0} ms", $"{runs[1].Times.Length} points",
                    $"{Error(reference, runs[1].At, events, nodes.Length) * 1e3:F2} mV", "", $"{runs[1].Seconds / ours:F0}");
            }
            catch (InvalidOperationException failure)
            {
                table.Add($"the same by ngspice, {options}, steps of at most {step * 1e3:G3} ms", "stops early", failure.Message.Contains("too small", StringComparison.Ordinal) ? "time step too small" : "", "", "", "");
            }
        }

        table.Add("the reference run by ngspice", $"{reference.Seconds * 1e3:F0} ms", $"{reference.Times.Length} points", "", "", $"{reference.Seconds / ours:F0}");
    }

    private static void OperatingPoints(ResultTable table)
    {
        var network = Compiled(SampleCircuit.Of(6, 60, isStarting: false));
        var analysis = new OperatingPoint(network);
        var result = analysis.Solve();
        table.Add("operating point, 60 loads on 6 chains, warm", $"{Median(() => analysis.Solve(), 201) * 1e6:F1} µs", $"{result.Iterations} iterations, {result.Status}", "", $"{Allocated(() => analysis.Solve())}", "");

        var twenty = Compiled(SampleCircuit.Of(3, 21, isStarting: false));
        var many = new OperatingPoint(twenty);
        ParameterSlot[] slots = [.. twenty.Devices.OfType<Circuits.Devices.LoadDevice>().Select(load => twenty.Slot(load.Name, DeviceParameter.Draw))];
        double[] draws = [.. slots.Select(slot => twenty[slot])];
        void Sample()
        {
            var random = new Random(1);
            for (var count = 0; count < 10_000; count++)
            {
                for (var index = 0; index < slots.Length; index++)
                    twenty[slots[index]] = draws[index] * (0.8 + (0.4 * random.NextDouble()));
                if (many.Solve().Status != OperatingPointStatus.Solved)
                    throw new InvalidOperationException("A sample was not solved.");
            }
        }

        table.Add("10,000 operating points, 21 loads on 3 chains, every draw changed", $"{Median(Sample, 5) * 1e3:F0} ms", "", "", $"{Allocated(Sample)} (the generator of random numbers)", "");
    }

    private static void Growth(ResultTable table)
    {
        foreach (var loads in new[] { 50, 100, 200, 500 })
        {
            var steady = Compiled(SampleCircuit.Of(loads / 10, loads, isStarting: false));
            var point = new OperatingPoint(steady);
            var one = Compiled(SampleCircuit.Of(1, loads, isStarting: false));
            var chain = new OperatingPoint(one);
            var status = chain.Solve();
            var starting = new Transient(Compiled(SampleCircuit.Of(loads / 10, loads, isStarting: true)), new TransientOptions(0.1) { LongestStep = 1e-3 });
            var run = starting.Run();
            table.Add(
                $"{loads} loads: operating point on chains of 10; on one chain; 0.1 s of start-up per load and step",
                $"{Median(() => point.Solve(), 101) * 1e6:F0} µs; {Median(() => chain.Solve(), 101) * 1e6:F0} µs; {Median(() => starting.Run(), 5) * 1e9 / loads / (run.Steps + run.Rejected + run.Located):F0} ns",
                $"{point.Solve().Iterations}; {status.Iterations} ({status.Status}); {run.Steps + run.Rejected + run.Located} steps", "", "", "");
        }
    }

    private static double Error(SpiceRun reference, Func<int, double, double> at, double[] events, int nodes)
    {
        var largest = 0.0;
        for (var sample = 1; sample < 3000; sample++)
        {
            var seconds = End * sample / 3000;
            if (events.Any(when => Math.Abs(when - seconds) < 5e-3))
                continue;
            for (var node = 0; node < nodes; node++)
                largest = Math.Max(largest, Math.Abs(at(node, seconds) - reference.At(node, seconds)));
        }

        return largest;
    }

    private static Network Compiled(Netlist netlist) =>
        Network.Compile(netlist).Network ?? throw new InvalidOperationException("The sample circuit is not sound.");

    private static long Allocated(Action action)
    {
        action();
        var before = GC.GetAllocatedBytesForCurrentThread();
        action();
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }

    private static double Median(Action action, int rounds)
    {
        var times = new List<double>();
        for (var round = -rounds / 2; round < rounds; round++)
        {
            var clock = Stopwatch.StartNew();
            action();
            if (round >= 0)
                times.Add(clock.Elapsed.TotalSeconds);
        }

        return times.Order().ElementAt(times.Count / 2);
    }
}
