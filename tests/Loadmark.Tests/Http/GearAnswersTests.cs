using System.Text;
using System.Text.Json;

namespace Loadmark.Tests.Http;

/// <summary>The gear library over HTTP answers to the letter as its commands answer, and as the document says.</summary>
public sealed class GearAnswersTests(SharedHost shared) : IClassFixture<SharedHost>, IAsyncLifetime
{
    private const string Gear = """
        loads:
          delay-2: { name: Delay with the long tail, kind: digital, label: "9V⎓ 300mA", run: 210 mA, words: [pit, spare] }
          drive-3: { kind: analog drive, label: "9V DC 12mA centre negative" }
          extra-1: { run: lots }
        supplies:
          brick: { isolated: true, total: 18 W, outlets: { 1-4: 9 V 150 mA, 5: 9 V 600 mA } }
        leads:
          long chain: { type: daisy chain, plugs: 5, tail: 1.2 m }
        """;

    private const string Table = "tag,name,label,run,words,shelf\ndelay-2,Delay with the long tail,9V⎓ 300mA,700 mA,,top\ndrive-3,,9V DC 12mA centre negative,,,\n";

    private const string Rig = """
        rig: Pit board
        loads:
          delay-2: { from: library }
          drive-3: { kind: analog drive, label: "9V DC 12mA centre negative", run: 10 mA }
        supplies:
          brick: { from: library }
        wired:
          - { from: brick/5, to: delay-2 }
          - { from: brick/1, to: drive-3 }
        """;

    private readonly string _files = Directory.CreateTempSubdirectory("loadmark-gear-").FullName;
    private RunningHost _host = null!;

    public async ValueTask InitializeAsync() => _host = await RunningHost.StartAsync(clock: new FixedClock());

    public async ValueTask DisposeAsync()
    {
        await _host.DisposeAsync();
        Directory.Delete(_files, recursive: true);
    }

    [Fact]
    public async Task From_a_file_to_the_rigs_that_a_new_figure_means_something_to()
    {
        // The commands do the same in a folder of their own; what only tells is also asked of the host's own folder while it is open.
        var elsewhere = Path.Combine(_files, "elsewhere");
        var (file, table, rig) = (await SaveAsync("gear.yaml", Gear), await SaveAsync("again.csv", Table), await SaveAsync("pit.rig.yaml", Rig));

        var preview = await AnswerAsync("GearTaken", await _host.PostAsync("/api/gear/import", Gear));
        Assert.Contains("\"added\":0,\"changed\":0,\"left\":0,\"same\":0,\"refused\":1", preview, StringComparison.Ordinal);
        Assert.Equal("{\"gear\":[]}\n", await AskAsync("GearList", "/api/gear"));
        AssertSame(Run(elsewhere, "gear", "import", file, "--json"), await AnswerAsync("GearTaken", await _host.PostAsync("/api/gear/import?take=new&file=gear.yaml", Gear)));
        AssertSame(
            Run(elsewhere, "gear", "add", "tuner-4", "9V 25mA", "--name", "Tuner", "--words", "pit, stage", "--json"),
            await AnswerAsync("GearShown", await _host.PostAsync("/api/gear?what=typed%20in", "loads: { tuner-4: { label: 9V 25mA, name: Tuner, words: [pit, stage] } }"), 201));
        AssertSame(
            Run(elsewhere, "gear", "measure", "delay-2", "--run", "212 mA", "--start", "520 mA for 1.5 s", "--meter", "1 % + 2 mA", "--note", "warm", "--json"),
            await AnswerAsync("GearMeasured", await _host.PostAsync(
                "/api/gear/load/delay-2/readings", JsonSerializer.Serialize(new { run = "212 mA", start = "520 mA for 1.5 s", meter = "1 % + 2 mA", note = "warm" }), "application/json")));
        Run(elsewhere, "rigs", "import", rig);
        using (var kept = await _host.PostAsync("/api/rigs", Rig))
            Assert.Equal(201, (int)kept.StatusCode);
        AssertSame(Run(elsewhere, "gear", "import", table, "--json"), await AnswerAsync("GearTaken", await _host.PostAsync("/api/gear/import?take=new&file=again.csv", Table, "text/csv")));
        AssertSame(Run(elsewhere, "gear", "import", table, "--take", "DELAY-2", "--json"), await AnswerAsync("GearTaken", await _host.PostAsync("/api/gear/import?take=DELAY-2&file=again.csv", Table, "text/csv")));

        foreach (var folder in (string[])[elsewhere, _host.Folder])
        {
            AssertSame(Run(folder, "gear", "list", "--json"), await AskAsync("GearList", "/api/gear"));
            AssertSame(Run(folder, "gear", "list", "dealy", "--json"), await AskAsync("GearList", "/api/gear?words=dealy"));
            AssertSame(Run(folder, "gear", "list", "--kind", "supply", "--json"), await AskAsync("GearList", "/api/gear?kind=supply"));
            AssertSame(Run(folder, "gear", "show", "delay-2", "--json"), await AskAsync("GearShown", "/api/gear/load/DELAY-2"));
            AssertSame(Run(folder, "gear", "show", "brick", "--json"), await AskAsync("GearShown", "/api/gear/supply/brick"));
            AssertSame(Run(folder, "gear", "show", "long chain", "--json"), await AskAsync("GearShown", "/api/gear/lead/long%20chain"));
        }

        var affected = await AskAsync("RigsAffected", "/api/gear/load/delay-2/affected");
        AssertSame(Run(_host.Folder, "rigs", "affected", "delay-2", "--json"), affected);
        Assert.Contains("\"verdictAfter\":\"fails\"", affected, StringComparison.Ordinal);
        AssertSame(Run(_host.Folder, "rigs", "affected", "drive-3", "--json"), await AskAsync("RigsAffected", "/api/gear/load/drive-3/affected"));
        Assert.Equal(affected, await LastEventAsync("/api/gear/load/delay-2/affected"));
        Assert.Contains("\"tag\":\"delay-2\"", await AskAsync("GearList", "/api/gear?most=1"), StringComparison.Ordinal);
        await AssertExportsAsync();
    }

