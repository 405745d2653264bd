using System.Text.Json;

namespace Loadmark.Tests;

/// <summary>The commands that compute a rig's circuit, on real rig files.</summary>
public sealed class SimulationCommandTests : IDisposable
{
    private const string Unwired = "rig: Bare\nloads: { drive-3: { label: 9V DC 12mA } }\nsupplies: { wall: { outlets: { 1: 9 V 500 mA } } }\n";

    private readonly string _folder = Directory.CreateTempSubdirectory("loadmark-circuit-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("settle-pit.txt", 0, "settle", "pit")]
    [InlineData("settle-left-at-18.txt", 1, "settle", "left-at-18")]
    [InlineData("startup-chain-start.txt", 1, "startup", "chain-start")]
    [InlineData("startup-abroad.txt", 1, "startup", "abroad")]
    [InlineData("netlist-chain-start.txt", 0, "netlist", "chain-start")]
    public void Answers_about_the_examples(string expected, int code, string command, string example) =>
        Expected.Matches(expected, Run(code, command, Repository.PathOf("examples", example + ".rig.yaml")));

    [Theory]
    [InlineData("settle-spread-chain-start.txt")]
    [InlineData("settle-spread-chain-start.json", "--json")]
    public void A_spread_with_a_seed_is_the_same_every_time(string expected, params string[] more) =>
        Expected.Matches(expected, Run(1, ["settle", Repository.PathOf("examples", "chain-start.rig.yaml"), "--spread", "40", "--seed", "3", .. more]));

    [Fact]
    public void Settle_answers_in_the_keys_of_the_contract()
    {
        using var json = JsonDocument.Parse(Run(0, "settle", Repository.PathOf("examples", "pit.rig.yaml"), "--json"));
        Assert.Equal(["loads", "outlets", "totals", "findings", "assumptions", "untold", "rig"], json.RootElement.EnumerateObject().Select(property => property.Name));
        var load = json.RootElement.GetProperty("loads").EnumerateArray().Single(entry => entry.GetProperty("load").GetString() == "delay-2");
        Assert.InRange(load.GetProperty("volts").GetDouble(), 8.9, 9.0);
        Assert.InRange(load.GetProperty("amps").GetDouble(), 0.21, 0.212);
        Assert.Equal("runs", load.GetProperty("state").GetString());
        var outlet = json.RootElement.GetProperty("outlets")[0];
        Assert.Equal(("brick/1", "regulating"), (outlet.GetProperty("outlet").GetString(), outlet.GetProperty("state").GetString()));
    }

    [Fact]
    public void Start_up_answers_in_the_keys_of_the_contract()
    {
        using var json = JsonDocument.Parse(Run(1, "startup", Repository.PathOf("examples", "chain-start.rig.yaml"), "--json"));
        Assert.Equal(
            ["loads", "outlets", "settledAfterSeconds", "seconds", "isComplete", "events", "totals", "findings", "assumptions", "untold", "rig"],
            json.RootElement.EnumerateObject().Select(property => property.Name));
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("settledAfterSeconds").ValueKind);
        var load = json.RootElement.GetProperty("loads")[3];
        Assert.Equal(("delay-5", "off", JsonValueKind.Null), (load.GetProperty("load").GetString(), load.GetProperty("state").GetString(), load.GetProperty("runsAfterSeconds").ValueKind));
        Assert.True(load.GetProperty("restarts").GetInt32() > 10);
        Assert.Equal(1, json.RootElement.GetProperty("outlets")[0].GetProperty("peakAmps").GetDouble(), 1e-6);
        Assert.Equal(["start-overload", "does-not-start"], json.RootElement.GetProperty("findings").EnumerateArray().Select(finding => finding.GetProperty("rule").GetString()));
        Assert.Equal("starts", json.RootElement.GetProperty("events")[0].GetProperty("kind").GetString());
    }

