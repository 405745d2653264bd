using Loadmark.Simulation.Settling;

namespace Loadmark.Simulation.Tests;

/// <summary>A circuit that is changed gives what a circuit built anew gives, and nothing is allocated for it.</summary>
public sealed class RebindingTests
{
    [Fact]
    public void A_circuit_that_is_put_back_is_the_circuit_of_the_rig()
    {
        var circuit = RigText.Circuit(Text("210 mA", "1.2 m", "9 V"));
        circuit.SetRun(0, 0.4);
        circuit.SetVolts(0, 8.4);
        circuit.SetWire(0, 3);
        var changed = RigSimulator.Settle(circuit.Copy(), cancellation: TestContext.Current.CancellationToken).Loads[0];
        var asWritten = RigText.Settle(Text("210 mA", "1.2 m", "9 V")).Loads[0];
        Assert.True(changed.Volts < asWritten.Volts - new Volts(0.6m));

        circuit.Reset();
        Assert.Equal(asWritten, RigSimulator.Settle(circuit, cancellation: TestContext.Current.CancellationToken).Loads[0]);
    }

    [Fact]
    public void A_wire_set_thrice_as_long_is_a_wire_thrice_as_long()
    {
        var circuit = RigText.Circuit(Text("400 mA", "1.2 m", "9 V"));
        var tail = Enumerable.Range(0, circuit.Leads.Length).Single(part => circuit.Leads[part].Name == "long chain, tail");
        circuit.SetWire(tail, 3);
        Assert.Equal(RigText.Settle(Text("400 mA", "3.6 m", "9 V")).Loads, RigSimulator.Settle(circuit, cancellation: TestContext.Current.CancellationToken).Loads);
    }

    [Fact]
    public void Solving_again_allocates_nothing()
    {
        var circuit = RigText.Circuit(Text("210 mA", "1.2 m", "9 V"));
        var settlement = new Settlement(circuit);
        var cancellation = TestContext.Current.CancellationToken;
        settlement.Solve(cancellation);
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var sample = 0; sample < 100; sample++)
        {
            circuit.SetRun(0, 0.2 + (sample * 0.001));
            circuit.SetWire(0, 1 + (sample * 0.01));
            circuit.SetVolts(0, 9 - (sample * 0.001));
            settlement.Solve(cancellation);
            _ = settlement.LoadVolts(0) + settlement.LoadAmps(1) + settlement.OutletAmps(0);
            _ = settlement.LoadState(0);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    private static string Text(string run, string tail, string volts) =>
        $$"""
        rig: a
        loads: { delay-2: { kind: digital, label: "9V DC centre negative", run: {{run}} }, drive-3: { kind: analog drive, label: "9V DC 12mA centre negative" } }
        supplies: { wall: { regulated: yes, outlets: { 1: "{{volts}} DC 1 A centre negative" } } }
        leads: { long chain: { type: daisy chain, plugs: 2, tail: {{tail}}, pitch: 0.25 m, wire: 0.22 mm² } }
        wired: [ { from: wall/1, lead: long chain, to: [delay-2, drive-3] } ]
        """;
}
