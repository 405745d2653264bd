using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using Loadmark.Api.Requests;
using Loadmark.Files.Library;
using Loadmark.Serving;
using Loadmark.Serving.Logs;
using Loadmark.Storage;
using Loadmark.Web.Guarding;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;

namespace Loadmark.Tests.Http;

/// <summary>Page and API on a port of their own, with a store in a folder of its own; what is logged is kept.</summary>
public sealed class RunningHost : IAsyncDisposable
{
    private readonly WebApplication _app;
    private readonly StringWriter _log;
    private readonly string _folder;

    private RunningHost(WebApplication app, StringWriter log, string folder, Store store)
    {
        (_app, _log, _folder, Store) = (app, log, folder, store);
        Folder = Path.Combine(folder, "kept");
        Address = new Uri(app.Urls.First());
        Key = app.Services.GetRequiredService<EntryKey>();
        Client = NewClient();
    }

    public static CancellationToken Stop => TestContext.Current.CancellationToken;

    /// <summary>Where the store is.</summary>
    public string Folder { get; }

    public Uri Address { get; }

    /// <summary>Asks with the key.</summary>
    public HttpClient Client { get; }

    /// <summary>The secret that lets in.</summary>
    public EntryKey Key { get; }

    public IServiceProvider Services => _app.Services;

    internal Store Store { get; }

    /// <summary>What is in the log so far.</summary>
    public string Log
    {
        get
        {
            lock (_log)
                return _log.ToString();
        }
    }

    internal static async Task<RunningHost> StartAsync(ApiLimits? limits = null, LogOptions? log = null, Action<WebApplication>? more = null, bool opens = true, TimeProvider? clock = null)
    {
        var folder = Directory.CreateTempSubdirectory("loadmark-http-").FullName;
        var store = new Store(Path.Combine(folder, "kept"), clock ?? TimeProvider.System, RigMentions.Of);
        if (!opens)
            await File.WriteAllTextAsync(Path.Combine(folder, "kept"), "a file where the folder should be", Stop);
        var opening = await store.OpenAsync(Stop);
        var writer = new StringWriter();
        var app = ProgramHost.Build(0, store, opening, new HostSettings
        {
            Error = new LockedWriter(writer),
            Clock = clock ?? TimeProvider.System,
            Log = log ?? new LogOptions { Form = LogForm.Json },
            Api = limits ?? new ApiLimits(),
        });
        more?.Invoke(app);
        await app.StartAsync(Stop);
        return new RunningHost(app, writer, folder, store);
    }

    /// <summary>Another one that asks with the key.</summary>
    public HttpClient NewClient()
    {
        var handler = new SocketsHttpHandler { Expect100ContinueTimeout = TimeSpan.FromMinutes(1) };
        var client = new HttpClient(handler) { BaseAddress = Address, Timeout = TimeSpan.FromMinutes(2) };
        client.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", Key.Text);
        return client;
    }

    /// <summary>Sends a body to an address.</summary>
    public Task<HttpResponseMessage> PostAsync(string address, string body, string mediaType = "application/yaml", string? accept = null) =>
        SendAsync(HttpMethod.Post, address, body, mediaType, accept);

    /// <summary>Asks an address; with a body and the revision that a change starts from, where there are any.</summary>
    public async Task<HttpResponseMessage> SendAsync(HttpMethod method, string address, string? body = null, string mediaType = "application/yaml", string? accept = null, string? revision = null)
    {
        using var request = new HttpRequestMessage(method, address);
        if (body is not null)
            request.Content = new StringContent(body, Encoding.UTF8, MediaTypeHeaderValue.Parse(mediaType));
        if (revision is not null)
            request.Headers.TryAddWithoutValidation("If-Match", revision);
        if (accept is not null)
            request.Headers.Accept.ParseAdd(accept);
        return await Client.SendAsync(request, Stop);
    }

    /// <summary>A problem, which an answer has to be.</summary>
    public static async Task<JsonElement> ProblemOfAsync(HttpResponseMessage answer, int status, string kind)
    {
        var text = await answer.Content.ReadAsStringAsync(Stop);
        Assert.True(status == (int)answer.StatusCode, $"{(int)answer.StatusCode} in place of {status}: {text}");
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType?.MediaType);
        using var json = JsonDocument.Parse(text);
        Assert.Equal("/api/problems/" + kind, json.RootElement.GetProperty("type").GetString());
        Assert.Equal(status, json.RootElement.GetProperty("status").GetInt32());
        return json.RootElement.Clone();
    }

    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        await _app.StopAsync(CancellationToken.None);
        await _app.DisposeAsync();
        Store.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    /// <summary>Lets the log be read while it is written.</summary>
    private sealed class LockedWriter(StringWriter inner) : TextWriter
    {
        public override Encoding Encoding => inner.Encoding;

        public override void Write(char value)
        {
            lock (inner)
                inner.Write(value);
        }

        public override void WriteLine(string? value)
        {
            lock (inner)
                inner.WriteLine(value);
        }
    }
}