    /// <summary>delay-2 charges 220 µF, assumed, over 10 ms to 9 V: 198 mA, and 99 mA to 396 mA where it is half or double that.</summary>
    [Fact]
    public void A_peak_that_rests_on_an_assumed_capacitor_is_told_as_a_range()
    {
        const string Begin =
            """
            rig: a
            loads: { delay-2: { kind: digital, label: "9V DC 90mA centre negative", starts_below: 8.9 V, stops_below: 5 V
            """;
        const string End =
            """
             } }
            supplies: { brick: { isolated: true, outlets: { 1: 9 V 300 mA centre negative } } }
            wired: [ { from: brick/1, to: delay-2 } ]
            """;
        var assumed = Save(Begin + End);
        Assert.Matches(@"brick/1 +300 mA +99 mA to 300 mA +\S+ µs +0 s to 1[0-9.]+ ms\n", Run(0, "startup", assumed));
        Assert.Contains("The peak of brick/1 is a range: the charging of input capacitors decides it", Run(0, "startup", assumed), StringComparison.Ordinal);
        using (var json = JsonDocument.Parse(Run(0, "startup", assumed, "--json")))
        {
            var outlet = json.RootElement.GetProperty("outlets")[0];
            Assert.Equal(0.099, outlet.GetProperty("pulseAmps")[0].GetDouble(), 0.001);
            Assert.Equal(0.3, outlet.GetProperty("pulseAmps")[1].GetDouble(), 0.001);
            Assert.Equal(0, outlet.GetProperty("pulseSecondsOverLimit")[0].GetDouble());
            Assert.InRange(outlet.GetProperty("pulseSecondsOverLimit")[1].GetDouble(), 0.01, 0.02);
            Assert.Equal("input capacitance", outlet.GetProperty("pulseAssumed")[0].GetString());
        }

        var given = Save(Begin + ", input_capacitance: 220 µF" + End);
        Assert.DoesNotContain("range", Run(0, "startup", given), StringComparison.Ordinal);
        using var sure = JsonDocument.Parse(Run(0, "startup", given, "--json"));
        Assert.Equal(JsonValueKind.Null, sure.RootElement.GetProperty("outlets")[0].GetProperty("pulseAmps").ValueKind);
        Assert.Empty(sure.RootElement.GetProperty("outlets")[0].GetProperty("pulseAssumed").EnumerateArray());
    }

    [Fact]
    public void Waveforms_go_to_a_file_and_no_name_in_it_is_a_formula()
    {
        var rig = Save(
            """
            rig: a
            loads: { "=HYPERLINK(1)": { kind: digital, label: "9V DC 210mA centre negative" } }
            supplies: { wall: { outlets: { 1: 9 V 500 mA centre negative } } }
            wired: [ { from: wall/1, to: "=HYPERLINK(1)" } ]
            """);
        var csv = Path.Combine(_folder, "wave.csv");
        Run(0, "startup", rig, "--csv", csv);
        var lines = File.ReadAllLines(csv);
        Assert.Equal("time s,'=HYPERLINK(1) V,'=HYPERLINK(1) A,wall/1 V,wall/1 A", lines[0]);
        Assert.True(lines.Length > 600);
        Assert.All(lines[1..], line => Assert.All(line.Split(','), cell => double.Parse(cell, System.Globalization.CultureInfo.InvariantCulture)));
        Assert.InRange(double.Parse(lines[^1].Split(',')[1], System.Globalization.CultureInfo.InvariantCulture), 8.9, 9.0);
        Run(2, "startup", rig, "--csv", Path.Combine(_folder, "none", "wave.csv"));
    }

    [Fact]
    public void A_deck_can_be_written_to_a_file_for_the_steady_state()
    {
        var deck = Path.Combine(_folder, "rig.cir");
        Assert.Empty(Run(0, "netlist", Repository.PathOf("examples", "pit.rig.yaml"), "--steady", "--out", deck));
        var text = File.ReadAllText(deck);
        Assert.StartsWith("* Pit board, bass chair\n", text, StringComparison.Ordinal);
        Assert.EndsWith(".op\n.end\n", text, StringComparison.Ordinal);
        Assert.Contains("\n* outlet brick/5: 9 V, limit 500 mA\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rig_without_wiring_is_told_what_to_do()
    {
        var rig = Save(Unwired);
        Assert.Contains("loadmark plan", Run(1, "settle", rig), StringComparison.Ordinal);
        Assert.Contains("loadmark plan", Run(1, "startup", rig), StringComparison.Ordinal);
        Run(2, "netlist", rig);
    }

    [Fact]
    public void What_cannot_be_read_is_an_error()
    {
        foreach (var command in new[] { "settle", "startup", "netlist" })
        {
            Run(2, command);
            Run(2, command, Path.Combine(_folder, "none.yaml"));
        }
    }

    [Fact]
    public void Interrupted_they_say_so_by_their_code()
    {
        var rig = Repository.PathOf("examples", "chain-start.rig.yaml");
        Assert.Equal(130, ProgramRun.WithFiles(new CancellationToken(canceled: true), "settle", rig).Code);
        Assert.Equal(130, ProgramRun.WithFiles(new CancellationToken(canceled: true), "startup", rig).Code);
    }

    [Fact]
    public void Check_judges_the_circuit_too() =>
        Assert.Contains("does-not-start  delay-5, wall/1", Run(1, "check", Repository.PathOf("examples", "chain-start.rig.yaml")), StringComparison.Ordinal);

    private string Save(string text)
    {
        var path = Path.Combine(_folder, "board.rig.yaml");
        File.WriteAllText(path, text);
        return path;
    }

    private static string Run(int code, params string[] args)
    {
        var (exit, output) = ProgramRun.WithFiles(args);
        Assert.Equal(code, exit);
        return output;
    }
}
