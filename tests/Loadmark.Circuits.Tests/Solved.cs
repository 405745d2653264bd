using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Devices;
using Loadmark.Circuits.Networks;

namespace Loadmark.Circuits.Tests;

/// <summary>Short ways from devices to a network and its steady state.</summary>
internal static class Solved
{
    public static Network Compiled(params Device[] devices)
    {
        var compilation = Network.Compile(new Netlist(devices));
        Assert.True(compilation.IsSound, string.Join(' ', compilation.Faults.Select(fault => fault.Message)));
        return compilation.Network;
    }

    public static Network Settled(params Device[] devices)
    {
        var network = Compiled(devices);
        var result = new OperatingPoint(network).Solve(TestContext.Current.CancellationToken);
        Assert.Equal(OperatingPointStatus.Solved, result.Status);
        return network;
    }

    public static double Amps(this Network network, string device) => network.Current(network.Device(device));

    public static void Near(double expected, double actual, double relative = 1e-9, double absolute = 1e-12) =>
        Assert.True(Math.Abs(actual - expected) <= absolute + (relative * Math.Abs(expected)), $"{actual:R} is not {expected:R}");
}
