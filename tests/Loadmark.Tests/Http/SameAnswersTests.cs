using System.Text;
using System.Text.Json;

namespace Loadmark.Tests.Http;

/// <summary>Over HTTP each question is answered to the letter as its command answers it, and as the document says.</summary>
public sealed class SameAnswersTests(SharedHost shared) : IClassFixture<SharedHost>
{
    private RunningHost Host => shared.Host;

    public static TheoryData<string> Rigs => [.. Directory.EnumerateFiles(Repository.PathOf("examples"), "*.rig.yaml").Select(static path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Rigs))]
    public async Task A_rig(string name)
    {
        var path = Repository.PathOf("examples", name);
        var text = await File.ReadAllTextAsync(path, RunningHost.Stop);
        var file = "file=" + Uri.EscapeDataString(path);
        await AssertSameAsync($"/api/check?{file}", text, "check", path, "--json");
        await AssertSameAsync($"/api/check?startup&{file}", text, "check", path, "--startup", "--json");
        await AssertSameAsync("/api/plan", text, "plan", path, "--json");
        await AssertSameAsync("/api/settle", text, "settle", path, "--json");
        await AssertSameAsync("/api/settle?spread=30&seed=7", text, "settle", path, "--spread", "30", "--seed", "7", "--json");
        await AssertSameAsync("/api/startup", text, "startup", path, "--json");
        await AssertSameAsync("/api/startup?spread=3", text, "startup", path, "--spread", "3", "--json");
        await AssertSameAsync("/api/netlist", text, "netlist", path);
        await AssertSameAsync("/api/netlist?steady=true", text, "netlist", path, "--steady");
    }

    [Fact]
    public async Task A_plan_with_some_supplies_only()
    {
        // A small rig: what stands in the way of a large one is looked for as long as there is time, and that is not the same twice.
        var path = Repository.PathOf("examples", "abroad.rig.yaml");
        var text = await File.ReadAllTextAsync(path, RunningHost.Stop);
        var supply = Files.RigFileReader.Read(text, "").Rig!.Supplies.Items.First().Id;
        await AssertSameAsync($"/api/plan?only={Uri.EscapeDataString(supply)}", text, "plan", path, "--only", supply, "--json");
    }

    [Fact]
    public async Task A_rig_as_JSON()
    {
        var text = File.ReadAllText(Repository.PathOf("src", "Loadmark", "Api", "Examples", "board.rig.json"));
        var path = Path.Combine(Directory.CreateTempSubdirectory("loadmark-json-").FullName, "board.rig.json");
        await File.WriteAllTextAsync(path, text, RunningHost.Stop);
        using var answer = await Host.PostAsync("/api/settle", text, "application/json; charset=\"UTF-8\"");
        var expected = ProgramRun.WithFiles("settle", path, "--json").Output;
        Assert.Equal(expected, await answer.Content.ReadAsStringAsync(RunningHost.Stop));
        using var quoted = await Host.PostAsync("/api/settle", " \r\n" + JsonSerializer.Serialize(text), "application/json");
        Assert.Equal(expected, await quoted.Content.ReadAsStringAsync(RunningHost.Stop));
        Directory.Delete(Path.GetDirectoryName(path)!, recursive: true);
    }

    [Theory]
    [InlineData("", "")]
    [InlineData("?room=9%20V%20300%20mA&all", "9 V 300 mA")]
    public async Task A_purchase(string query, string room)
    {
        var rig = Repository.PathOf("examples", "clean.rig.yaml");
        using var answer = await Host.PostAsync("/api/buy" + query, await PurchaseOfAsync(rig), "application/json");
        var json = await answer.Content.ReadAsStringAsync(RunningHost.Stop);
        string[] more = room.Length == 0 ? [] : ["--room", room, "--all"];
        Assert.Equal(ProgramRun.WithFiles(["buy", rig, "--prices", Prices, "--json", .. more]).Output, json);
        shared.Shapes.AssertFits("Purchases", json);
    }

    /// <summary>What ends at a time limit may be proven one time and not the next, so only its shape is looked at.</summary>
    [Fact]
    public async Task A_purchase_for_many_loads()
    {
        using var answer = await Host.PostAsync("/api/buy", await PurchaseOfAsync(Repository.PathOf("examples", "to-buy.rig.yaml")), "application/json");
        var json = await answer.Content.ReadAsStringAsync(RunningHost.Stop);
        shared.Shapes.AssertFits("Purchases", json);
        using var purchases = JsonDocument.Parse(json);
        Assert.NotEqual(0, purchases.RootElement.GetProperty("options").GetArrayLength());
    }

    [Fact]
    public async Task Labels()
    {
        var labels = File.ReadLines(Repository.PathOf("examples", "festival.rig.yaml")).Where(static line => line.Contains("label:", StringComparison.Ordinal))
            .Select(static line => line[(line.IndexOf("label:", StringComparison.Ordinal) + 7)..]).Append("18 W 9V AC 0,3 A ctr+ ?").Append("«prüf» 音").ToList();
        var lines = string.Concat(labels.Select(label => ProgramRun.WithFiles("read", "--json", "--", label).Output));

        using var asLines = await Host.PostAsync("/api/read", string.Join("\r\n\n", labels), "text/plain", "application/x-ndjson");
        Assert.Equal("application/x-ndjson", asLines.Content.Headers.ContentType?.ToString());
        Assert.Equal(lines, await asLines.Content.ReadAsStringAsync(RunningHost.Stop));

        using var asList = await Host.PostAsync("/api/read", JsonSerializer.Serialize(new { texts = labels }), "application/json");
        var json = await asList.Content.ReadAsStringAsync(RunningHost.Stop);
        Assert.Equal($"[{string.Join(',', lines.Split('\n', StringSplitOptions.RemoveEmptyEntries))}]\n", json);
        shared.Shapes.AssertFits("Readings", json);
    }

    [Fact]
    public async Task What_cannot_be_read_is_told_with_the_commands_list_of_errors()
    {
        const string text = "rig: r\nsupplies:\n  wall: { isolatd: true, outlets: { 1: 9 V 1 A } }\nloads:\n  A: { current: lots }\n";
        var path = Path.GetTempFileName();
        await File.WriteAllTextAsync(path, text, RunningHost.Stop);
        var (code, output) = ProgramRun.WithFiles("check", path, "--json");
        Assert.Equal(2, code);
        foreach (var question in (string[])["check", "plan", "settle", "startup", "netlist"])
        {
            using var answer = await Host.PostAsync("/api/" + question, text);
            var problem = await RunningHost.ProblemOfAsync(answer, 422, "unreadable");
            shared.Shapes.AssertFits("Problem", problem.GetRawText());
            using var told = JsonDocument.Parse(output);
            Assert.Equal(told.RootElement.GetProperty("errors").GetRawText(), problem.GetProperty("errors").GetRawText());
            Assert.Equal("isolated", problem.GetProperty("errors")[0].GetProperty("suggestion").GetString());
        }

        using var bought = await Host.PostAsync("/api/buy", JsonSerializer.Serialize(new { rig = text, prices = "supply;price\nX;dear" }), "application/json");
        var both = await RunningHost.ProblemOfAsync(bought, 422, "unreadable");
        shared.Shapes.AssertFits("Problem", both.GetRawText());
        Assert.NotEqual(0, both.GetProperty("priceErrors").GetArrayLength());
        Assert.Equal(2, both.GetProperty("errors").GetArrayLength());
        File.Delete(path);
    }

    private static string Prices => Repository.PathOf("examples", "harbour-row.prices.csv");

    private static async Task<string> PurchaseOfAsync(string rig) => JsonSerializer.Serialize(new
    {
        rig = await File.ReadAllTextAsync(rig, RunningHost.Stop),
        prices = await File.ReadAllTextAsync(Prices, RunningHost.Stop),
    });

    private async Task AssertSameAsync(string address, string body, params string[] command)
    {
        var (code, expected) = ProgramRun.WithFiles(command);
        using var answer = await Host.PostAsync(address, body);
        var text = await answer.Content.ReadAsStringAsync(RunningHost.Stop);
        if (code == 2)
        {
            Assert.Equal(422, (int)answer.StatusCode);
            shared.Shapes.AssertFits("Problem", text);
            return;
        }

        Assert.Equal(expected, text);
        var mediaType = answer.Content.Headers.ContentType!.MediaType!;
        if (mediaType == "application/json")
            shared.Shapes.AssertFits(shared.Shapes.ShapeOf(address.Split('?')[0], "post", 200, mediaType), text);
        else
            Assert.Equal(Encoding.UTF8.GetByteCount(expected), answer.Content.Headers.ContentLength);
    }
}
