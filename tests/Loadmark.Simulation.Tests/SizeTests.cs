using Loadmark.Core.Ratings;
using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Settling;
using Loadmark.Simulation.Starting;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Tests;

/// <summary>What is computed grows with the rig, not with its square, and ends; counted in equations evaluated, not in seconds.</summary>
public sealed class SizeTests
{
    [Fact]
    public void The_work_of_a_steady_state_in_which_most_loads_drop_out_grows_with_the_rig()
    {
        // One by one, eight times the loads would take some eighty times the work.
        var (few, many) = (WorkToSettle(100), WorkToSettle(800));
        Assert.True(many < 8 * 4 * few, $"{few} and {many} equations evaluated for 100 and for 800 loads");
    }

    [Fact]
    public void The_examples_are_far_from_what_may_be_computed()
    {
        foreach (var path in Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "examples"), "*.rig.yaml"))
        {
            var circuit = RigCircuit.Of(WiredRig.Of(RigText.Read(File.ReadAllText(path))));
            new Settlement(circuit).Solve(TestContext.Current.CancellationToken);
            new StartUpRun(circuit).Run(TestContext.Current.CancellationToken);
            for (var part = 0; part < circuit.Parts.Length; part++)
            {
                var network = circuit.Parts[part].Network;
                Assert.True(
                    network.Work < WorkBudget.OfPart(circuit, part) / 2, $"{Path.GetFileName(path)}: {network.Work} of {network.Size} equations");
            }
        }
    }

    /// <summary>A rig of many parts may take no more than in proportion to it, and each of its parts still gets to where it repeats.</summary>
    [Fact]
    public void What_may_be_computed_is_in_proportion_to_the_rig()
    {
        var names = Enumerable.Range(0, 60).ToList();
        var circuit = RigCircuit.Of(WiredRig.Of(RigText.Read($$"""
            rig: Sixty that never come up
            loads: { {{string.Join(", ", names.Select(static place =>
                $"load-{place}: {{ kind: large digital, label: 9V DC 500mA centre negative, run: 380 mA, start: 1.1 A for {60 + (9 * place)} s }}"))}} }
            supplies: { {{string.Join(", ", names.Select(static place =>
                $"wall-{place}: {{ label: OUTPUT 9V 1A centre negative, outlets: {{ 1: \"\" }}, overload: hiccup }}"))}} }
            wired: [ {{string.Join(", ", names.Select(static place => $"{{ from: wall-{place}/1, to: load-{place} }}"))}} ]
            """)));
        Assert.Equal(60, circuit.Parts.Length);
        var most = Enumerable.Range(0, 60).Sum(part => WorkBudget.OfPart(circuit, part));
        Assert.True(most <= Math.Max(40_000_000, 60_000L * circuit.Parts.Sum(static part => part.Network.Size)), $"{most} equations evaluated");
        var run = new StartUpRun(circuit);
        Assert.True(run.Run(TestContext.Current.CancellationToken) && run.Repeats);
        Assert.True(WorkBudget.WorkOf(circuit) < most, $"{WorkBudget.WorkOf(circuit)} of {most} equations evaluated");
    }

    private static long WorkToSettle(int loads)
    {
        var circuit = RigCircuit.Of(WiredRig.Of(RigText.Read(Chain(loads))));
        var settlement = new Settlement(circuit);
        Assert.True(settlement.Solve(TestContext.Current.CancellationToken));
        Assert.True(Enumerable.Range(0, loads).Count(load => settlement.LoadState(load) == LoadState.Off) > loads / 2);
        return WorkBudget.WorkOf(circuit);
    }

    /// <summary>A chain whose wire is as long whatever the number of loads, and far too thin for them.</summary>
    private static string Chain(int loads)
    {
        var ids = Enumerable.Range(0, loads).Select(static load => $"load-{load}").ToList();
        return $$"""
            rig: A chain without end
            loads: { {{string.Join(", ", ids.Select(static id => $"{id}: 9V DC 900mA"))}} }
            supplies: { wall: { outlets: { 1: 9 V {{loads}} A } } }
            leads: { chain: { type: daisy chain, plugs: {{loads}}, tail: 0.5 m, pitch: 0.1 m } }
            wired: [ { from: wall/1, lead: chain, to: [{{string.Join(", ", ids)}}] } ]
            """;
    }
}
