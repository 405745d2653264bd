using Loadmark.Core.Checks;
using Loadmark.Simulation.Checks;

namespace Loadmark.Simulation.Tests;

/// <summary>The rules that judge a rig by its circuit: what they say, what they leave to others, and that their remedies mend.</summary>
public sealed class CircuitRuleTests
{
    private const string Sagging =
        """
        rig: A long way from the supply
        loads: { DL-02: { kind: digital, label: "9V DC 900mA centre negative 5.5x2.1" }, OD-03: { kind: analog drive, label: "9V DC 10mA centre negative 5.5x2.1" } }
        supplies: { brick: { isolated: true, regulated: true, outlets: { 1: { label: 9 V 2 A, polarity: centre negative, plug: 5.5x2.1 }, 2: { label: 9 V 1 A, polarity: centre negative, plug: 5.5x2.1 } } } }
        leads: { thin: { type: daisy chain, plugs: 2, tail: 6 m, pitch: 0.25 m, wire: 0.22 mm² } }
        wired: [ { from: brick/1, lead: thin, to: [DL-02, OD-03] } ]
        """;

    private const string NotStarting =
        """
        rig: Too thin to start
        loads: { DL-02: { kind: digital, label: "9V DC 900mA centre negative 5.5x2.1" } }
        supplies: { brick: { isolated: true, regulated: true, outlets: { 1: { label: 9 V 5 A, polarity: centre negative, plug: 5.5x2.1 }, 2: { label: 9 V 1 A, polarity: centre negative, plug: 5.5x2.1 } } } }
        leads: { thin: { ohms: 3 Ω } }
        wired: [ { from: brick/1, lead: thin, to: DL-02 } ]
        """;

    public static TheoryData<string> Names => [.. SimulationRules.All.Select(static rule => rule.Name)];

