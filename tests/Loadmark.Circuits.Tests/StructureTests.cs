using Loadmark.Circuits.Devices;
using Loadmark.Circuits.Networks;

namespace Loadmark.Circuits.Tests;

/// <summary>Faults in the structure are found before anything is solved, with the names of what is at fault.</summary>
public sealed class StructureTests
{
    private static readonly Resistor Load = new("R", "a", "0", 10);

    [Fact]
    public void Floating_nodes()
    {
        var fault = Single(Load, new Capacitor("C", "a", "b", 1e-6), new Resistor("R2", "b", "c", 1));
        Assert.Equal(StructuralFaultKind.Floating, fault.Kind);
        Assert.Equal(["b", "c"], fault.Nodes.Order());
    }

    [Fact]
    public void Loop_of_voltage_sources()
    {
        var fault = Single(Load, new VoltageSource("V1", "a", "b", 9), new VoltageSource("V2", "b", "0", 1), new VoltageSource("V3", "0", "a", 3), new VoltageSource("V4", "d", "0", 1));
        Assert.Equal(StructuralFaultKind.VoltageSourceLoop, fault.Kind);
        Assert.Equal(["V1", "V2", "V3"], fault.Devices.Order());
    }

    [Fact]
    public void Shorted_voltage_source() =>
        Assert.Equal(StructuralFaultKind.VoltageSourceLoop, Single(Load, new VoltageSource("V", "a", "a", 9)).Kind);

    [Fact]
    public void Cut_set_of_current_sources()
    {
        var fault = Single(Load, new CurrentSource("I1", "a", "b", 1), new CurrentSource("I2", "c", "0", 1), new Resistor("R2", "b", "c", 1));
        Assert.Equal(StructuralFaultKind.CurrentSourceCutSet, fault.Kind);
        Assert.Equal(["I1", "I2"], fault.Devices.Order());
        Assert.Equal(["b", "c"], fault.Nodes.Order());
    }

    [Fact]
    public void Duplicate_names()
    {
        var fault = Single(Load, new Resistor("R", "b", "0", 1));
        Assert.Equal((StructuralFaultKind.Name, "R"), (fault.Kind, fault.Devices.Single()));
    }

    public static TheoryData<Device> Impossible =>
    [
        new Resistor("X", "a", "0", 0), new Resistor("X", "a", "0", -1), new Resistor("X", "a", "0", double.NaN), new Resistor("X", "a", "0", double.PositiveInfinity),
        new Capacitor("X", "a", "0", 0), new Capacitor("X", "a", "0", 1e-6, -1), new Diode("X", "a", "0", 0), new Diode("X", "a", "0", 1e-14, 0),
        new VoltageSource("X", "a", "0", double.NaN), new CurrentSource("X", "a", "0", double.NegativeInfinity),
        new VoltageSource("X", "a", "0", new PiecewiseLinearWaveform([(1, 0), (1, 5)])), new VoltageSource("X", "a", "0", new PiecewiseLinearWaveform([])),
        new VoltageSource("X", "a", "0", new SineWaveform(0, 1, 0)), new VoltageSource("X", "a", "0", new PulseWaveform(0, 1, 0, 1, 1, 1, 2)),
        new OutletDevice("X", "a", "0", 9, 0), new OutletDevice("X", "a", "0", -9, 1), new OutletDevice("X", "a", "0", 9, 1) { Overload = OverloadBehaviour.ConstantCurrent },
        new OutletDevice("X", "a", "0", 9, 1) { Overload = OverloadBehaviour.Hiccup, LimitAmps = 1 },
        new OutletDevice("X", "a", "0", 9, 1) { Overload = OverloadBehaviour.Foldback, LimitAmps = 1, ShortAmps = 2 },
        new LoadDevice("X", "a", "0", LoadLaw.Power, -1), new LoadDevice("X", "a", "0", LoadLaw.Resistance, 0), new LoadDevice("X", "a", "0", LoadLaw.Current, 1) { StartsAbove = 4, StopsBelow = 5 },
        new LoadDevice("X", "a", "0", LoadLaw.Current, 1) { FloorVolts = 0 }, new Heater("X", "a", "0", 10, 5, 12, 1), new ResettableFuse("X", "a", "0", 1, 1, 0),
    ];

    [Theory]
    [MemberData(nameof(Impossible), DisableDiscoveryEnumeration = true)]
    public void Figures_that_cannot_be(Device device)
    {
        var fault = Single(Load, device);
        Assert.Equal((StructuralFaultKind.Figure, "X"), (fault.Kind, fault.Devices.Single()));
    }

    [Fact]
    public void All_faults_are_told_at_once()
    {
        var compilation = Network.Compile(new Netlist([Load, Load, new Capacitor("C", "x", "0", 1), new VoltageSource("V", "y", "y", 1)]));
        Assert.False(compilation.IsSound);
        Assert.Equal(
            [StructuralFaultKind.Name, StructuralFaultKind.Floating, StructuralFaultKind.Floating, StructuralFaultKind.VoltageSourceLoop],
            compilation.Faults.Select(fault => fault.Kind).Order());
    }

    private static StructuralFault Single(params Device[] devices)
    {
        var compilation = Network.Compile(new Netlist(devices));
        Assert.Null(compilation.Network);
        return Assert.Single(compilation.Faults);
    }
}
