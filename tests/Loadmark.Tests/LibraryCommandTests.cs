using System.Text.Json;

namespace Loadmark.Tests;

/// <summary>The commands about the gear library and the rigs that are kept, on a real folder.</summary>
public sealed class LibraryCommandTests : IDisposable
{
    private const string Gear = """
        loads:
          delay-2: { name: Delay with the long tail, kind: digital, label: "9V⎓ 300mA", run: 210 mA, words: [pit, spare] }
          drive-3: { kind: analog drive, label: "9V DC 12mA centre negative" }
        supplies:
          brick: { isolated: true, total: 18 W, outlets: { 1-4: 9 V 150 mA, 5: 9 V 600 mA } }
        leads:
          long chain: { type: daisy chain, plugs: 5, tail: 1.2 m }
        """;

    private const string Rig = """
        rig: Pit board
        loads:
          delay-2: { from: library }   # the long one
          drive-3: { kind: analog drive, label: "9V DC 12mA centre negative" }
        supplies:
          brick: { from: library }
        wired:
          - { from: brick/5, to: delay-2 }
          - { from: brick/1, to: drive-3 }
        """;

    private int _runs;
    private readonly string _folder = Directory.CreateTempSubdirectory("loadmark-library-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void From_a_file_to_the_rigs_that_a_new_figure_means_something_to()
    {
        Expected.Matches("gear-import.txt", Run(0, "gear", "import", Save("gear.yaml", Gear)));
        Expected.Matches("gear-list.txt", Run(0, "gear", "list"));
        Expected.Matches("gear-list-dealy.txt", Run(0, "gear", "list", "dealy"));
        Assert.Equal("Kept: Pit board.\n", Run(0, "rigs", "import", Save("pit.rig.yaml", Rig)));
        Expected.Matches("rigs-list.txt", Run(0, "rigs", "list"));

        foreach (var reading in (string[])["208 mA", "212 mA", "211 mA", "209 mA", "2.1 A"])
            Run(0, "gear", "measure", "DELAY-2", "--run", reading, "--meter", "1 % + 2 mA", "--note", "warm");
        Expected.Matches("gear-measure.txt", Run(0, "gear", "measure", "delay-2", "--start", "520 mA for 1.5 s"));
        Expected.Matches("gear-show.txt", Run(0, "gear", "show", "delay-2"));
        Assert.Contains("no rig has other figures", Run(0, "rigs", "affected", "drive-3"), StringComparison.Ordinal);

        var again = Save("again.csv", "tag,name,label,run,words\ndelay-2,Delay with the long tail,9V⎓ 300mA,700 mA,\ndrive-3,,9V DC 12mA centre negative,,\nextra-1,,9V DC lots,lots,\n,,9V 10mA,,\ntuner-4,Tuner,9V 25mA,,\n");
        Expected.Matches("gear-import-differs.txt", Run(2, "gear", "import", again));
        Expected.Matches("gear-import-take.txt", Run(2, "gear", "import", again, "--take", "DELAY-2"));
        Expected.Matches("rigs-affected.txt", Run(1, "rigs", "affected", "delay-2"));
    }

    [Fact]
    public void The_same_in_JSON_in_SI_units()
    {
        using (var import = Json(0, "gear", "import", Save("gear.yaml", Gear)))
        {
            Assert.Equal(4, import.RootElement.GetProperty("added").GetInt32());
            Assert.Equal("new", import.RootElement.GetProperty("rows")[0].GetProperty("state").GetString());
        }

        Run(0, "rigs", "import", Save("pit.rig.yaml", Rig));
        using (var list = Json(0, "gear", "list", "delay 2"))
        {
            var first = list.RootElement.GetProperty("gear")[0];
            Assert.Equal(("delay-2", 0.21m, 1), (first.GetProperty("tag").GetString(), first.GetProperty("runAmps").GetDecimal(), first.GetProperty("rigs").GetInt32()));
        }

        using (var measured = Json(0, "gear", "measure", "delay-2", "--run", "700 mA", "--meter", "1 % + 2 mA"))
        {
            var running = measured.RootElement.GetProperty("running");
            Assert.Equal(0.7m, running.GetProperty("amps").GetDecimal());
            Assert.Equal(0.009 / Math.Sqrt(3), running.GetProperty("uncertaintyFromMeterAmps").GetDouble(), 1e-9);
        }

        using (var shown = Json(0, "gear", "show", "delay-2"))
        {
            Assert.Equal(2, shown.RootElement.GetProperty("changes").GetArrayLength());
            Assert.Equal("Pit board", shown.RootElement.GetProperty("rigs")[0].GetString());
        }

        using (var affected = Json(1, "rigs", "affected", "delay-2"))
        {
            var rig = affected.RootElement.GetProperty("affected")[0];
            Assert.Equal(("fails", "210 mA", "700 mA"), (rig.GetProperty("verdictAfter").GetString(), rig.GetProperty("differences")[0].GetProperty("before").GetString(), rig.GetProperty("differences")[0].GetProperty("after").GetString()));
            Assert.Contains(rig.GetProperty("newFindings").EnumerateArray(), finding => finding.GetProperty("rule").GetString() == "outlet-overload");
        }

        using var rigs = Json(0, "rigs", "list");
        Assert.Equal("Pit board", rigs.RootElement.GetProperty("rigs")[0].GetProperty("rig").GetString());
    }

    [Fact]
    public void A_rig_that_is_mailed_stands_alone()
    {
        Run(0, "gear", "import", Save("gear.yaml", Gear));
        Run(0, "rigs", "import", Save("pit.rig.yaml", Rig));
        var (mailed, linked) = (Path.Combine(_folder, "mailed.rig.yaml"), Path.Combine(_folder, "linked.rig.yaml"));
        Run(0, "rigs", "export", "pit board", mailed);
        Run(0, "rigs", "export", "Pit board", linked, "--linked");
        Assert.Equal(Rig, File.ReadAllText(linked));
        Assert.DoesNotContain("library", File.ReadAllText(mailed), StringComparison.Ordinal);
        Assert.Contains("# the long one", File.ReadAllText(mailed), StringComparison.Ordinal);
        Assert.Equal(Run(0, "check", linked).Replace("linked", "", StringComparison.Ordinal), Run(0, "check", mailed).Replace("mailed", "", StringComparison.Ordinal));

        // Elsewhere there is no library.
        var (code, output, error) = RunIn(Path.Combine(_folder, "nothing"), "check", linked);
        Assert.Equal((2, ""), (code, output));
        Assert.Contains("linked.rig.yaml:3:20: there is no gear library here to take 'delay-2' from", error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(_folder, "nothing")));
    }

