using System.Globalization;
using System.Text.Json;
using Loadmark.Api.Requests;

namespace Loadmark.Tests.Http;

/// <summary>
/// Requests made of the document itself and then spoiled, from a seed: no answer is a fault of the program, none is a status that the
/// document does not tell, every refusal is a problem and every answer of its shape. LOADMARK_FUZZ=N asks N of them.
/// </summary>
public sealed class FuzzTests
{
    private const int CommonCount = 500;

    /// <summary>The statuses of 500 and more that the document allows, and what they may be called.</summary>
    private static readonly Dictionary<int, string[]> Excused = new() { [503] = ["busy", "store"], [504] = ["out-of-time"] };

    [Theory]
    [InlineData(20_261_125)]
    public async Task No_request_makes_it_fail(int seed)
    {
        var count = int.TryParse(Environment.GetEnvironmentVariable("LOADMARK_FUZZ"), CultureInfo.InvariantCulture, out var asked) ? asked : CommonCount;
        await using var host = await RunningHost.StartAsync(
            new ApiLimits { LargestBody = 200_000, LongestSolve = TimeSpan.FromSeconds(5) }, new Serving.Logs.LogOptions { WithContent = true });
        var shapes = await DocumentShapes.OfAsync(await host.Client.GetStringAsync("/api/openapi.json", RunningHost.Stop));
        using var kept = await host.PostAsync("/api/rigs", "rig: r\nloads: { delay-2: { label: 9V 20mA } }\n");
        using var gear = await host.PostAsync("/api/gear", await File.ReadAllTextAsync(Repository.PathOf("src", "Loadmark", "Api", "Examples", "gear.yaml"), RunningHost.Stop));
        Assert.Equal(201, (int)gear.StatusCode);
        var requests = new SpoiledRequests(shapes, kept.Headers.Location!.ToString().Split('/')[^1], new Random(seed));
        var statuses = new SortedDictionary<int, int>();
        for (var number = 0; number < count; number++)
        {
            var (request, path, method, told) = requests.Next();
            using (request)
            {
                using var answer = await host.Client.SendAsync(request, RunningHost.Stop);
                var status = (int)answer.StatusCode;
                statuses[status] = statuses.GetValueOrDefault(status) + 1;
                await AssertSoundAsync(answer, shapes, path, method, $"seed {seed}, request {number}: {told} was answered {status}; {host.Log}");
            }
        }

        Assert.DoesNotContain("error:", host.Log, StringComparison.Ordinal);

        // What is only ever refused at the door tests nothing behind it.
        foreach (var status in (int[])[200, 400, 404, 405, 413, 415, 422])
            Assert.True(statuses.ContainsKey(status), $"{status} never came: {string.Join(", ", statuses)}");
        Assert.True(statuses[200] > count / 20, string.Join(", ", statuses));
        TestContext.Current.SendDiagnosticMessage(string.Join(", ", statuses));
    }

    private static async Task AssertSoundAsync(HttpResponseMessage answer, DocumentShapes shapes, string path, string method, string told)
    {
        var status = (int)answer.StatusCode;
        var mediaType = answer.Content.Headers.ContentType?.MediaType;
        var text = await answer.Content.ReadAsStringAsync(RunningHost.Stop);
        if (answer.RequestMessage!.Method == HttpMethod.Head || status == 204)
        {
            Assert.True(text.Length == 0, told);
            return;
        }

        var described = shapes.Document["paths"]![path]![method]?["responses"]?[status.ToString(CultureInfo.InvariantCulture)];
        Assert.True(described is not null || (status is 403 or 405 && shapes.Document["paths"]![path]![method] is null) || status == 404, $"{told}: not in the document");
        if (status < 400)
        {
            if (mediaType == "application/json")
                shapes.AssertFits(shapes.ShapeOf(path, method, status, mediaType), text);
            else
                Assert.True(described!["content"]![mediaType!] is not null, $"{told}: {mediaType}");
            return;
        }

        if (path == "/healthz" && status == 503)
            return;
        Assert.True(mediaType == "application/problem+json", $"{told}: {mediaType} {text}");
        shapes.AssertFits("Problem", text);
        using var problem = JsonDocument.Parse(text);
        var kind = problem.RootElement.GetProperty("type").GetString()!.Split('/')[^1];
        Assert.True(status < 500 || (Excused.TryGetValue(status, out var kinds) && kinds.Contains(kind)), $"{told}: {text}");
    }
}
