using CsvHelper;
using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Devices;
using Loadmark.Circuits.Networks;
using static Loadmark.Circuits.Tests.Solved;

namespace Loadmark.Circuits.Tests;

/// <summary>The characteristics of the devices that this field needs.</summary>
public sealed class DeviceTests
{
    /// <summary>Within the limit the source resistance, at the limit the limit, against a higher voltage nothing.</summary>
    [Theory]
    [InlineData(OverloadBehaviour.None, 0.5, 18 / 1.0, 9)]
    [InlineData(OverloadBehaviour.ConstantCurrent, 8.5, 1, 8.5)]
    [InlineData(OverloadBehaviour.ConstantCurrent, 2, 2, 4)]
    [InlineData(OverloadBehaviour.ConstantCurrent, 0.01, 2, 0.02)]
    public void Outlet_into_a_resistance(OverloadBehaviour overload, double load, double amps, double volts)
    {
        var network = Settled(new OutletDevice("O", "a", "0", overload == OverloadBehaviour.None ? 18 : 9, 0.5) { Overload = overload, LimitAmps = 2 }, new Resistor("R", "a", "0", load));
        Near(amps, network.Amps("O"), 1e-7);
        Near(volts, network.Voltage("a"), 1e-7);
        Assert.Equal(amps == 2 ? DeviceState.Limiting : DeviceState.Regulating, network.State(network.Device("O")));
    }

    /// <summary>Foldback from 2 A at the knee of 8 V down to 0.4 A into a short: i = 0.4 + 1.6·v/8 meets v = 2·i at v = 0.8/0.6.</summary>
    [Fact]
    public void Foldback_meets_the_load_line()
    {
        var network = Settled(new OutletDevice("O", "a", "0", 9, 0.5) { Overload = OverloadBehaviour.Foldback, LimitAmps = 2, ShortAmps = 0.4 }, new Resistor("R", "a", "0", 2));
        Near(0.8 / 0.6, network.Voltage("a"), 1e-7);
    }

    [Fact]
    public void An_outlet_takes_no_current()
    {
        var network = Settled(new OutletDevice("low", "a", "0", 9, 0.1), new OutletDevice("high", "a", "0", 12, 0.1), new Resistor("R", "a", "0", 1));
        Near(12 / 1.1, network.Voltage("a"), 1e-7);
        Near(0, network.Amps("low"), 0, 1e-7);
        Assert.Equal(DeviceState.Blocking, network.State(network.Device("low")));
    }

    /// <summary>Value and slope of the bent laws are continuous at the floor and at zero.</summary>
    [Theory]
    [InlineData(LoadLaw.Current)]
    [InlineData(LoadLaw.Power)]
    public void Laws_are_smooth_at_their_floor(LoadLaw law)
    {
        foreach (var corner in new[] { 0.5, 0.0 })
        {
            var (below, above) = (LoadCurve.At(law, 3, 0.5, corner - 1e-9), LoadCurve.At(law, 3, 0.5, corner + 1e-9));
            Near(below.Amps, above.Amps, 1e-7, 1e-7);
            Near(below.Siemens, above.Siemens, 1e-6, 1e-6);
        }

        for (var volts = -1.0; volts < 2; volts += 0.013)
        {
            var slope = (LoadCurve.At(law, 3, 0.5, volts + 1e-6).Amps - LoadCurve.At(law, 3, 0.5, volts - 1e-6).Amps) / 2e-6;
            Near(slope, LoadCurve.At(law, 3, 0.5, volts).Siemens, 1e-4, 1e-4);
        }
    }

    /// <summary>A tripped fuse holds itself with about its threshold power, v²/R = P·x, and lets the load have next to nothing.</summary>
    [Fact]
    public void Fuse_holds_itself_tripped_and_closes_when_the_source_is_off()
    {
        var source = new PulseWaveform(9, 0, 60, 1e-3, 1e-3, 60, double.PositiveInfinity);
        var network = Compiled(new VoltageSource("V", "s", "0", source), new ResettableFuse("F", "s", "a", 0.5, 0.5, 2), new Resistor("R", "a", "0", 9));
        var (record, _) = TransientTests.Run(network, new TransientOptions(180), "a");
        Near(9 * 9 / 9.5, record.At(0, 0.01), 1e-3);
        var (volts, amps) = (9 - record.At(0, 59), record.At(0, 59) / 9);
        Assert.InRange(volts * amps / (0.5 * 0.5 * 0.5), 1, 1.4);
        Assert.Equal([DeviceState.Tripped, DeviceState.Closed, DeviceState.Tripped], record.Events.Select(change => change.To));
        Assert.InRange(record.Events[1].Seconds, 60, 61);
        Assert.InRange(record.Events[2].Seconds, 120, 122);
    }