    [Fact]
    public void A_sag_names_what_costs_the_most_and_what_mends_it()
    {
        var finding = Single(Sagging, "sags");
        Assert.Equal(Severity.Fails, finding.Severity);
        Assert.Equal(["DL-02", "OD-03", "brick/1", "thin"], finding.Subjects);
        Assert.Contains("the lead thin costs", finding.Message, StringComparison.Ordinal);
        Assert.StartsWith("Any one of these mends it (tried): wire of ", finding.Remedy, StringComparison.Ordinal);
        Assert.EndsWith("on brick/2, with a lead of its own.", finding.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void The_wire_and_the_length_that_are_advised_mend_it_and_the_next_ones_do_not()
    {
        Assert.Contains("wire of 0.34 mm² or more; a lead of", Single(Sagging, "sags").Remedy, StringComparison.Ordinal);
        Assert.Empty(Of(Sagging.Replace("0.22 mm²", "0.34 mm²", StringComparison.Ordinal), "sags"));
        Assert.NotEmpty(Of(Sagging.Replace("0.22 mm²", "0.25 mm²", StringComparison.Ordinal), "sags"));
        var words = Single(Sagging, "sags").Remedy.Split(' ');
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
            loads: { DL-02: { kind: digital, label: 9 V DC 18 W{{thresholds}} } }
            supplies: { wall: { regulated: yes, outlets: { 1: { label: 9 V DC 5 A, source_ohms: 0 Ω } } } }
            leads: { thin: { ohms: 2 Ω, contact_ohms: 0 Ω } }
            wired: [ { from: wall/1, lead: thin, to: DL-02 } ]
            """;
        var checkedRig = Single(text, "does-not-start");
        Assert.Equal(["DL-02", "wall/1"], checkedRig.Subjects);

        var circuit = RigText.Circuit(text);
        var settled = RigSimulator.Settle(circuit, cancellation: TestContext.Current.CancellationToken);
        var judged = RigExamination.Judge(circuit, settled, null, RigChecker.Check(circuit.Rig), TestContext.Current.CancellationToken);
        var finding = Assert.Single(judged.Findings, static finding => finding.Rule == "does-not-start");
        Assert.Equal("DL-02 does not run.", finding.Message);
        Assert.Equal("DL-02 asks for 18 W; no more than 5.062 W can reach it.", finding.Working);
        Assert.True(judged.IsRefused);
    }

    [Fact]
    public void The_outlet_that_is_advised_mends_it()
    {
        var moved = Sagging.Replace("lead: thin, to: [DL-02, OD-03] }", "lead: thin, to: [OD-03] }, { from: brick/2, to: DL-02 }", StringComparison.Ordinal);
        Assert.Contains("DL-02 on brick/2", Single(Sagging, "sags").Remedy, StringComparison.Ordinal);
        Assert.Empty(Of(moved, "sags"));
    }

    [Fact]
    public void An_outlet_that_does_not_hold_its_voltage_is_named()
    {
        var finding = Single(
            """
            rig: a
            loads: { OD-03: { kind: analog drive, label: 9 V DC 450 mA centre negative } }
            supplies: { wall: { regulated: yes, outlets: { 1: { label: 9 V DC 500 mA, source_ohms: 3 Ω } } } }
            wired: [ { from: wall/1, to: OD-03 } ]
            """,
            "sags");
        Assert.Contains("wall/1 is down to 7.65 V, 1.35 V of the", finding.Message, StringComparison.Ordinal);
        Assert.StartsWith("No wire and no length mends it", finding.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void A_load_that_collapses_does_not_start_and_a_free_outlet_mends_it()
    {
        var finding = Single(NotStarting, "does-not-start");
        Assert.Equal(["DL-02", "brick/1"], finding.Subjects);
        Assert.Matches("^DL-02 starts and drops out over and over. After switch-on: at [0-9.]+ ms DL-02 starts, .*; at [0-9.]+ ms DL-02 drops out at 6.75 V.$", finding.Message);
        Assert.Equal("DL-02 on brick/2, with a lead of its own mends it (tried).", finding.Remedy);
        Assert.Empty(Of(NotStarting.Replace("from: brick/1, lead: thin", "from: brick/2", StringComparison.Ordinal), "does-not-start"));
        Assert.Empty(Of(NotStarting, "sags"));
    }

    [Fact]
    public void The_overwhelmed_chain_tells_who_trips_what()
    {
        var result = RigExamination.Check(RigText.Example("chain-start"), cancellation: TestContext.Current.CancellationToken);
        var finding = result.Findings.Items.Single(static finding => finding.Rule == "does-not-start");
        Assert.Matches("DL-05 starts.*wall/1 reaches its limit of 1 A.*DL-05 drops out", finding.Message);
        Assert.Equal("An outlet of 1.5 A or more in place of wall/1 mends it (tried).", finding.Remedy);
        Assert.Contains(result.Findings, static other => other.Rule == "start-overload");
    }

    [Fact]
    public void What_the_nameplates_say_already_is_not_said_again()
    {
        const string low = "rig: a\nloads: { PR-02: { label: 12 V DC 40 mA } }\nsupplies: { brick: { regulated: yes, outlets: { 1: 9 V 500 mA } } }\nwired: [ { from: brick/1, to: PR-02 } ]";
        Assert.NotEmpty(Of(low, "under-voltage"));
        Assert.Empty(Of(low, "sags"));
        const string over = "rig: a\nloads: { DL-02: { kind: digital, label: 9 V DC 900 mA } }\nsupplies: { brick: { regulated: yes, outlets: { 1: 9 V 500 mA } } }\nwired: [ { from: brick/1, to: DL-02 } ]";
        Assert.NotEmpty(Of(over, "outlet-overload"));
        Assert.Empty(Of(over, "does-not-start"));
        Assert.Equal(LoadState.Off, RigText.Settle(over).Loads[0].State);
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
            loads: { DL-02: { kind: digital, label: 9 V DC 210 mA, {{load}} } }
            supplies: { brick: { regulated: yes, {{supply}} outlets: { 1: 9 V 500 mA } } }
            wired: [ { from: brick/1, to: DL-02 } ]
            """);
        Assert.Equal(calls, RigExamination.CallsForStartUp(circuit, RigSimulator.Settle(circuit, cancellation: TestContext.Current.CancellationToken)));
    }

    [Fact]
    public void A_rig_that_is_not_wired_is_left_to_the_other_rules() =>
        Assert.Equal(["unfed"], Check("rig: a\nloads: { OD-03: { label: 9 V DC 12 mA } }").Findings.Items.Where(static finding => finding.Severity >= Severity.Fails).Select(static finding => finding.Rule));

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_rule_has_a_page_that_states_it_and_shows_its_working(string name)
    {
        var rule = SimulationRules.All.Single(rule => rule.Name == name);
        var lines = File.ReadAllLines(Repository.PathOf("docs", "rules", name + ".md"));
        Assert.Equal($"# {name}", lines[0]);
        Assert.Contains("Severity: **fails**, will not run, or not for long.", lines);
        Assert.Equal(["## Source", "", rule.Source], lines[^3..]);
        Assert.All(["## Why", "## Working", "## When data is missing", "## What to do"], heading => Assert.NotEmpty(lines[Array.IndexOf(lines, heading) + 2]));
        Assert.Contains(Single(name == "sags" ? Sagging : NotStarting, name).Working, lines);
    }

    private static string Scaled(decimal factor) => Sagging
        .Replace("tail: 6 m", FormattableString.Invariant($"tail: {6 * factor:0.########} m"), StringComparison.Ordinal)
        .Replace("pitch: 0.25 m", FormattableString.Invariant($"pitch: {0.25m * factor:0.########} m"), StringComparison.Ordinal);

    private static Finding Single(string text, string rule) => Assert.Single(Of(text, rule));

    private static List<Finding> Of(string text, string rule) => [.. Check(text).Findings.Items.Where(finding => finding.Rule == rule)];

    private static CheckResult Check(string text) => RigExamination.Check(RigText.Read(text), cancellation: TestContext.Current.CancellationToken);
}
