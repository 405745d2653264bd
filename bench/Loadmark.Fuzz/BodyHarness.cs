using System.Net;
using System.Net.Http.Headers;
using System.Text;
using Loadmark.Api.Requests;
using Loadmark.Serving;
using Loadmark.Storage;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.Hosting;

namespace Loadmark.Fuzz;

/// <summary>The body of a question over HTTP, to the server itself: the first byte says which question; no answer is a fault of the program.</summary>
internal sealed class BodyHarness : Harness
{
    private static readonly (string Address, string Type)[] Doors =
    [
        ("/api/check", "application/yaml"), ("/api/check", "application/json"), ("/api/settle", "application/json"), ("/api/startup", "application/yaml"),
        ("/api/netlist", "application/yaml"), ("/api/plan", "application/json"), ("/api/buy", "application/json"), ("/api/ask", "application/json"),
        ("/api/read", "text/plain"), ("/api/read", "application/json"), ("/api/rigs", "application/yaml"), ("/api/gear", "application/yaml"),
        ("/api/gear/import", "text/csv"), ("/api/gear/import", "application/yaml"),
    ];

    private readonly string _folder = Directory.CreateTempSubdirectory("loadmark-fuzz-").FullName;
    private readonly Store _store;
    private readonly WebApplication _app;
    private readonly HttpClient _client;

    /// <summary>Starts a server with a store of its own.</summary>
    public BodyHarness()
    {
        _store = new Store(_folder, TimeProvider.System);
        var settings = new HostSettings
        {
            Error = TextWriter.Null,
            Clock = TimeProvider.System,
            Api = new ApiLimits { LongestSolve = TimeSpan.FromSeconds(0.2) },
        };
        _app = ProgramHost.Build(0, _store, _store.OpenAsync().GetAwaiter().GetResult(), settings);
        _app.Start();
        _client = new HttpClient { BaseAddress = new Uri(_app.Urls.First()) };
        _client.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", settings.Key.Text);
    }

    /// <inheritdoc/>
    public override IEnumerable<string> Words =>
        ["{", "}", "[", "]", "\"rig\":", "\"loads\":", "\"supplies\":", "\"offers\":", "\"prices\":", "\"texts\":", "\"from\":", "\"options\":", "null", "true", "1e400", "-0", "\\u0000", "\\ud800"];

    /// <inheritdoc/>
    public override IEnumerable<(string Name, byte[] Content)> Seeds()
    {
        const string Rig = "rig: a\nloads: { delay-2: 9V DC 300mA }\nsupplies: { brick: { outlets: { 1: 9 V 500 mA } } }\nwired: [ { from: brick/1, to: delay-2 } ]\n";
        const string Json = """{"rig":"a","loads":{"delay-2":"9V DC 300mA"},"supplies":{"brick":{"outlets":{"1":"9 V 500 mA"}}},"wired":[{"from":"brick/1","to":"delay-2"}]}""";
        for (var door = 0; door < Doors.Length; door++)
        {
            var (address, type) = Doors[door];
            var body = (address, type) switch
            {
                ("/api/ask", _) => File.ReadAllText("src/Loadmark/Api/Examples/ask.request.json"),
                ("/api/buy", _) => File.ReadAllText("src/Loadmark/Api/Examples/buy.request.json"),
                ("/api/read", "text/plain") => "9V DC 300mA centre negative",
                ("/api/read", _) => """{"texts":["9V DC 300mA","18V"]}""",
                (_, "text/csv") => "tag,label\ndelay-2,9V DC 300mA\n",
                (_, "application/json") => Json,
                _ => Rig,
            };
            yield return ($"door-{door}", [(byte)door, .. Encoding.UTF8.GetBytes(body)]);
        }
    }

    /// <inheritdoc/>
    public override void Take(byte[] input)
    {
        if (input.Length == 0)
            return;
        var (address, type) = Doors[input[0] % Doors.Length];
        using var content = new ByteArrayContent(input, 1, input.Length - 1);
        content.Headers.ContentType = new MediaTypeHeaderValue(type);
        using var answer = _client.PostAsync(new Uri(address, UriKind.Relative), content).GetAwaiter().GetResult();

        // What takes too long is ended, and said.
        Holds((int)answer.StatusCode < 500 || answer.StatusCode == HttpStatusCode.GatewayTimeout, $"{address}: {answer.StatusCode}");
    }

    /// <inheritdoc/>
    public override void Dispose()
    {
        base.Dispose();
        _client.Dispose();
        _app.StopAsync().GetAwaiter().GetResult();
        _store.Dispose();
        Directory.Delete(_folder, recursive: true);
    }
}
