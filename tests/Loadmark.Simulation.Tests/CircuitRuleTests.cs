using Loadmark.Core.Checks;
using Loadmark.Simulation.Checks;
using Loadmark.Simulation.Figures;

namespace Loadmark.Simulation.Tests;

/// <summary>The rules that judge a rig by its circuit: what they say, what they leave to others, and that their remedies mend.</summary>
public sealed class CircuitRuleTests
{
    private const string Sagging =
        """
        rig: A long way from the supply
        loads: { delay-2: { kind: digital, label: "9V DC 900mA centre negative 5.5x2.1" }, drive-3: { kind: analog drive, label: "9V DC 10mA centre negative 5.5x2.1" } }
        supplies: { brick: { isolated: true, regulated: true, outlets: { 1: { label: 9 V 2 A, polarity: centre negative, plug: 5.5x2.1 }, 2: { label: 9 V 1 A, polarity: centre negative, plug: 5.5x2.1 } } } }
        leads: { thin: { type: daisy chain, plugs: 2, tail: 6 m, pitch: 0.25 m, wire: 0.22 mm² } }
        wired: [ { from: brick/1, lead: thin, to: [delay-2, drive-3] } ]
        """;

    private const string NotStarting =
        """
        rig: Too thin to start
        loads: { delay-2: { kind: digital, label: "9V DC 900mA centre negative 5.5x2.1" } }
        supplies: { brick: { isolated: true, regulated: true, outlets: { 1: { label: 9 V 5 A, polarity: centre negative, plug: 5.5x2.1 }, 2: { label: 9 V 1 A, polarity: centre negative, plug: 5.5x2.1 } } } }
        leads: { thin: { ohms: 3 Ω } }
        wired: [ { from: brick/1, lead: thin, to: delay-2 } ]
        """;

    public static TheoryData<string> Names => [.. CircuitRules.Rules.Select(static rule => rule.Id.Name)];

