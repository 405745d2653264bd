using System.Text;
using System.Text.Json;
using Loadmark.Serving.Logs;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace Loadmark.Tests.Http;

/// <summary>The log finds what happened by its id, and holds nothing of a rig unless asked for.</summary>
public sealed class LogTests
{
    private const string Secret = "QUAYSIDE-7731";

    private static readonly string Rig =
        $$"""
        rig: {{Secret}} board
        loads:
          {{Secret}}: { name: "{{Secret}}", kind: analog drive, label: "9V DC 12mA {{Secret}}" }
        supplies:
          brick{{Secret}}: { outlets: { 1: 9 V 100 mA } }
        wired:
          - { from: brick{{Secret}}/1, to: {{Secret}} }
        """;

    [Theory]
    [InlineData("json")]
    [InlineData("text")]
    public async Task Nothing_of_a_rig_is_in_the_log_whatever_happens(string form)
    {
        await using var host = await RunningHost.StartAsync(log: LogOptions.Read(form, withContent: false), more: Break);
        var ids = await DriveAsync(host);
        var log = host.Log;
        Assert.DoesNotContain(Secret, log, StringComparison.OrdinalIgnoreCase);
        Assert.NotEmpty(ids);
        foreach (var id in form == "json" ? ids : ids.TakeLast(3))
            Assert.Contains(id, log, StringComparison.Ordinal);
        Assert.Contains("InvalidOperationException", log, StringComparison.Ordinal);
        Assert.Contains(nameof(LogTests), log, StringComparison.Ordinal); // where it happened
    }

