using CsCheck;
using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Devices;
using Loadmark.Circuits.Networks;
using static Loadmark.Circuits.Tests.Solved;

namespace Loadmark.Circuits.Tests;

/// <summary>"There is no solution" is said where it is proved, and never where there is one.</summary>
public sealed class ShortfallTests
{
    private static readonly OperatingPointOptions AllOn = new() { DropsOut = false };

    /// <summary>Two equal loads at the end of one lead are one load of twice the power.</summary>
    [Theory]
    [InlineData(8.99, OperatingPointStatus.Solved)]
    [InlineData(9.01, OperatingPointStatus.NoSolution)]
    public void Loads_side_by_side(double watts, OperatingPointStatus expected)
    {
        var result = Solve(
            new VoltageSource("V", "s", "0", 12), new Resistor("R", "s", "a", 2),
            new Resistor("A", "a", "b", 1e-6), new Resistor("B", "a", "c", 1e-6),
            new LoadDevice("L1", "b", "0", LoadLaw.Power, watts), new LoadDevice("L2", "c", "0", LoadLaw.Power, watts));
        Assert.Equal(expected, result.Status);
    }

    /// <summary>
    /// Two loads on a chain, hop resistance R each: at the limit found by bisection between what solves and what does not, the
    /// gap between "solved" and "proved" is closed to a part in a thousand.
    /// </summary>
    [Fact]
    public void Nothing_is_left_open_on_a_chain()
    {
        double Boundary(OperatingPointStatus status)
        {
            var (low, high) = (0.1, 30.0);
            while (high - low > 1e-5)
            {
                var middle = (low + high) / 2;
                var isBelow = Solve([.. Chain(5, middle, new VoltageSource("V", "n0", "0", 12))]).Status == status;
                if (isBelow == (status == OperatingPointStatus.Solved))
                    low = middle;
                else
                    high = middle;
            }

            return low;
        }

        var (solved, proved) = (Boundary(OperatingPointStatus.Solved), Boundary(OperatingPointStatus.NoSolution));
        Assert.InRange(proved, solved, solved * 1.001);
    }

    /// <summary>A proof against a solution would be a contradiction: where all loads are fed, no proof may be found.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_solution_is_never_denied(bool isLimited) => Gen.Select(Gen.Int[2, 8], Gen.Double[0.01, 25]).Sample((loads, watts) =>
    {
        Device source = isLimited
            ? new OutletDevice("O", "n0", "0", 12, 0.3) { Overload = OverloadBehaviour.ConstantCurrent, LimitAmps = 6 }
            : new VoltageSource("V", "n0", "0", 12);
        var network = Compiled([.. Chain(loads, watts, source)]);
        var status = new OperatingPoint(network, AllOn).Solve(TestContext.Current.CancellationToken).Status;
        var proof = ShortfallSearch.Find(network);
        Assert.Equal(status == OperatingPointStatus.NoSolution, proof is not null);
    });

    /// <summary>An outlet with a limit far off is as good as one without: its limit does not stand in the way of a proof.</summary>
    [Fact]
    public void A_limit_does_not_hide_a_shortfall()
    {
        var result = Solve([.. Chain(4, 12, new OutletDevice("O", "n0", "0", 12, 0.5) { Overload = OverloadBehaviour.ConstantCurrent, LimitAmps = 100 })]);
        Assert.Equal(OperatingPointStatus.NoSolution, result.Status);
        Assert.True(result.Proof!.DemandWatts > result.Proof.LimitWatts);
    }

    /// <summary>What a diode lets through is not linear: nothing is claimed.</summary>
    [Fact]
    public void What_is_not_proved_is_not_found()
    {
        var result = Solve(
            new VoltageSource("V", "s", "0", 12), new Diode("D", "s", "t"), new Resistor("R", "t", "a", 2), new LoadDevice("L", "a", "0", LoadLaw.Power, 30));
        Assert.Equal(OperatingPointStatus.NotFound, result.Status);
        Assert.Null(result.Proof);
        Assert.Equal("L", result.Device);
    }

    /// <summary>The loads that are too far down the chain drop out, the rest runs.</summary>
    [Fact]
    public void Loads_drop_out_until_the_rest_holds()
    {
        var network = Compiled([.. Chain(6, 8, new VoltageSource("V", "n0", "0", 12)).Select(device => device is LoadDevice load ? load with { StartsAbove = 11.9, StopsBelow = 6 } : device)]);
        var result = new OperatingPoint(network).Solve(TestContext.Current.CancellationToken);
        Assert.Equal(OperatingPointStatus.Solved, result.Status);
        var states = Enumerable.Range(1, 6).Select(index => network.State(network.Device($"L{index}"))).ToArray();
        Assert.Contains(DeviceState.Off, states);
        Assert.Equal(DeviceState.Running, states[0]);
        Assert.Equal(DeviceState.Off, states[^1]);
        for (var index = 1; index <= 6; index++)
        {
            if (states[index - 1] == DeviceState.Running)
                Near(8, network.VoltageAcross(network.Device($"L{index}")) * network.Amps($"L{index}"));
        }
    }

    [Fact]
    public void A_load_that_neither_stays_on_nor_off_is_unsteady()
    {
        var network = Compiled(
            new VoltageSource("V", "s", "0", 9), new Resistor("R", "s", "a", 10), new LoadDevice("L", "a", "0", LoadLaw.Current, 0.6) { StartsAbove = 6, StopsBelow = 4 });
        var result = new OperatingPoint(network).Solve(TestContext.Current.CancellationToken);
        Assert.Equal((OperatingPointStatus.Unsteady, "L"), (result.Status, result.Device));
    }

    private static OperatingPointResult Solve(params Device[] devices) =>
        new OperatingPoint(Compiled(devices), AllOn).Solve(TestContext.Current.CancellationToken);

    private static IEnumerable<Device> Chain(int loads, double watts, Device source)
    {
        yield return source;
        for (var index = 1; index <= loads; index++)
        {
            yield return new Resistor($"R{index}", $"n{index - 1}", $"n{index}", 0.4);
            yield return new LoadDevice($"L{index}", $"n{index}", "0", LoadLaw.Power, watts);
        }
    }
}
