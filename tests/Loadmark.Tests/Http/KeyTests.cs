using System.Net;
using System.Net.Http.Headers;
using System.Text;
using Loadmark.Serving.Logs;
using Loadmark.Web.Guarding;
using Microsoft.AspNetCore.Builder;

namespace Loadmark.Tests.Http;

/// <summary>Every account of a machine reaches its loopback address: without the key nobody gets anything, and other pages cannot use a browser that has it.</summary>
public sealed class KeyTests(SharedHost shared) : IClassFixture<SharedHost>, IAsyncLifetime
{
    private const string Name = "Nobody else's board";
    private const string Board = "rig: " + Name + "\nloads: { drive-3: 9V DC 12mA }\n";

    /// <summary>A program without the key that follows no redirection and keeps no cookie.</summary>
    private readonly HttpClient _stranger = new(new SocketsHttpHandler { AllowAutoRedirect = false, UseCookies = false }) { BaseAddress = shared.Host.Address };

    private string _rig = "";

    private static CancellationToken Stop => RunningHost.Stop;

    private RunningHost Host => shared.Host;

    public async ValueTask InitializeAsync() => _rig = (await Host.Store.Rigs.AddAsync(Name, Board, Stop)).Id.ToString();

    public ValueTask DisposeAsync()
    {
        _stranger.Dispose();
        return ValueTask.CompletedTask;
    }

    /// <summary>What somebody may try who has not got it: nothing, another key, a part of it, more than it, the cookie's value in its place and so on.</summary>
    public static TheoryData<string> Attempts { get; } = new("nothing", "another", "cut", "longer", "empty", "basic", "cookie as key", "key as cookie", "another cookie", "in the address");

    [Theory]
    [MemberData(nameof(Attempts))]
    public async Task Nobody_gets_anything_without_it(string attempt)
    {
        foreach (var (method, address) in ((string, string)[])
        [
            ("GET", "/"), ("GET", $"/rig/{_rig}"), ("GET", $"/rig/{_rig}/file"), ("GET", $"/rig/{_rig}/loads.csv"), ("GET", "/backup"), ("GET", "/gear"), ("GET", "/nowhere"),
            ("GET", "/scene.css"), ("GET", "/_content/Loadmark.Web/loadmark.css"), ("GET", "/_framework/blazor.web.js"), ("POST", "/_blazor/negotiate?negotiateVersion=1"),
            ("GET", "/_blazor"), ("POST", "/_blazor/disconnect"), ("GET", "/api/rigs"), ("GET", $"/api/rigs/{_rig}"), ("POST", "/api/check"), ("DELETE", $"/api/rigs/{_rig}"),
            ("GET", "/api/gear/export"), ("GET", "/api/openapi.json"), ("GET", "/api/problems/no-key"), ("GET", "/healthz"), ("HEAD", "/"), ("OPTIONS", "/api/rigs"),
        ])
        {
            using var request = Attempt(attempt, method, address);
            using var answer = await _stranger.SendAsync(request, Stop);
            Assert.True(answer.StatusCode == HttpStatusCode.Unauthorized, $"{method} {address} is answered {(int)answer.StatusCode}");
            Assert.Equal("Bearer", Assert.Single(answer.Headers.WwwAuthenticate).Scheme);
            Assert.False(answer.Headers.Contains("Set-Cookie"));
            var text = await answer.Content.ReadAsStringAsync(Stop);
            Assert.DoesNotContain(Name, text, StringComparison.Ordinal);
            Assert.DoesNotContain(Host.Key.Text, text, StringComparison.Ordinal);
        }

        Assert.NotNull(await Host.Store.Rigs.FindAsync(Guid.Parse(_rig), Stop));
    }