    [Fact]
    public async Task Content_is_in_the_log_when_asked_for()
    {
        await using var host = await RunningHost.StartAsync(log: new LogOptions { Form = LogForm.Json, WithContent = true }, more: Break);
        await DriveAsync(host);
        Assert.Contains(Secret, host.Log, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Each_request_is_a_line_with_its_id_and_the_pattern_of_its_address()
    {
        await using var host = await RunningHost.StartAsync();
        var problem = await RunningHost.ProblemOfAsync(await host.Client.GetAsync($"/api/rigs/{Guid.NewGuid()}", RunningHost.Stop), 404, "not-found");
        var line = Assert.Single(await LinesAsync(host, 1));
        Assert.Equal(problem.GetProperty("id").GetString(), line.GetProperty("id").GetString());
        Assert.Equal("GET", line.GetProperty("method").GetString());
        Assert.Equal("/api/rigs/{id:guid}", line.GetProperty("route").GetString());
        Assert.Equal(404, line.GetProperty("status").GetInt32());
        Assert.Equal("information", line.GetProperty("level").GetString());
        Assert.True(line.GetProperty("milliseconds").GetInt64() >= 0);
        Assert.True(DateTimeOffset.TryParse(line.GetProperty("time").GetString(), out _));
    }

    [Fact]
    public async Task A_fault_is_answered_with_an_id_that_its_line_has()
    {
        await using var host = await RunningHost.StartAsync(more: Break);
        var problem = await RunningHost.ProblemOfAsync(await host.Client.GetAsync("/api/broken", RunningHost.Stop), 500, "fault");
        Assert.DoesNotContain(Secret, problem.GetRawText(), StringComparison.Ordinal);
        using var page = await host.Client.GetAsync("/broken", RunningHost.Stop);
        Assert.Equal(500, (int)page.StatusCode);
        var html = await page.Content.ReadAsStringAsync(RunningHost.Stop);
        Assert.DoesNotContain(Secret, html, StringComparison.Ordinal);

        var faults = (await LinesAsync(host, 4)).Where(static line => line.GetProperty("level").GetString() == "error").ToList();
        Assert.Equal(2, faults.Count);
        Assert.Equal(problem.GetProperty("id").GetString(), faults[0].GetProperty("id").GetString());
        Assert.Contains($"<strong>{faults[1].GetProperty("id").GetString()}</strong>", html, StringComparison.Ordinal);
        Assert.Contains("System.InvalidOperationException", faults[0].GetProperty("fault").GetString(), StringComparison.Ordinal);
        Assert.Contains("System.FormatException", faults[0].GetProperty("fault").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_first_page_shows_the_id_that_its_request_has_in_the_log()
    {
        await using var host = await RunningHost.StartAsync();
        var html = await host.Client.GetStringAsync("/", RunningHost.Stop);
        var line = Assert.Single(await LinesAsync(host, 1));
        Assert.Contains($"by this id: {line.GetProperty("id").GetString()}", html, StringComparison.Ordinal);
    }

    /// <summary>Addresses that fail as the program never should: with the text that was sent in the fault's message.</summary>
    private static void Break(WebApplication app)
    {
        app.MapGet("/api/broken", static (HttpContext _) => Fail());
        app.MapGet("/broken", static (HttpContext _) => Fail());
        app.MapPost("/api/broken", static async (HttpContext context) =>
        {
            using var reader = new StreamReader(context.Request.Body);
            var text = await reader.ReadToEndAsync(RunningHost.Stop);
            var log = context.RequestServices.GetRequiredService<ILoggerFactory>().CreateLogger("Some.Library");
            using (log.BeginScope(new Dictionary<string, object?> { ["Path"] = text, ["id"] = context.TraceIdentifier }))
                log.Log(LogLevel.Error, new EventId(7), new[] { KeyValuePair.Create<string, object?>("Text", text), new("{OriginalFormat}", "The text {Text} is odd") }, new FormatException(text), (_, _) => $"The text {text} is odd");
            throw new InvalidOperationException(text, new FormatException(text));
        });
    }

    private static IResult Fail() => throw new InvalidOperationException($"There is no {Secret}", new FormatException(Secret));

    /// <summary>Does all that can be done with a rig, and a few things that cannot.</summary>
    private static async Task<List<string>> DriveAsync(RunningHost host)
    {
        var ids = new List<string>();
        foreach (var question in (string[])["check", "plan", "settle?spread=3", "startup", "netlist"])
            Assert.True((await host.PostAsync($"/api/{question}", Rig)).IsSuccessStatusCode);
        using var kept = await host.PostAsync("/api/rigs", Rig);
        using var rig = JsonDocument.Parse(await kept.Content.ReadAsStringAsync(RunningHost.Stop));
        var address = $"/api/rigs/{rig.RootElement.GetProperty("id").GetString()}";
        using var late = new HttpRequestMessage(HttpMethod.Put, $"{address}?what={Secret}") { Content = new StringContent(Rig + "\n# " + Secret, Encoding.UTF8, "application/yaml") };
        late.Headers.TryAddWithoutValidation("If-Match", "\"9\"");
        await host.Client.GetAsync($"/rig/{rig.RootElement.GetProperty("id").GetString()}/file", RunningHost.Stop);
        await host.Client.GetAsync($"/rig/{Secret}", RunningHost.Stop);
        await host.Client.GetAsync($"/{Secret}?{Secret}={Secret}", RunningHost.Stop);
        await host.PostAsync("/api/read", Secret, "text/plain");
        using var strange = new HttpRequestMessage(new HttpMethod(Secret), "/api/check");
        foreach (var answer in new[]
        {
            await host.PostAsync("/api/check", $"rig: {Secret}\n{Secret}: 1"),
            await host.PostAsync($"/api/check?{Secret}", Rig),
            await host.PostAsync($"/api/plan?only={Secret}", Rig),
            await host.PostAsync("/api/buy", JsonSerializer.Serialize(new { rig = Rig, prices = Secret }), "application/json"),
            await host.PostAsync("/api/check", Rig, $"application/{Secret}"),
            await host.Client.SendAsync(late, RunningHost.Stop),
            await host.Client.SendAsync(strange, RunningHost.Stop),
            await host.Client.GetAsync($"/api/{Secret}", RunningHost.Stop),
            await host.PostAsync("/api/broken", Rig),
            await host.Client.GetAsync("/api/broken", RunningHost.Stop),
            await host.PostAsync($"/api/broken?{Secret}", Secret),
        })
        {
            Assert.False(answer.IsSuccessStatusCode);
            using var problem = JsonDocument.Parse(await answer.Content.ReadAsStringAsync(RunningHost.Stop));
            ids.Add(problem.RootElement.GetProperty("id").GetString()!);
        }

        return ids;
    }

    private static async Task<List<JsonElement>> LinesAsync(RunningHost host, int count)
    {
        for (var tries = 0; tries < 200 && host.Log.Count(static letter => letter == '\n') < count; tries++)
            await Task.Delay(20, RunningHost.Stop); // a request's line is written after its answer
        return [.. host.Log.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(static line =>
        {
            using var json = JsonDocument.Parse(line);
            return json.RootElement.Clone();
        })];
    }
}
