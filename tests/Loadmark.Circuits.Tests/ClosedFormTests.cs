using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Devices;
using static Loadmark.Circuits.Tests.Solved;

namespace Loadmark.Circuits.Tests;

/// <summary>Steady states whose solution can be written down.</summary>
public sealed class ClosedFormTests
{
    /// <summary>V = ½·(V₀ + √(V₀² − 4·R·P)), the larger root of V·(V₀ − V)/R = P.</summary>
    [Theory]
    [InlineData(12, 2, 10)]
    [InlineData(12, 2, 17.9)]
    [InlineData(12, 2, 17.999999)]
    [InlineData(9, 0.3, 1.9)]
    [InlineData(9, 0.3, 67.4)]
    [InlineData(18, 0.05, 40)]
    public void Constant_power_behind_a_resistance(double volts, double ohms, double watts)
    {
        var network = Settled(
            new VoltageSource("V", "s", "0", volts), new Resistor("R", "s", "a", ohms), new LoadDevice("L", "a", "0", LoadLaw.Power, watts));
        Near((volts + Math.Sqrt((volts * volts) - (4 * ohms * watts))) / 2, network.Voltage("a"), 1e-7);
        Near(watts, network.Voltage("a") * network.Amps("L"), 1e-9);
    }

    [Theory]
    [InlineData(18.000001)]
    [InlineData(18.1)]
    [InlineData(100)]
    public void Constant_power_over_the_collapse_limit_has_no_solution(double watts)
    {
        var network = Compiled(
            new VoltageSource("V", "s", "0", 12), new Resistor("R", "s", "a", 2), new LoadDevice("L", "a", "0", LoadLaw.Power, watts));
        var result = new OperatingPoint(network).Solve(TestContext.Current.CancellationToken);
        Assert.Equal(OperatingPointStatus.NoSolution, result.Status);
        Assert.Equal("L", result.Device);
        Near(18, result.Proof!.LimitWatts, 1e-6);
    }

    /// <summary>I = (n·Vt/R)·W((Is·R/(n·Vt))·exp((V + Is·R)/(n·Vt))) − Is.</summary>
    [Theory]
    [InlineData(9, 1000, 1e-14, 1)]
    [InlineData(9, 10, 1e-14, 1)]
    [InlineData(0.5, 100, 1e-9, 1.8)]
    [InlineData(5, 47, 2.5e-9, 1.752)]
    public void Diode_behind_a_resistance_by_Lambert_W(double volts, double ohms, double saturation, double emission)
    {
        var network = Settled(
            new VoltageSource("V", "s", "0", volts), new Resistor("R", "s", "a", ohms), new Diode("D", "a", "0", saturation, emission));
        var unit = emission * 1.380649e-23 * 300.15 / 1.602176634e-19;
        var expected = (unit / ohms * LambertW((Math.Log(saturation * ohms / unit)) + ((volts + (saturation * ohms)) / unit))) - saturation;

        // The engine has SPICE's 1e-12 S across the junction, which the formula has not.
        Near(expected, network.Amps("D"), 1e-8, 2e-12);
    }

    /// <summary>W(exp(y)) by Newton on w + ln w = y.</summary>
    private static double LambertW(double y)
    {
        var w = y > 1 ? y - Math.Log(y) : Math.Exp(y) / (1 + Math.Exp(y));
        for (var count = 0; count < 100; count++)
            w -= (w + Math.Log(w) - y) / (1 + (1 / w));
        return w;
    }

    /// <summary>A daisy chain by recurrence: the current in each hop is the sum of the draws behind it.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    [InlineData(40)]
    [InlineData(500)]
    public void Daisy_chain_by_recurrence(int loads)
    {
        var draws = Enumerable.Range(0, loads).Select(index => 0.0005 * (1 + (index * 7 % 11))).ToArray();
        var devices = new List<Device> { new VoltageSource("V", "f0", "0", 30), new Resistor("G", "r0", "0", 0.01) };
        for (var index = 1; index <= loads; index++)
        {
            devices.Add(new Resistor($"F{index}", $"f{index - 1}", $"f{index}", 0.003));
            devices.Add(new Resistor($"B{index}", $"r{index}", $"r{index - 1}", 0.004));
            devices.Add(new LoadDevice($"L{index}", $"f{index}", $"r{index}", LoadLaw.Current, draws[index - 1]));
        }

        var network = Settled([.. devices]);
        var (behind, volts) = (draws.Sum(), 30 - (0.01 * draws.Sum()));
        for (var index = 1; index <= loads; index++)
        {
            volts -= 0.007 * behind;
            behind -= draws[index - 1];
            Near(volts, network.VoltageAcross(network.Device($"L{index}")), 1e-10);
        }
    }
}