    [Fact]
    public async Task A_person_is_told_how_to_get_in_and_a_program_too()
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "/") { Headers = { Accept = { new MediaTypeWithQualityHeaderValue("text/html") } } };
        using var page = await _stranger.SendAsync(request, Stop);
        Assert.Equal("text/html", page.Content.Headers.ContentType?.MediaType);
        Assert.Contains("Open the address that Loadmark printed", await page.Content.ReadAsStringAsync(Stop), StringComparison.Ordinal);
        var problem = await RunningHost.ProblemOfAsync(await _stranger.GetAsync("/api/rigs", Stop), 401, "no-key");
        Assert.Contains("loadmark-PORT.header", problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
        shared.Shapes.AssertFits("Problem", problem.GetRawText());
    }

    [Fact]
    public async Task The_address_with_the_key_gives_a_cookie_for_this_port_and_leads_to_the_one_without()
    {
        using var answer = await _stranger.GetAsync($"/rig/{_rig}/gear?a=b&key={Host.Key.Text}", Stop);
        Assert.Equal((HttpStatusCode.SeeOther, $"{Host.Address}rig/{_rig}/gear?a=b"), (answer.StatusCode, answer.Headers.Location?.ToString()));
        var parts = Assert.Single(answer.Headers.GetValues("Set-Cookie")).Split("; ");
        Assert.StartsWith($"loadmark-{Host.Address.Port}=", parts[0], StringComparison.Ordinal);
        Assert.DoesNotContain(Host.Key.Text, parts[0], StringComparison.Ordinal);
        Assert.Equal(["httponly", "path=/", "samesite=strict"], parts[1..].Order(StringComparer.Ordinal));
        Assert.Equal("no-store", answer.Headers.CacheControl?.ToString());
        Assert.Equal(HttpStatusCode.OK, await AskAsync("GET", "/", await CookieAsync(Host)));
    }

    /// <summary>After a redirection a browser still counts as coming from where the link was, and keeps a strict cookie back.</summary>
    [Fact]
    public async Task Who_comes_by_a_link_goes_on_from_a_page_of_this_address()
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri($"{Host.Address}/rigs.example/?key={Host.Key.Text}")); // a path of two slashes
        foreach (var (name, value) in ((string, string)[])[("Sec-Fetch-Site", "cross-site"), ("Sec-Fetch-Mode", "navigate"), ("Sec-Fetch-Dest", "document")])
            request.Headers.Add(name, value);
        using var answer = await _stranger.SendAsync(request, Stop);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Contains($"content=\"0; url={Host.Address}/rigs.example/\"", await answer.Content.ReadAsStringAsync(Stop), StringComparison.Ordinal);
        Assert.DoesNotContain(Host.Key.Text, await answer.Content.ReadAsStringAsync(Stop), StringComparison.Ordinal);
        Assert.True(answer.Headers.Contains("Set-Cookie"));
    }

    [Theory]
    [InlineData("GET", "/backup", "cross-site", "no-cors", "empty")]
    [InlineData("GET", "/backup", "cross-site", "navigate", "document")]
    [InlineData("GET", "/backup", "same-site", "navigate", "document")] // another port of this machine
    [InlineData("GET", "/backup", "cross-site", "navigate", "iframe")]
    [InlineData("GET", "/backup", "same-origin", "navigate", "iframe")]
    [InlineData("GET", "/api/rigs", "cross-site", "cors", "empty")]
    [InlineData("GET", "/api/rigs", "same-site", "cors", "empty")]
    [InlineData("GET", "/scene.css", "same-site", "no-cors", "style")]
    [InlineData("POST", "/api/read", "cross-site", "no-cors", "empty")]
    [InlineData("GET", "/", "same-site", "navigate", "document")]
    public async Task A_browser_that_has_the_cookie_gets_nothing_for_another_page(string method, string address, string site, string mode, string destination)
    {
        var cookie = await CookieAsync(Host);
        (string, string)[] metadata = [("Sec-Fetch-Site", site), ("Sec-Fetch-Mode", mode), ("Sec-Fetch-Dest", destination)];
        Assert.Equal(HttpStatusCode.Forbidden, await AskAsync(method, address, cookie, metadata));
    }

    [Theory]
    [InlineData("")]
    [InlineData("http://rigs.example")]
    [InlineData("http://127.0.0.1:1")]
    [InlineData("null")]
    public async Task A_change_and_an_open_line_with_the_cookie_are_taken_from_the_own_page_only(string origin)
    {
        var cookie = await CookieAsync(Host);
        (string, string)[] headers = origin.Length == 0 ? [] : [("Origin", origin)];
        foreach (var (method, address) in ((string, string)[])[("POST", "/api/read"), ("DELETE", $"/api/rigs/{_rig}"), ("POST", "/_blazor/negotiate?negotiateVersion=1")])
            Assert.Equal(HttpStatusCode.Forbidden, await AskAsync(method, address, cookie, headers));
        Assert.Equal(HttpStatusCode.Forbidden, await AskAsync("GET", "/_blazor", cookie, [.. headers, .. Socket]));

        var own = Host.Address.GetLeftPart(UriPartial.Authority);
        Assert.Equal(HttpStatusCode.OK, await AskAsync("POST", "/api/read", cookie, ("Origin", own)));
        Assert.Equal(HttpStatusCode.SwitchingProtocols, await AskAsync("GET", "/_blazor", cookie, [("Origin", own), .. Socket]));
    }

    [Fact]
    public async Task Two_programs_on_two_ports_let_one_browser_in_side_by_side_and_neither_by_the_others_cookie()
    {
        await using var other = await RunningHost.StartAsync();
        using var browser = new HttpClient(new SocketsHttpHandler { CookieContainer = new CookieContainer() }); // one jar for all ports of an address, as a browser's
        foreach (var host in (RunningHost[])[Host, other])
            using (await browser.GetAsync(host.Key.EntranceAt(host.Address.GetLeftPart(UriPartial.Authority)), Stop)) { }
        foreach (var host in (RunningHost[])[Host, other])
            Assert.Equal(HttpStatusCode.OK, (await browser.GetAsync(host.Address, Stop)).StatusCode);

        var cookie = (await CookieAsync(other)).Replace($"loadmark-{other.Address.Port}", $"loadmark-{Host.Address.Port}", StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Unauthorized, await AskAsync("GET", "/", cookie));
    }

    [Fact]
    public async Task It_is_never_in_the_log()
    {
        await using var host = await RunningHost.StartAsync(log: new LogOptions { Form = LogForm.Json, WithContent = true }, more: static app => app.MapGet("/broken", static string () => throw new InvalidOperationException("It broke.")));
        var cookie = await CookieAsync(host);
        foreach (var address in (string[])[$"/?key={host.Key.Text}", $"/?key={host.Key.Text}x", $"/api/rigs?key={host.Key.Text}", $"/nowhere?key={host.Key.Text}", "/broken"])
            using (await host.Client.GetAsync(address, Stop)) { }
        Assert.Contains("It broke.", host.Log, StringComparison.Ordinal);
        Assert.DoesNotContain(host.Key.Text, host.Log, StringComparison.Ordinal);
        Assert.DoesNotContain(cookie.Split('=')[1], host.Log, StringComparison.Ordinal);
        Assert.DoesNotContain(host.Key.Text, $"{host.Key}", StringComparison.Ordinal);
    }

    [Fact]
    public void Each_start_has_another_of_256_bit()
    {
        var keys = Enumerable.Range(0, 1000).Select(static _ => EntryKey.New().Text).ToList();
        Assert.Equal(1000, keys.Distinct(StringComparer.Ordinal).Count());
        Assert.All(keys, static key => Assert.Equal(256, System.Buffers.Text.Base64Url.DecodeFromChars(key).Length * 8));
    }

    private static (string, string)[] Socket => [("Connection", "Upgrade"), ("Upgrade", "websocket"), ("Sec-WebSocket-Version", "13"), ("Sec-WebSocket-Key", "dGhlIHNhbXBsZSBub25jZQ==")];

    private HttpRequestMessage Attempt(string attempt, string method, string address)
    {
        var key = Host.Key.Text;
        var cookie = $"loadmark-{Host.Address.Port}";
        var inAddress = attempt == "in the address" ? $"{(address.Contains('?', StringComparison.Ordinal) ? "&" : "?")}key={key[..^1]}" : "";
        var request = new HttpRequestMessage(new HttpMethod(method), address + inAddress) { Content = method is "POST" ? new StringContent(Board, Encoding.UTF8, "application/yaml") : null };
        var header = attempt switch
        {
            "another" => $"Bearer {EntryKey.New().Text}",
            "cut" => $"Bearer {key[..^1]}",
            "longer" => $"Bearer {key}A",
            "empty" => "Bearer ",
            "basic" => $"Basic {Convert.ToBase64String(Encoding.UTF8.GetBytes($"loadmark:{key}"))}",
            "cookie as key" => $"Bearer {CookieAsync(Host).GetAwaiter().GetResult().Split('=')[1]}",
            _ => null,
        };
        if (header is not null)
            request.Headers.TryAddWithoutValidation("Authorization", header);
        if (attempt is "key as cookie" or "another cookie")
            request.Headers.TryAddWithoutValidation("Cookie", $"{cookie}={(attempt == "key as cookie" ? key : EntryKey.New().Text)}");
        return request;
    }

    /// <summary>The cookie that a browser is given for the key: its name and value.</summary>
    private async Task<string> CookieAsync(RunningHost host)
    {
        using var answer = await _stranger.GetAsync(host.Key.EntranceAt(host.Address.GetLeftPart(UriPartial.Authority)), Stop);
        return Assert.Single(answer.Headers.GetValues("Set-Cookie")).Split(';')[0];
    }

    private async Task<HttpStatusCode> AskAsync(string method, string address, string cookie, params (string Name, string Value)[] headers)
    {
        using var request = new HttpRequestMessage(new HttpMethod(method), address);
        if (method == "POST")
            request.Content = new StringContent("9V DC 12mA", Encoding.UTF8, "text/plain");
        request.Headers.TryAddWithoutValidation("Cookie", cookie);
        foreach (var (name, value) in headers)
            request.Headers.TryAddWithoutValidation(name, value);
        using var answer = await _stranger.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, Stop);
        return answer.StatusCode;
    }
}
