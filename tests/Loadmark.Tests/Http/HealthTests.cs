using System.Net;
using System.Text.Json;

namespace Loadmark.Tests.Http;

/// <summary>Whether the program says how it is.</summary>
public sealed class HealthTests
{
    [Fact]
    public async Task All_is_well()
    {
        await using var host = await RunningHost.StartAsync();
        using var answer = await host.Client.GetAsync("/healthz", RunningHost.Stop);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        var json = await AssertFitsAsync(host, answer);
        Assert.Equal("well", json.GetProperty("status").GetString());
        Assert.Equal(typeof(Serving.PageServer).Assembly.GetName().Version?.ToString(3), json.GetProperty("version").GetString());
        Assert.True(json.GetProperty("uptimeSeconds").GetDecimal() >= 0);
    }

    [Fact]
    public async Task A_store_that_cannot_be_opened_is_told_in_words_and_questions_are_answered_all_the_same()
    {
        await using var host = await RunningHost.StartAsync(opens: false);
        using var answer = await host.Client.GetAsync("/healthz", RunningHost.Stop);
        Assert.Equal(HttpStatusCode.ServiceUnavailable, answer.StatusCode);
        var json = await AssertFitsAsync(host, answer);
        Assert.Equal("ill", json.GetProperty("status").GetString());
        Assert.False(json.GetProperty("store").GetProperty("isOpen").GetBoolean());
        Assert.NotEmpty(json.GetProperty("store").GetProperty("trouble").GetString()!);

        await RunningHost.ProblemOfAsync(await host.Client.GetAsync("/api/rigs", RunningHost.Stop), 503, "store");
        await RunningHost.ProblemOfAsync(await host.PostAsync("/api/rigs", "rig: r"), 503, "store");
        Assert.True((await host.PostAsync("/api/check", "rig: r")).IsSuccessStatusCode);
    }

    private static async Task<JsonElement> AssertFitsAsync(RunningHost host, HttpResponseMessage answer)
    {
        var text = await answer.Content.ReadAsStringAsync(RunningHost.Stop);
        var shapes = await DocumentShapes.OfAsync(await host.Client.GetStringAsync("/api/openapi.json", RunningHost.Stop));
        shapes.AssertFits("Health", text);
        using var json = JsonDocument.Parse(text);
        return json.RootElement.Clone();
    }
}
