using System.Text;
using System.Text.Json;

namespace Loadmark.Tests.Http;

/// <summary>What is refused, and that each refusal is a problem that says why.</summary>
public sealed class RefusalTests(SharedHost shared) : IClassFixture<SharedHost>
{
    private const string Rig = "rig: r\nsupplies:\n  brick: { outlets: { 1: 9 V 100 mA } }\n";

    private RunningHost Host => shared.Host;

    [Theory]
    [InlineData("/api/plan?onyl=brick", "Did you mean only?")]
    [InlineData("/api/plan?Only=brick", "Did you mean only?")]
    [InlineData("/api/netlist?startup", "There is no option 'startup' here.")]
    [InlineData("/api/check?startup=yes", "startup: expected true or false, found 'yes'.")]
    [InlineData("/api/check?startup&startup", "startup: given 2 times")]
    [InlineData("/api/settle?spread=many", "spread: expected a whole number from 0, found 'many'.")]
    [InlineData("/api/settle?spread=0", "spread takes the number of samples, 1 to 100000, not 0.")]
    [InlineData("/api/settle?spread=99999999999999999999", "spread: expected")]
    [InlineData("/api/settle?seed=3", "seed needs spread N")]
    [InlineData("/api/settle?spread=-1", "spread: expected")]
    [InlineData("/api/plan?only=brik", "only: there is no supply 'brik' in the rig. Did you mean 'brick'?")]
    public async Task An_option_that_cannot_be_used(string address, string detail)
    {
        var problem = await RunningHost.ProblemOfAsync(await Host.PostAsync(address, Rig), 400, "bad-request");
        Assert.Contains(detail, problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
        shared.Shapes.AssertFits("Problem", problem.GetRawText());
    }

    [Theory]
    [InlineData("/api/check", "text/plain")]
    [InlineData("/api/check", "application/x-www-form-urlencoded")]
    [InlineData("/api/check", "application/yaml; charset=utf-16")]
    [InlineData("/api/check", "application/yaml; charset=\"iso-8859-1\"")]
    [InlineData("/api/check", "")]
    [InlineData("/api/buy", "application/yaml")]
    [InlineData("/api/rigs", "text/yaml")]
    public async Task A_body_of_another_kind(string address, string mediaType)
    {
        using var content = new ByteArrayContent(Encoding.UTF8.GetBytes(Rig));
        if (mediaType.Length > 0)
            content.Headers.TryAddWithoutValidation("Content-Type", mediaType);
        await RunningHost.ProblemOfAsync(await Host.Client.PostAsync(address, content, RunningHost.Stop), 415, "unsupported-media-type");
    }

    [Fact]
    public async Task A_compressed_body()
    {
        using var content = new StringContent(Rig, Encoding.UTF8, "application/yaml");
        content.Headers.ContentEncoding.Add("gzip");
        await RunningHost.ProblemOfAsync(await Host.Client.PostAsync("/api/check", content, RunningHost.Stop), 415, "unsupported-media-type");
    }

    [Theory]
    [InlineData("/api/read", "{\"texts\":[1]}")]
    [InlineData("/api/read", "{\"texts\":\"9 V\"}")]
    [InlineData("/api/read", "{\"texts\":[\"9 V\"],\"more\":1}")]
    [InlineData("/api/read", "{\"texts\":[\"9 V\"],\"texts\":[]}")]
    [InlineData("/api/read", "{\"texts\":[\"\\ud800\"]}")]
    [InlineData("/api/read", "{\"\\ud800\":[]}")]
    [InlineData("/api/read", "[]")]
    [InlineData("/api/read", "")]
    [InlineData("/api/read", "{\"texts\":[\"9 V\"]} x")]
    [InlineData("/api/buy", "{\"rig\":\"rig: r\"}")]
    [InlineData("/api/buy", "{\"rig\":\"rig: r\",\"prices\":null}")]
    [InlineData("/api/buy", "null")]
    [InlineData("/api/check", "\"rig: r")]
    [InlineData("/api/check", "\"rig: r\" 1")]
    [InlineData("/api/check", "\"rig: \\ud800\"")]
    public async Task JSON_that_is_not_as_asked_for(string address, string body) =>
        await RunningHost.ProblemOfAsync(await Host.PostAsync(address, body, "application/json"), 400, "bad-request");

    [Fact]
    public async Task A_room_that_tells_nothing()
    {
        var body = JsonSerializer.Serialize(new { rig = Rig, prices = File.ReadAllText(Repository.PathOf("examples", "harbour-row.prices.csv")) });
        var problem = await RunningHost.ProblemOfAsync(await Host.PostAsync("/api/buy?room=soon", body, "application/json"), 400, "bad-request");
        Assert.StartsWith("room: 'soon' does not tell", problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Bytes_that_are_no_text()
    {
        foreach (var bytes in (byte[][])[[0xC3, 0x28], [0xFF, 0xFE, 0x41, 0x00], [0], []])
        {
            using var content = new ByteArrayContent(bytes);
            content.Headers.ContentType = new("application/yaml");
            await RunningHost.ProblemOfAsync(await Host.Client.PostAsync("/api/check", content, RunningHost.Stop), 422, "unreadable");
        }
    }

    [Fact]
    public async Task A_rig_without_wiring_has_no_circuit() => await RunningHost.ProblemOfAsync(await Host.PostAsync("/api/netlist", Rig), 422, "no-wiring");

    [Theory]
    [InlineData("GET", "/api/check", "POST")]
    [InlineData("PATCH", "/api/rigs", "GET, HEAD, POST")]
    [InlineData("TRACE", "/healthz", "GET, HEAD")]
    public async Task A_method_that_the_address_does_not_take(string method, string address, string allowed)
    {
        using var request = new HttpRequestMessage(new HttpMethod(method), address);
        using var answer = await Host.Client.SendAsync(request, RunningHost.Stop);
        await RunningHost.ProblemOfAsync(answer, 405, "method-not-allowed");
        Assert.Equal(allowed, string.Join(", ", answer.Content.Headers.Allow.Order(StringComparer.Ordinal)));
    }

    [Theory]
    [InlineData("Host", "rigs.example", 400, "bad-request")]
    [InlineData("Origin", "http://rigs.example", 403, "refused")]
    [InlineData("Origin", "null", 403, "refused")]
    [InlineData("Origin", "http://127.0.0.1:1", 403, "refused")]
    [InlineData("Sec-Fetch-Site", "cross-site", 403, "refused")]
    [InlineData("Sec-Fetch-Site", "same-site", 403, "refused")]
    public async Task Another_addresss_page(string header, string value, int status, string kind)
    {
        foreach (var (address, mediaType) in ((string, string)[])[("/api/check", "application/yaml"), ("/api/read", "text/plain"), ("/api/rigs", "application/json")])
        {
            using var request = new HttpRequestMessage(HttpMethod.Post, address) { Content = new StringContent(Rig, Encoding.UTF8, mediaType) };
            request.Headers.TryAddWithoutValidation(header, value);
            using var answer = await Host.Client.SendAsync(request, RunningHost.Stop);
            var problem = await RunningHost.ProblemOfAsync(answer, status, kind);
            shared.Shapes.AssertFits("Problem", problem.GetRawText());
            Assert.False(answer.Headers.Contains("Access-Control-Allow-Origin"));
        }
    }

    [Fact]
    public async Task A_browsers_question_for_leave_is_not_granted()
    {
        using var request = new HttpRequestMessage(HttpMethod.Options, "/api/check");
        request.Headers.TryAddWithoutValidation("Origin", "http://rigs.example");
        request.Headers.TryAddWithoutValidation("Access-Control-Request-Method", "POST");
        request.Headers.TryAddWithoutValidation("Access-Control-Request-Headers", "content-type");
        using var answer = await Host.Client.SendAsync(request, RunningHost.Stop);
        await RunningHost.ProblemOfAsync(answer, 403, "refused");
        Assert.DoesNotContain(answer.Headers, static header => header.Key.StartsWith("Access-Control", StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public async Task Answers_say_what_a_browser_may_do_with_them()
    {
        using var answer = await Host.PostAsync("/api/check", Rig);
        Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
        Assert.Equal("same-origin", Assert.Single(answer.Headers.GetValues("Cross-Origin-Resource-Policy")));
        Assert.Equal("no-store", answer.Headers.CacheControl?.ToString());
    }
}