    /// <summary>A fuse made from a data sheet's row carries the hold current for ever and trips in the printed time.</summary>
    [Fact]
    [Trait("Source", "data sheets named in Data/polyfuse.csv")]
    public void Fuse_from_its_data_sheet()
    {
        var count = 0;
        using var csv = CsvReader.FromFile(Path.Combine(AppContext.BaseDirectory, "Data", "polyfuse.csv"), new CsvReaderOptions());
        while (csv.Read())
        {
            string Cell(string column) => csv.GetString(csv.Headers.ToList().IndexOf(column));
            var time = Cell("time_to_trip").Split(' ');
            if (time is not [var seconds, "s", "at", var test, "A"] || !Cell("read_or_memory").StartsWith("read", StringComparison.Ordinal))
                continue;
            var (hold, trip, at) = (double.Parse(Cell("I_hold_A")), double.Parse(Cell("I_trip_A")), double.Parse(test));
            if (at <= trip)
                continue;
            count++;
            var fuse = ResettableFuse.FromDataSheet("F", "a", "0", double.Parse(Cell("R_min_ohm")), hold, trip, at, double.Parse(seconds));
            double? Trips(double amps, double end)
            {
                var network = Compiled(new CurrentSource("I", "0", "a", amps), new Resistor("R", "a", "0", 1e6), fuse);
                var (record, _) = TransientTests.Run(network, new TransientOptions(end) { RelativeError = 1e-6, AbsoluteError = 1e-6 });
                return record.Events.Where(change => change.To == DeviceState.Tripped).Select(change => (double?)change.Seconds).FirstOrDefault();
            }

            Near(double.Parse(seconds), Trips(at, 3 * double.Parse(seconds))!.Value, 1e-3);
            Assert.Null(Trips(hold, 100 * fuse.ThermalSeconds));
            Assert.NotNull(Trips(trip, 100 * fuse.ThermalSeconds));
        }

        Assert.True(count >= 3, $"{count} rows");
    }

    /// <summary>|H| = 1/√(1 + (ωRC)²) and its phase; with a series resistance r: (1 + jωrC)/(1 + jω(R + r)C).</summary>
    [Theory]
    [InlineData(10, 0)]
    [InlineData(1591.5, 0)]
    [InlineData(20_000, 0)]
    [InlineData(1000, 47)]
    public void Small_signal_of_a_low_pass(double hertz, double series)
    {
        var network = Settled(new VoltageSource("V", "s", "0", new ConstantWaveform(9), 1), new Resistor("R", "s", "a", 1000), new Capacitor("C", "a", "0", 1e-7, series));
        var signal = new SmallSignal(network);
        Assert.True(signal.Solve(hertz));
        var jw = new System.Numerics.Complex(0, 2 * Math.PI * hertz);
        var expected = (1 + (jw * series * 1e-7)) / (1 + (jw * (1000 + series) * 1e-7));
        Near(expected.Real, signal.Voltage(network.Node("a")).Real, 1e-9);
        Near(expected.Imaginary, signal.Voltage(network.Node("a")).Imaginary, 1e-9);
    }

    /// <summary>A load of constant power is a negative resistance to a small signal: −V²/P.</summary>
    [Fact]
    public void Small_signal_of_constant_power()
    {
        var network = Settled(new VoltageSource("V", "s", "0", new ConstantWaveform(12), 1), new Resistor("R", "s", "a", 2), new LoadDevice("L", "a", "0", LoadLaw.Power, 10));
        var signal = new SmallSignal(network);
        Assert.True(signal.Solve(100));
        Near(-10 / (-10 + 2.0), signal.Voltage(network.Node("a")).Real, 1e-9);
    }
}
