using CsvHelper;
using Loadmark.Circuits.Devices;
using Loadmark.Simulation.Figures;

namespace Loadmark.Simulation.Tests;

/// <summary>Every default is written down with its source, and shows where it is used.</summary>
public sealed class CircuitDefaultTests
{
    [Fact]
    public void The_documentation_has_each_default_as_the_program_has_it()
    {
        var lines = File.ReadAllLines(Repository.PathOf("docs", "theory", "rig-circuit.md"));
        var missing = CircuitDefaults.All.Select(static figure => $"| {figure.Name} | {figure.Text} | {figure.Source} |").Except(lines, StringComparer.Ordinal).ToList();
        Assert.True(missing.Count == 0, "docs/theory/rig-circuit.md lacks:\n" + string.Join('\n', missing));
    }

    [Fact]
    public void What_the_rig_does_not_say_shows_as_assumed_and_what_it_says_does_not()
    {
        const string bare = "rig: a\nloads: { delay-2: { kind: digital, label: 9 V 300 mA } }\nsupplies: { wall: { outlets: { 1: 9 V 500 mA } } }\nwired: [ { from: wall/1, to: delay-2 } ]";
        var assumed = RigText.StartUp(bare).Assumptions.Items.Select(static assumption => assumption.Figure).ToList();
        Assert.Equal(
            [
                "regulation", "source resistance of a regulated outlet", "overload", "rise of an outlet's voltage", "resistance of each contact", "wire", "length of the lead",
                "starts from, digital", "drops out below, digital", "starts after enough volts for, digital", "input capacitance, digital", "series resistance of an input capacitor",
            ],
            assumed);

        const string full =
            """
            rig: a
            loads: { delay-2: { kind: digital, label: 9 V 300 mA, starts_below: 7 V, stops_below: 6 V, input_capacitance: 330 µF } }
            supplies: { wall: { regulated: yes, overload: current limit, outlets: { 1: { label: 9 V 500 mA, source_ohms: 0.1 Ω } } } }
            leads: { mine: { length: 1 m, wire: 0.5 mm², contact_ohms: 0.01 Ω } }
            wired: [ { from: wall/1, lead: mine, to: delay-2 } ]
            """;
        Assert.Empty(RigText.Settle(full).Assumptions);
        Assert.Equal(
            ["rise of an outlet's voltage", "starts after enough volts for, digital", "series resistance of an input capacitor"],
            RigText.StartUp(full).Assumptions.Items.Select(static assumption => assumption.Figure));
    }

    [Fact]
    public void A_resistance_too_small_to_compute_with_shows_as_assumed()
    {
        const string stiff = "rig: a\nloads: { delay-2: { kind: digital, label: 9 V 300 mA } }\nsupplies: { wall: { outlets: { 1: { label: 9 V 500 mA, source_ohms: 0 Ω } } } }\nleads: { bar: { ohms: 0 Ω, contact_ohms: 0 Ω } }\nwired: [ { from: wall/1, lead: bar, to: delay-2 } ]";
        var settled = RigText.Settle(stiff);
        var assumed = settled.Assumptions.Items.Where(static assumption => assumption.Figure.StartsWith("resistance under", StringComparison.Ordinal))
            .Select(static assumption => $"{assumption.Figure}: {assumption.Value} ({string.Join(' ', assumption.Subjects)})");
        Assert.Equal(["resistance under 100 µΩ: computed as 100 µΩ (wall/1)", "resistance under 1 µΩ: computed as 1 µΩ (bar)"], assumed);
        Assert.Contains("**At least 1 µΩ.**", File.ReadAllText(Repository.PathOf("docs", "theory", "rig-circuit.md")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_draw_that_stands_in_for_a_class_shows_as_assumed() =>
        Assert.Contains(
            RigText.Settle("rig: a\nloads: { delay-2: { kind: digital, label: 9 V } }\nsupplies: { wall: { outlets: { 1: 9 V 500 mA } } }\nwired: [ { from: wall/1, to: delay-2 } ]").Assumptions,
            static assumption => assumption is { Figure: "draw", Value: "300 mA" });

    /// <summary>The figures of the fuse against the data sheet they are taken from, to the spread that its own rows have.</summary>
    [Fact]
    public void The_fuse_is_that_of_the_data_sheet()
    {
        using var csv = CsvReader.FromFile(Path.Combine(AppContext.BaseDirectory, "Data", "polyfuse.csv"), new CsvReaderOptions());
        var seen = 0;
        while (csv.Read())
        {
            if (csv.GetString(0) != "0805 SMD")
                continue;
            seen++;
            var (hold, ratio, least) = (Number(csv.GetString(1)), Number(csv.GetString(3)), Number(csv.GetString(5)));
            Assert.InRange(CircuitDefaults.FuseColdVolts.Value / hold / least, 0.85, 1.20);
            Assert.InRange(CircuitDefaults.FuseTripRatio.Value / ratio, 0.6, 1.0);
        }

        Assert.Equal(3, seen);
        var fuse = (ResettableFuse)RigText.Circuit(
            "rig: a\nloads: { delay-2: { kind: digital, label: 9 V 50 mA } }\nsupplies: { wall: { overload: fuse, outlets: { 1: 9 V 100 mA } } }\nwired: [ { from: wall/1, to: delay-2 } ]")
            .Netlist.Devices.Single(static device => device is ResettableFuse);

        // "1.5 s at 0.5 A" for the fuse of 0.1 A: −τ·ln(1 − (Iₜ/i)²), docs/theory/fuse.md.
        Assert.Equal(1.5, -fuse.ThermalSeconds * Math.Log(1 - Math.Pow(fuse.ThresholdAmps / 0.5, 2)), 1e-9);
        Assert.InRange(fuse.ThresholdAmps, 0.1, 0.3);
    }

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
