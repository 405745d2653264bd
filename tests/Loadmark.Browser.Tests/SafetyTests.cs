using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;
using Loadmark.Browser.Tests.House;

namespace Loadmark.Browser.Tests;

/// <summary>What the program answers to requests that its own page would never send, and where it can be reached at all.</summary>
public sealed class SafetyTests(ServedPage served)
{
    private const string Style = "/_content/Loadmark.Web/loadmark.css";

    [Theory]
    [InlineData("rigs.example")]
    [InlineData("rigs.example:80")]
    [InlineData("127.0.0.1.rigs.example")]
    [InlineData("localhost.rigs.example")]
    [InlineData("192.0.2.7")]
    [InlineData("0.0.0.0")]
    [InlineData("")]
    public async Task A_foreign_host_is_refused(string host)
    {
        foreach (var target in (string[])["/", Style, "/_blazor/negotiate?negotiateVersion=1"])
            Assert.Equal(400, (await AskAsync("GET", target, $"Host: {host}")).Status);
    }

    [Fact]
    public async Task The_names_of_this_machine_itself_are_taken()
    {
        foreach (var host in (string[])["127.0.0.1", "localhost", "LOCALHOST"])
            Assert.Equal(200, (await AskAsync("GET", "/", $"Host: {host}:{served.Address.Port}")).Status);
    }

    [Theory]
    [InlineData("http://rigs.example")]
    [InlineData("https://127.0.0.1.rigs.example")]
    [InlineData("http://127.0.0.1:1")] // another program's page on this machine
    [InlineData("null")]
    public async Task A_foreign_origin_is_refused(string origin)
    {
        Assert.Equal(403, (await AskAsync("GET", "/", $"Origin: {origin}")).Status);
        Assert.Equal(403, (await AskAsync("POST", "/_blazor/negotiate?negotiateVersion=1", $"Origin: {origin}")).Status);
        Assert.Equal(403, (await AskAsync(
            "GET", "/_blazor", $"Origin: {origin}", "Upgrade: websocket", "Sec-WebSocket-Version: 13", "Sec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ==")).Status);
    }

    [Theory]
    [InlineData("cross-site", "cors", 403)]
    [InlineData("cross-site", "no-cors", 403)]
    [InlineData("same-site", "no-cors", 403)]
    [InlineData("cross-site", "navigate", 403)]
    [InlineData("same-site", "navigate", 403)]
    [InlineData("same-origin", "cors", 200)]
    [InlineData("none", "navigate", 200)]
    public async Task Another_site_may_not_even_link_here(string site, string mode, int status)
    {
        var answer = await AskAsync("GET", "/", $"Sec-Fetch-Site: {site}", $"Sec-Fetch-Mode: {mode}");
        Assert.Equal(status, answer.Status);
        Assert.DoesNotContain("access-control-allow-origin", answer.Headers);
    }

    [Theory]
    [InlineData("iframe")]
    [InlineData("frame")]
    [InlineData("embed")]
    [InlineData("object")]
    public async Task It_is_shown_within_no_page(string element)
    {
        foreach (var site in (string[])["cross-site", "same-site", "same-origin", "none"])
            Assert.Equal(403, (await AskAsync("GET", "/", $"Sec-Fetch-Site: {site}", "Sec-Fetch-Mode: navigate", $"Sec-Fetch-Dest: {element}")).Status);
    }

    [Fact]
    public async Task Another_port_of_this_machine_is_another_program() =>
        Assert.Equal(400, (await AskAsync("GET", "/", $"Host: 127.0.0.1:{served.Address.Port - 1}")).Status);

    [Theory]
    [InlineData("/", 200)]
    [InlineData(Style, 200)]
    [InlineData("/scene.css", 200)]
    [InlineData("/_framework/blazor.web.js", 200)]
    [InlineData("/nowhere", 404)]
    [InlineData("/nowhere.txt", 404)]
    [InlineData("/rig/00000000-0000-0000-0000-000000000000/file", 404)]
    public async Task Every_answer_says_what_a_browser_may_do_with_it(string target, int status)
    {
        var answer = await AskAsync("GET", target);
        Assert.Equal(status, answer.Status);
        AssertGuarded(answer);
    }

