using System.Diagnostics;
using System.Net.Http.Headers;
using System.Text;
using Loadmark.Answers;
using Loadmark.Files;
using Loadmark.Serving;
using Loadmark.Simulation;
using Loadmark.Storage;

namespace Loadmark.Bench;

/// <summary>A question over HTTP beside the same question asked in this process, turn by turn in one run: what HTTP costs.</summary>
internal static class ApiBench
{
    private const int Rounds = 300;
    private const int WarmUp = 40;

    public static int Run()
    {
        var folder = Directory.CreateTempSubdirectory("loadmark-bench-").FullName;
        try
        {
            RunAsync(folder).GetAwaiter().GetResult();
            return 0;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static async Task RunAsync(string folder)
    {
        using var store = new Store(folder, TimeProvider.System);
        var opening = await store.OpenAsync();
        var settings = new HostSettings { Error = TextWriter.Null, Clock = TimeProvider.System };
        await using var app = ProgramHost.Build(0, store, opening, settings);
        await app.StartAsync();
        using var client = new HttpClient { BaseAddress = new Uri(app.Urls.First()) };
        client.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", settings.Key.Text);
        var table = new ResultTable(
            "Questions over HTTP",
            $"Release, one after the other on one connection to 127.0.0.1, the host in the same process; read, checked and written as JSON on both sides. {Rounds} rounds, turn by turn. {ResultTable.Machine}",
            "what", "in the process: median ms", "over HTTP: median ms", "95 % ms", "times the call");
        await CompareAsync(table, client, "read a label", "/api/read", "9V DC 300mA centre negative", "text/plain", Read);
        foreach (var name in (string[])["clean", "pit", "festival"])
            await CompareAsync(table, client, $"check {name}.rig.yaml", "/api/check", await File.ReadAllTextAsync($"examples/{name}.rig.yaml"), "application/yaml", Check);
        table.Write("api.md");
        await app.StopAsync();
    }

    private static void Read(string text)
    {
        using var output = new MemoryStream();
        NameplateJson.Write(output, [text]);
    }

    private static void Check(string text)
    {
        var rig = RigFileReader.Read(text, "").Rig!;
        using var output = new MemoryStream();
        CheckJson.Write(output, [new CheckAnswer("", RigAnalysis.Of(rig, AnalysisDepth.Verdict).Check, [])]);
    }

    private static async Task CompareAsync(ResultTable table, HttpClient client, string what, string address, string text, string mediaType, Action<string> call)
    {
        var (calls, requests) = (new List<double>(), new List<double>());
        for (var round = -WarmUp; round < Rounds; round++)
        {
            var clock = Stopwatch.StartNew();
            call(text);
            var one = clock.Elapsed.TotalMilliseconds;
            clock.Restart();
            using var body = new StringContent(text, Encoding.UTF8, new MediaTypeHeaderValue(mediaType));
            using var answer = await client.PostAsync(address, body);
            answer.EnsureSuccessStatusCode();
            await answer.Content.ReadAsByteArrayAsync();
            if (round < 0)
                continue;
            calls.Add(one);
            requests.Add(clock.Elapsed.TotalMilliseconds);
        }

        calls.Sort();
        requests.Sort();
        var (mine, theirs) = (calls[Rounds / 2], requests[Rounds / 2]);
        table.Add(what, $"{mine:F2}", $"{theirs:F2}", $"{requests[Rounds * 95 / 100]:F2}", $"{theirs / mine:F2}");
    }
}