    [Fact]
    public async Task A_rig_that_takes_gear_from_the_library()
    {
        using (var taken = await _host.PostAsync("/api/gear/import?take=new", Gear))
            Assert.True(taken.IsSuccessStatusCode);
        var path = await SaveAsync("pit.rig.yaml", Rig);
        foreach (var (address, command) in ((string, string[])[])[
            ($"/api/check?file={Uri.EscapeDataString(path)}", ["check", path, "--json"]), ("/api/plan", ["plan", path, "--json"]), ("/api/settle", ["settle", path, "--json"]),
            ("/api/startup", ["startup", path, "--json"]), ("/api/netlist", ["netlist", path])])
        {
            using var answer = await _host.PostAsync(address, Rig);
            var text = await answer.Content.ReadAsStringAsync(RunningHost.Stop);
            Assert.True(answer.IsSuccessStatusCode, text);
            AssertSame(Run(_host.Folder, command), text);
        }

        var prices = Repository.PathOf("examples", "harbour-row.prices.csv");
        using var bought = await _host.PostAsync("/api/buy", JsonSerializer.Serialize(new { rig = Rig, prices = await File.ReadAllTextAsync(prices, RunningHost.Stop) }), "application/json");
        AssertSame(Run(_host.Folder, "buy", path, "--prices", prices, "--json"), await bought.Content.ReadAsStringAsync(RunningHost.Stop));

        // A figure that changes in the library changes what is said of the rig.
        using (var measured = await _host.PostAsync("/api/gear/load/delay-2/readings", "{\"run\":\"900 mA\"}", "application/json"))
            Assert.True(measured.IsSuccessStatusCode);
        using var after = await _host.PostAsync("/api/check", Rig);
        Assert.Contains("\"rule\":\"outlet-overload\"", await after.Content.ReadAsStringAsync(RunningHost.Stop), StringComparison.Ordinal);

        // What is not there is told as the command tells it.
        var stranger = Rig.Replace("delay-2", "delay-20", StringComparison.Ordinal);
        using var refused = await _host.PostAsync("/api/check", stranger);
        var problem = await RunningHost.ProblemOfAsync(refused, 422, "unreadable");
        using var told = JsonDocument.Parse(Run(_host.Folder, "check", await SaveAsync("stranger.rig.yaml", stranger), "--json"));
        Assert.Equal(told.RootElement.GetProperty("errors").GetRawText(), problem.GetProperty("errors").GetRawText());
    }