    [Fact]
    public async Task A_refusal_says_what_a_browser_may_do_with_it() => AssertGuarded(await AskAsync("GET", "/", "Host: rigs.example"));

    [Theory]
    [InlineData("/rig/..%2f..%2fetc/passwd")]
    [InlineData("/rig/..%2f..%2f..%2f..%2f..%2f..%2fetc%2fpasswd")]
    [InlineData("/../../../../../../etc/passwd")]
    [InlineData("/_content/../../../../../../../etc/passwd")]
    [InlineData("/_content/..%2f..%2f..%2f..%2f..%2f..%2fetc/passwd")]
    [InlineData("/_content/..%5c..%5cetc%5cpasswd")]
    [InlineData("/_content/Loadmark.Web/../../loadmark.dll")]
    [InlineData("/_content/Loadmark.Web/%2e%2e/%2e%2e/loadmark.dll")]
    [InlineData("/loadmark.dll")]
    [InlineData("/loadmark.runtimeconfig.json")]
    [InlineData("/loadmark.db")]
    [InlineData("/rig/00000000-0000-0000-0000-000000000000%2ffile/../../loadmark.db")]
    [InlineData("/%00")]
    public async Task No_path_reaches_the_file_system(string target)
    {
        var answer = await AskAsync("GET", target);
        Assert.Contains(answer.Status, (int[])[400, 404]);
        Assert.DoesNotContain("root:", answer.Body, StringComparison.Ordinal);
    }

    [Fact]
    public async Task It_listens_on_loopback_and_nowhere_else()
    {
        if (OperatingSystem.IsLinux())
        {
            // proc(5): the second column is the local address, least byte first, and the port, in hexadecimal; state 0A is LISTEN.
            var port = $":{served.Address.Port:X4}";
            var listening = new[] { "/proc/net/tcp", "/proc/net/tcp6" }.Where(File.Exists).SelectMany(File.ReadAllLines)
                .Select(static line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries))
                .Where(columns => columns.Length > 3 && columns[3] == "0A" && columns[1].EndsWith(port, StringComparison.Ordinal))
                .Select(static columns => columns[1]).ToList();
            Assert.Equal([$"0100007F{port}"], listening);
        }

        foreach (var address in NetworkInterface.GetAllNetworkInterfaces().SelectMany(static card => card.GetIPProperties().UnicastAddresses)
            .Select(static unicast => unicast.Address).Where(static address => !IPAddress.IsLoopback(address) && !address.IsIPv6LinkLocal))
        {
            using var client = new TcpClient(address.AddressFamily);
            await Assert.ThrowsAsync<SocketException>(async () => await client.ConnectAsync(address, served.Address.Port, TestContext.Current.CancellationToken));
        }
    }

    private static void AssertGuarded(RawAnswer answer)
    {
        var policy = Assert.Contains("content-security-policy", answer.Headers);
        var directives = policy.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            .Select(static directive => directive.Split(' ')).ToDictionary(static words => words[0], static words => words[1..], StringComparer.Ordinal);
        Assert.Equal(["'none'"], directives["default-src"]);
        Assert.Equal(["'self'"], directives["script-src"]);
        Assert.Equal(["'none'"], directives["frame-ancestors"]);
        Assert.Equal(["'self'"], directives["base-uri"]);
        Assert.Equal(["'self'"], directives["connect-src"]);
        Assert.Equal("nosniff", Assert.Contains("x-content-type-options", answer.Headers));
        Assert.Equal("no-referrer", Assert.Contains("referrer-policy", answer.Headers));
        Assert.Equal("DENY", Assert.Contains("x-frame-options", answer.Headers));
        Assert.DoesNotContain("server", answer.Headers);
    }

    private Task<RawAnswer> AskAsync(string method, string target, params string[] headers) => RawAnswer.AskAsync(served.Program, method, target, headers);
}