    [Fact]
    public void What_is_exported_comes_back()
    {
        Run(0, "gear", "import", Save("gear.yaml", Gear));
        foreach (var name in (string[])["all.yaml", "loads.csv", "supplies.csv", "leads.tsv"])
        {
            var path = Path.Combine(_folder, name);
            string[] kind = name[0] == 'a' ? [] : ["--kind", name[..3] == "sup" ? "supply" : name[..4]];
            Run(0, ["gear", "export", path, .. kind]);
            using var import = Json(0, "gear", "import", path);
            var same = import.RootElement.GetProperty("same").GetInt32();
            Assert.Equal((import.RootElement.GetProperty("rows").GetArrayLength(), 0), (same, import.RootElement.GetProperty("added").GetInt32()));
            Assert.True(same > 0, name);
        }
    }

    [Fact]
    public void Gear_comes_from_a_rig_and_from_the_keyboard()
    {
        Expected.Matches("gear-add.txt", Run(0, "gear", "add", "delay-2", "9V DC 300mA", "--name", "Delay with the long tail", "--words", "pit, spare"));
        var rig = Save("board.rig.yaml", "rig: Board\nloads: { delay-2: { label: 9V DC 300mA, run: 210 mA }, drive-3: { label: 9V DC 12mA } }\nsupplies: { wall: { label: 9V 2A, outlets: { 1: } } }");
        using (var left = Json(0, "gear", "add", "--from", rig))
            Assert.Equal((2, 1), (left.RootElement.GetProperty("added").GetInt32(), left.RootElement.GetProperty("left").GetInt32()));
        using (var taken = Json(0, "gear", "add", "--from", rig, "--take-all"))
            Assert.Equal((1, 2), (taken.RootElement.GetProperty("changed").GetInt32(), taken.RootElement.GetProperty("same").GetInt32()));
        Run(0, "gear", "add", "spare", "9V 1A", "--kind", "supply");
        Assert.Contains("label               9V 1A", Run(0, "gear", "show", "spare"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("the library has no gear with the tag 'delay-20'. Did you mean delay-2?", "gear", "show", "delay-20")]
    [InlineData("the library has a load with the tag delay-2 already. Nothing was changed. See: loadmark gear show delay-2", "gear", "add", "DELAY-2", "9V 1A")]
    [InlineData("--run: expected a current such as 300 mA, found \"lots\"; it does not start with a number", "gear", "measure", "delay-2", "--run", "lots")]
    [InlineData("--meter: expected the meter's accuracy, such as \"1 % + 2 mA\", found \"good\"; it does not start with a number", "gear", "measure", "delay-2", "--run", "1 mA", "--meter", "good")]
    [InlineData("--kind: expected load, supply or lead, found 'pedal'.", "gear", "list", "--kind", "pedal")]
    [InlineData("gear needs to know what to do: list, show, add, measure, import, export.", "gear")]
    [InlineData("rigs needs to know what to do: list, import, export, affected.", "rigs")]
    [InlineData("gear measure needs one tag, and what the meter showed after --run or --start.", "gear", "measure", "delay-2")]
    [InlineData("There is no command lst. Did you mean list?", "gear", "lst")]
    [InlineData("there is no rig called 'Pit'. See: loadmark rigs list", "rigs", "export", "Pit", "x.yaml")]
    [InlineData("rigs affected needs the tag of one piece of gear.", "rigs", "affected")]
    public void What_cannot_be_done_is_told(string complaint, params string[] args)
    {
        Run(0, "gear", "import", Save("gear.yaml", Gear));
        var (code, output, error) = RunIn(_folder, args);
        Assert.Equal((2, ""), (code, output));
        Assert.StartsWith($"loadmark: {complaint}\n", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("gear", "list")]
    [InlineData("gear", "export", "x.yaml")]
    [InlineData("rigs", "list")]
    [InlineData("rigs", "affected", "delay-2")]
    public void A_folder_with_nothing_in_it_is_told_and_left_alone(params string[] args)
    {
        var (code, output, error) = RunIn(Path.Combine(_folder, "nothing"), args);
        Assert.Equal((2, ""), (code, output));
        Assert.Contains("nothing is kept in", error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(_folder, "nothing")));
    }

    private string Save(string name, string text)
    {
        var path = Path.Combine(_folder, name);
        File.WriteAllText(path, text);
        return path;
    }

    private JsonDocument Json(int code, params string[] args) => JsonDocument.Parse(Run(code, [.. args, "--json"]));

    private string Run(int code, params string[] args)
    {
        var (exit, output, error) = RunIn(Path.Combine(_folder, "kept"), args);
        Assert.True(code == exit, $"{exit} {error}");
        return output;
    }

    private (int Code, string Output, string Error) RunIn(string data, params string[] args) =>
        LibraryRun.In(data == _folder ? Path.Combine(_folder, "kept") : data, new FixedClock(_runs++), args);
}