    [Fact]
    public async Task Where_the_library_cannot_be_read_only_rigs_that_take_from_it_are_refused()
    {
        await using var closed = await RunningHost.StartAsync(opens: false);
        foreach (var question in (string[])["check", "plan", "netlist"])
            await RunningHost.ProblemOfAsync(await closed.PostAsync("/api/" + question, Rig), 503, "store");
        await RunningHost.ProblemOfAsync(await closed.PostAsync("/api/buy", JsonSerializer.Serialize(new { rig = Rig, prices = "" }), "application/json"), 503, "store");
        using var own = await closed.PostAsync("/api/check", "rig: library\nloads: { A: { label: 9V 10mA } }\n");
        Assert.Equal(200, (int)own.StatusCode);
        foreach (var address in (string[])["/api/gear", "/api/gear/export", "/api/gear/load/delay-2", "/api/gear/load/delay-2/affected"])
            await RunningHost.ProblemOfAsync(await closed.Client.GetAsync(address, RunningHost.Stop), 503, "store");
        await RunningHost.ProblemOfAsync(await closed.PostAsync("/api/gear/import?take=new", Gear), 503, "store");
    }

    private async Task AssertExportsAsync()
    {
        foreach (var (address, accept, name, kind) in ((string, string?, string, string?)[])[
            ("/api/gear/export", null, "all.yaml", null), ("/api/gear/export", "text/csv", "loads.csv", null), ("/api/gear/export?form=csv&kind=supply", "application/yaml", "supplies.csv", "supply"),
            ("/api/gear/export?form=yaml&kind=lead", "text/csv", "leads.yaml", "lead")])
        {
            var path = Path.Combine(_files, name);
            Run(_host.Folder, kind is null ? ["gear", "export", path] : ["gear", "export", path, "--kind", kind]);
            using var answer = await _host.SendAsync(HttpMethod.Get, address, accept: accept);
            Assert.Equal(name.EndsWith(".csv", StringComparison.Ordinal) ? "text/csv" : "application/yaml", answer.Content.Headers.ContentType?.ToString());
            var bytes = await answer.Content.ReadAsByteArrayAsync(RunningHost.Stop);
            Assert.True(bytes.Length > 20);
            Assert.Equal(await File.ReadAllBytesAsync(path, RunningHost.Stop), bytes);

            // What is exported is all known when it comes back.
            using var back = await _host.PostAsync("/api/gear/import", Encoding.UTF8.GetString(bytes), answer.Content.Headers.ContentType!.MediaType!);
            using var rows = JsonDocument.Parse(await back.Content.ReadAsStringAsync(RunningHost.Stop));
            Assert.Equal(rows.RootElement.GetProperty("rows").GetArrayLength(), rows.RootElement.GetProperty("same").GetInt32());
        }
    }

    private static void AssertSame(string command, string answer)
    {
        Assert.NotEmpty(command);
        Assert.Equal(command, answer);
    }

    private string Run(string folder, params string[] args)
    {
        var (code, output, error) = LibraryRun.In(folder, new FixedClock(), args);
        Assert.True(code is 0 or 1 || output.Length > 0, error);
        return output;
    }

    private async Task<string> LastEventAsync(string address)
    {
        using var answer = await _host.SendAsync(HttpMethod.Get, address, accept: "text/event-stream");
        var text = await answer.Content.ReadAsStringAsync(RunningHost.Stop);
        Assert.StartsWith("event: progress\ndata: {\"seconds\":", text, StringComparison.Ordinal);
        var last = text.TrimEnd('\n').Split("\n\n")[^1].Split('\n');
        Assert.Equal("event: answer", last[0]);
        return last[1]["data: ".Length..] + "\n";
    }

    private async Task<string> AskAsync(string shape, string address) => await AnswerAsync(shape, await _host.Client.GetAsync(address, RunningHost.Stop));

    private async Task<string> AnswerAsync(string shape, HttpResponseMessage answer, int status = 200)
    {
        using (answer)
        {
            var text = await answer.Content.ReadAsStringAsync(RunningHost.Stop);
            Assert.True(status == (int)answer.StatusCode, text);
            shared.Shapes.AssertFits(shape, text);
            return text;
        }
    }

    private async Task<string> SaveAsync(string name, string text)
    {
        var path = Path.Combine(_files, name);
        await File.WriteAllTextAsync(path, text, RunningHost.Stop);
        return path;
    }
}
