using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Devices;
using Loadmark.Circuits.Networks;

namespace Loadmark.Circuits.Tests;

/// <summary>The inner loops allocate nothing.</summary>
public sealed class AllocationTests
{
    [Fact]
    public void Operating_point()
    {
        var network = Solved.Compiled([.. Board()]);
        var analysis = new OperatingPoint(network);
        var slot = network.Slot("L3", DeviceParameter.Draw);
        var status = analysis.Solve(TestContext.Current.CancellationToken).Status;
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var count = 0; count < 100; count++)
        {
            network[slot] = 0.5 + (0.001 * count);
            status = analysis.Solve(TestContext.Current.CancellationToken).Status;
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.Equal(OperatingPointStatus.Solved, status);
    }

    [Fact]
    public void Transient()
    {
        var network = Solved.Compiled([.. Board()]);
        var analysis = new Transient(network, new TransientOptions(1));
        var result = analysis.Run(null, TestContext.Current.CancellationToken);
        var before = GC.GetAllocatedBytesForCurrentThread();
        result = analysis.Run(null, TestContext.Current.CancellationToken);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.Equal(TransientStatus.Completed, result.Status);
        Assert.True(result.Steps > 100);
    }

    private static IEnumerable<Device> Board()
    {
        yield return new OutletDevice("O", "f0", "0", 9, 0.2) { SoftStartSeconds = 0.02, Overload = OverloadBehaviour.ConstantCurrent, LimitAmps = 3 };
        for (var index = 1; index <= 8; index++)
        {
            yield return new Resistor($"R{index}", $"f{index - 1}", $"f{index}", 0.05);
            yield return new Capacitor($"C{index}", $"f{index}", "0", 220e-6, 0.1);
            yield return new LoadDevice($"L{index}", $"f{index}", "0", index % 2 == 0 ? LoadLaw.Current : LoadLaw.Power, index % 2 == 0 ? 0.1 : 0.9)
            {
                StartsAbove = 6,
                StopsBelow = 4.5,
                BootDraw = index % 2 == 0 ? 0.2 : 1.8,
                BootSeconds = 0.1 * index,
            };
        }

        yield return new Heater("H", "f4", "0", 20, 84, 9, 3);
        yield return new ResettableFuse("F", "f8", "x", 0.2, 1, 4);
        yield return new Diode("D", "x", "y", 1e-12, 1.5, 0.1);
        yield return new Resistor("R", "y", "0", 100);
    }
}