    [Fact]
    public void A_sag_names_what_costs_the_most_and_what_mends_it()
    {
        var findings = Of(Sagging, "sags");
        var finding = findings[0];
        Assert.Equal([Severity.Fails, Severity.Margin], findings.Select(static finding => finding.Severity));
        Assert.Equal(["delay-2", "brick/1", "thin"], finding.Subjects);
        Assert.Equal(["drive-3", "brick/1", "thin"], findings[1].Subjects);
        Assert.EndsWith("An analog load runs on that, with less headroom in its sound.", findings[1].Message, StringComparison.Ordinal);
        Assert.Equal("drive-3: 0.50 × 9 V = 4.5 V ≤ 7.989 V < 0.90 × 9 V = 8.1 V", findings[1].Working);
        Assert.Equal(finding.Remedy, findings[1].Remedy);
        Assert.Contains("the lead thin costs", finding.Message, StringComparison.Ordinal);
        Assert.StartsWith("Any one of these mends it (tried): wire of ", finding.Remedy, StringComparison.Ordinal);
        Assert.EndsWith("on brick/2, with a lead of its own.", finding.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void The_wire_and_the_length_that_are_advised_mend_it_and_the_next_ones_do_not()
    {
        Assert.Contains("wire of 0.34 mm² or more; a lead of", Of(Sagging, "sags")[0].Remedy, StringComparison.Ordinal);
        Assert.Empty(Of(Sagging.Replace("0.22 mm²", "0.34 mm²", StringComparison.Ordinal), "sags"));
        Assert.NotEmpty(Of(Sagging.Replace("0.22 mm²", "0.25 mm²", StringComparison.Ordinal), "sags"));
        var words = Of(Sagging, "sags")[0].Remedy.Split(' ');
        var tail = decimal.Parse(words[Array.IndexOf(words, "lead") + 2], System.Globalization.CultureInfo.InvariantCulture) / 6.25m;
        Assert.Empty(Of(Scaled(tail), "sags"));
        Assert.NotEmpty(Of(Scaled(tail + (0.1m / 6.25m)), "sags"));
    }

    /// <summary>More than a lead can carry to a load of constant power (docs/theory/collapse.md), however low it drops out.</summary>
    [Theory]
    [InlineData("")]
    [InlineData(", starts_below: 1 V, stops_below: 0.5 V")]
    public void A_load_that_has_no_steady_state_does_not_run_whether_its_start_is_computed_or_not(string thresholds)
    {
        var text =
            $$"""
            rig: a
            loads: { delay-2: { kind: digital, label: 9 V DC 18 W{{thresholds}} } }
            supplies: { wall: { regulated: yes, outlets: { 1: { label: 9 V DC 5 A, source_ohms: 0 Ω } } } }
            leads: { thin: { ohms: 2 Ω, contact_ohms: 0 Ω } }
            wired: [ { from: wall/1, lead: thin, to: delay-2 } ]
            """;
        var checkedRig = Single(text, "does-not-start");
        Assert.Equal(["delay-2", "wall/1"], checkedRig.Subjects);

        var judged = RigAnalysis.Of(RigText.Read(text), AnalysisDepth.Steady, TestContext.Current.CancellationToken).Check;
        var finding = Assert.Single(judged.Findings, static finding => finding.Rule == "does-not-start");
        Assert.Equal("delay-2 does not run.", finding.Message);
        Assert.Equal("delay-2 asks for 18 W; no more than 5.062 W can reach it.", finding.Working);
        Assert.True(judged.IsRefused);
    }

    [Fact]
    public void The_outlet_that_is_advised_mends_it()
    {
        var moved = Sagging.Replace("lead: thin, to: [delay-2, drive-3] }", "lead: thin, to: [drive-3] }, { from: brick/2, to: delay-2 }", StringComparison.Ordinal);
        Assert.Contains("delay-2 on brick/2", Of(Sagging, "sags")[0].Remedy, StringComparison.Ordinal);
        Assert.Empty(Of(moved, "sags"));
    }

    [Fact]
    public void An_outlet_that_does_not_hold_its_voltage_is_named()
    {
        var finding = Single(
            """
            rig: a
            loads: { drive-3: { kind: analog drive, label: 9 V DC 450 mA centre negative } }
            supplies: { wall: { regulated: yes, outlets: { 1: { label: 9 V DC 500 mA, source_ohms: 3 Ω } } } }
            wired: [ { from: wall/1, to: drive-3 } ]
            """,
            "sags");
        Assert.Contains("wall/1 is down to 7.65 V, 1.35 V of the", finding.Message, StringComparison.Ordinal);
        Assert.StartsWith("No wire, no length and no free outlet was found that passes the whole check", finding.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void A_load_that_collapses_does_not_start_and_a_free_outlet_mends_it()
    {
        var finding = Single(NotStarting, "does-not-start");
        Assert.Equal(["delay-2", "brick/1"], finding.Subjects);
        Assert.Matches("^delay-2 starts and drops out over and over. After switch-on: at [0-9.]+ ms delay-2 starts, .*; at [0-9.]+ ms delay-2 drops out at 6.75 V.$", finding.Message);
        Assert.Equal("This mends it (tried): delay-2 on brick/2, with a lead of its own.", finding.Remedy);
        Assert.Empty(Of(NotStarting.Replace("from: brick/1, lead: thin", "from: brick/2", StringComparison.Ordinal), "does-not-start"));
        Assert.Empty(Of(NotStarting, "sags"));
    }

    [Fact]
    public void The_overwhelmed_chain_tells_who_trips_what()
    {
        var result = RigAnalysis.Of(RigText.Example("chain-start"), AnalysisDepth.Verdict, TestContext.Current.CancellationToken).Check;
        var finding = result.Findings.Items.Single(static finding => finding.Rule == "does-not-start");
        Assert.Matches("delay-5 starts.*wall/1 reaches its limit of 1 A.*delay-5 drops out", finding.Message);
        Assert.Equal("This mends it (tried): an outlet of 1.5 A or more in place of wall/1.", finding.Remedy);
        Assert.Contains(result.Findings, static other => other.Rule == "start-overload");
    }

    [Fact]
    public void What_the_nameplates_say_already_is_not_said_again()
    {
        const string low = "rig: a\nloads: { preamp-2: { label: 12 V DC 40 mA } }\nsupplies: { brick: { regulated: yes, outlets: { 1: 9 V 500 mA } } }\nwired: [ { from: brick/1, to: preamp-2 } ]";
        Assert.NotEmpty(Of(low, "under-voltage"));
        Assert.Empty(Of(low, "sags"));
        const string over = "rig: a\nloads: { delay-2: { kind: digital, label: 9 V DC 900 mA } }\nsupplies: { brick: { regulated: yes, outlets: { 1: 9 V 500 mA } } }\nwired: [ { from: brick/1, to: delay-2 } ]";
        Assert.NotEmpty(Of(over, "outlet-overload"));
        Assert.Empty(Of(over, "does-not-start"));
        Assert.Equal(LoadState.Off, RigText.Settle(over).Loads[0].State);
    }

    /// <summary>The outlet would mend the sag; its supply cannot give the power, or is not for the mains.</summary>
    [Theory]
    [InlineData("regulated: true", true)]
    [InlineData("regulated: true, total: 5 W", false)]
    [InlineData("regulated: true, label: INPUT 120V~ 60Hz", false)]
    public void A_remedy_that_another_rule_stands_against_is_not_told(string other, bool isTold)
    {
        var text = "mains: 230 V 50 Hz\n" + Sagging.Replace(", 2: { label: 9 V 1 A, polarity: centre negative, plug: 5.5x2.1 } } }", $"}} }}, other: {{ isolated: true, {other}, outlets: {{ 1: {{ label: 9 V DC 1 A, polarity: centre negative, plug: 5.5x2.1 }} }} }}", StringComparison.Ordinal);
        Assert.Equal(isTold, Of(text, "sags")[0].Remedy.Contains("delay-2 on other/1", StringComparison.Ordinal));
    }

    /// <summary>Its capacitor carries a short start, so that the start passes with less; the sum of the starting draws does not.</summary>
    [Fact]
    public void The_outlet_that_is_named_is_the_least_that_passes_the_whole_check()
    {
        const string text =
            """
            rig: a
            loads: { delay-2: { kind: digital, label: "9V DC 500mA centre negative 5.5x2.1", start: 1.3 A for 2 s }, delay-3: { kind: digital, label: "9V DC 300mA centre negative 5.5x2.1" } }
            supplies: { wall: { regulated: true, outlets: { 1: { label: 9 V DC 1 A, polarity: centre negative, plug: 5.5x2.1 } } } }
            leads: { chain: { type: daisy chain, plugs: 2, tail: 0.5 m, pitch: 0.2 m, wire: 1 mm² } }
            wired: [ { from: wall/1, lead: chain, to: [delay-2, delay-3] } ]
            """;
        Assert.Equal("This mends it (tried): an outlet of 1.8 A or more in place of wall/1.", Of(text, "does-not-start")[0].Remedy);
        Assert.DoesNotContain(Check(text.Replace("9 V DC 1 A", "9 V DC 1.8 A", StringComparison.Ordinal)).Findings, static finding => finding.Severity >= Severity.Fails);
        Assert.Contains(Check(text.Replace("9 V DC 1 A", "9 V DC 1.5 A", StringComparison.Ordinal)).Findings, static finding => finding.Severity >= Severity.Fails);
    }

    /// <summary>Two others boot for some tens of milliseconds, over the limit; the third drops out, and comes back when they have started.</summary>
    [Fact]
    public void A_load_that_needs_a_second_go_does_not_start()
    {
        var finding = Single(
            """
            rig: a
            loads:
              delay-2: { kind: large digital, label: 9 V DC 177 mA, draws: resistance, start: 234 mA for 67 ms }
              delay-3: { kind: large digital, label: 9 V DC 26 mA, draws: resistance, start: 225 mA for 64 ms }
              delay-6: { kind: large digital, label: 9 V DC 301 mA }
            supplies: { s: { regulated: true, overload: foldback, outlets: { 1: { label: 9 V DC 600 mA, source_ohms: 0.27 Ω } } } }
            leads: { chain: { type: daisy chain, plugs: 3, tail: 0.92 m, pitch: 0.11 m, wire: 0.14 mm² } }
            wired: [ { from: s/1, lead: chain, to: [delay-2, delay-3, delay-6] } ]
            """,
            "does-not-start");
        Assert.StartsWith("delay-6 starts more than once before it stays on. After switch-on: ", finding.Message, StringComparison.Ordinal);
        Assert.Equal("delay-6 drops out below 6.75 V: 1 restart in 3 s", finding.Working);
        Assert.Equal("This mends it (tried): an outlet of 820 mA or more in place of s/1.", finding.Remedy);
    }

    /// <summary>Half of its voltage starves an analog load and no more; a lead that takes more than that is said, a nameplate that says it all is not said again.</summary>
    [Theory]
    [InlineData("4.5 V", "", "voltage-low margin")]
    [InlineData("4.4 V", "", "under-voltage fails")]
    [InlineData("9 V", ", source_ohms: 10 Ω", "sags margin")]
    [InlineData("9 V", ", source_ohms: 48 Ω", "sags fails")]
    [InlineData("4.5 V", ", source_ohms: 4 Ω", "voltage-low margin")]
    [InlineData("8.4 V", ", source_ohms: 43 Ω", "voltage-low margin, sags fails")]
    [InlineData("4.5 V", ", source_ohms: 10 Ω", "voltage-low margin, does-not-start fails")]
    public void An_analog_load_that_gets_too_little_is_said_once_and_as_bad_as_it_is(string volts, string source, string expected)
    {
        var check = Check(
            $$"""
            rig: a
            loads: { drive-3: { kind: analog drive, label: "9V DC 100mA centre negative 5.5x2.1" } }
            supplies: { wall: { regulated: true, outlets: { 1: { label: "{{volts}} DC 500 mA centre negative 5.5x2.1"{{source}} } } } }
            wired: [ { from: wall/1, to: drive-3 } ]
            """);
        string[] rules = ["voltage-low", "under-voltage", "sags", "does-not-start"];
        Assert.Equal(
            expected.Split(", ").Order(StringComparer.Ordinal),
            check.Findings.Items.Where(finding => rules.Contains(finding.Rule.Name)).Select(static finding => $"{finding.Rule} {finding.Severity}".ToLowerInvariant()).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("", "", false)]
    [InlineData("start: 420 mA for 1 s", "", true)]
    [InlineData("input_capacitance: 470 µF", "", true)]
    [InlineData("", "overload: foldback,", true)]
    [InlineData("", "overload: hiccup,", true)]
    [InlineData("", "overload: fuse,", true)]
    [InlineData("", "overload: current limit,", false)]
    [InlineData("run: 600 mA", "", true)] // does not settle within its limit
    public void The_first_seconds_are_computed_where_a_figure_calls_for_it(string load, string supply, bool calls)
    {
        var circuit = RigText.Circuit(
            $$"""
            rig: a
            loads: { delay-2: { kind: digital, label: 9 V DC 210 mA, {{load}} } }
            supplies: { brick: { regulated: yes, {{supply}} outlets: { 1: 9 V 500 mA } } }
            wired: [ { from: brick/1, to: delay-2 } ]
            """);
        Assert.Equal(calls, StartUpCall.CallsForStartUp(circuit, RigSimulator.Settle(circuit, cancellation: TestContext.Current.CancellationToken)));
    }

    [Fact]
    public void A_rig_that_is_not_wired_is_left_to_the_other_rules()
    {
        var check = Check("rig: a\nloads: { drive-3: { label: 9 V DC 12 mA } }");
        Assert.Equal(Severity.Open, check.Verdict);
        Assert.DoesNotContain(check.Findings, static finding => CircuitRules.Rules.Any(rule => rule.Id == finding.Rule));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_rule_has_a_page_that_states_it_and_shows_its_working(string name)
    {
        var rule = CircuitRules.Rules.Single(rule => rule.Id.Name == name);
        var lines = File.ReadAllLines(Repository.PathOf("docs", "rules", name + ".md"));
        Assert.Equal($"# {name}", lines[0]);
        Assert.Contains("Severity: **fails**, will not run, or not for long.", lines);
        Assert.Equal(["## Source", "", rule.Source], lines[^3..]);
        Assert.All(["## Why", "## Working", "## When data is missing", "## What to do"], heading => Assert.NotEmpty(lines[Array.IndexOf(lines, heading) + 2]));
        Assert.Contains(Of(name == "sags" ? Sagging : NotStarting, name)[0].Working, lines);
    }

    private static string Scaled(decimal factor) => Sagging
        .Replace("tail: 6 m", FormattableString.Invariant($"tail: {6 * factor:0.########} m"), StringComparison.Ordinal)
        .Replace("pitch: 0.25 m", FormattableString.Invariant($"pitch: {0.25m * factor:0.########} m"), StringComparison.Ordinal);

    private static Finding Single(string text, string rule) => Assert.Single(Of(text, rule));

    private static List<Finding> Of(string text, string rule) => [.. Check(text).Findings.Items.Where(finding => finding.Rule == rule)];

    private static CheckResult Check(string text) => RigAnalysis.Of(RigText.Read(text), AnalysisDepth.Verdict, TestContext.Current.CancellationToken).Check;
}
