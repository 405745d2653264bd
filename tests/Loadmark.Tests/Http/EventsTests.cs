using System.Net.ServerSentEvents;
using System.Text.Json;
using Loadmark.Api.Requests;

namespace Loadmark.Tests.Http;

/// <summary>Long answers come as events: progress, and then the answer or the problem.</summary>
public sealed class EventsTests
{
    private static readonly string Festival = File.ReadAllText(Repository.PathOf("examples", "festival.rig.yaml"));

    [Fact]
    public async Task A_plan_tells_how_far_it_has_come_and_then_what_the_plain_answer_says()
    {
        await using var host = await RunningHost.StartAsync(new ApiLimits { EventPause = TimeSpan.FromMilliseconds(5) });
        var shapes = await DocumentShapes.OfAsync(await host.Client.GetStringAsync("/api/openapi.json", RunningHost.Stop));
        var events = await EventsAsync(host, "/api/plan", Festival);
        Assert.True(events.Count > 2, $"{events.Count} events");
        Assert.All(events.SkipLast(1), told =>
        {
            Assert.Equal("progress", told.EventType);
            shapes.AssertFits("Progress", told.Data);
        });
        Assert.Contains(events, static told => told.Data.Contains("\"level\":", StringComparison.Ordinal));
        Assert.Equal("answer", events[^1].EventType);
        using var plain = await host.PostAsync("/api/plan", Festival);
        Assert.Equal((await plain.Content.ReadAsStringAsync(RunningHost.Stop)).TrimEnd('\n'), events[^1].Data);
    }

    [Fact]
    public async Task Samples_and_purchases_tell_how_far_they_have_come()
    {
        await using var host = await RunningHost.StartAsync(new ApiLimits { EventPause = TimeSpan.FromMilliseconds(1) });
        var shapes = await DocumentShapes.OfAsync(await host.Client.GetStringAsync("/api/openapi.json", RunningHost.Stop));
        var samples = await EventsAsync(host, "/api/settle?spread=2000", Festival);
        Assert.Contains(samples, static told => told.EventType == "progress" && told.Data.Contains("\"done\":", StringComparison.Ordinal));
        var body = JsonSerializer.Serialize(new
        {
            rig = File.ReadAllText(Repository.PathOf("examples", "to-buy.rig.yaml")),
            prices = File.ReadAllText(Repository.PathOf("examples", "harbour-row.prices.csv")),
        });
        var purchase = await EventsAsync(host, "/api/buy", body, "application/json");
        Assert.Contains(purchase, static told => told.EventType == "progress" && told.Data.Contains("\"leastPrice\":", StringComparison.Ordinal));
        foreach (var told in samples.Concat(purchase).Where(static told => told.EventType == "progress"))
            shapes.AssertFits("Progress", told.Data);
        shapes.AssertFits("Purchases", purchase[^1].Data);
    }

    [Fact]
    public async Task What_goes_wrong_on_the_way_is_an_event_and_what_goes_wrong_before_is_not()
    {
        await using var host = await RunningHost.StartAsync(new ApiLimits { LongestSolve = TimeSpan.FromMilliseconds(1) });
        var events = await EventsAsync(host, "/api/startup", Festival);
        Assert.Equal("problem", events[^1].EventType);
        using var problem = JsonDocument.Parse(events[^1].Data);
        Assert.Equal("/api/problems/out-of-time", problem.RootElement.GetProperty("type").GetString());
        using var unreadable = await host.PostAsync("/api/plan", "rig: [", accept: "text/event-stream");
        await RunningHost.ProblemOfAsync(unreadable, 422, "unreadable");
    }

    private static async Task<List<SseItem<string>>> EventsAsync(RunningHost host, string address, string body, string mediaType = "application/yaml")
    {
        using var answer = await host.PostAsync(address, body, mediaType, "text/event-stream");
        Assert.Equal("text/event-stream", answer.Content.Headers.ContentType?.MediaType);
        var events = new List<SseItem<string>>();
        await foreach (var told in SseParser.Create(await answer.Content.ReadAsStreamAsync(RunningHost.Stop)).EnumerateAsync(RunningHost.Stop))
            events.Add(told);
        return events;
    }
}
