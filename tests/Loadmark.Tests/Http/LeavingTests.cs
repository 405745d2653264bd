using System.Diagnostics;
using System.Net.Http.Headers;
using System.Text;
using System.Text.RegularExpressions;

namespace Loadmark.Tests.Http;

/// <summary>When the caller leaves, the program stops computing: seen from outside, by the processor time of a process of its own.</summary>
public sealed partial class LeavingTests : IAsyncLifetime
{
    /// <summary>What computing uses of a second at the least, on a machine that others use too; when it waits it uses a tenth of that.</summary>
    private static readonly TimeSpan Busy = TimeSpan.FromMilliseconds(60);

    private static readonly TimeSpan Idle = TimeSpan.FromMilliseconds(30);

    private static readonly TimeSpan MostAfter = TimeSpan.FromSeconds(2);

    private readonly string _folder = Directory.CreateTempSubdirectory("loadmark-leave-").FullName;
    private Process _process = null!;
    private Uri _address = null!;
    private string _key = "";

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        var start = new ProcessStartInfo(
            Environment.ProcessPath is { } own && Path.GetFileNameWithoutExtension(own) == "dotnet" ? own : "dotnet",
            [Path.Combine(AppContext.BaseDirectory, "loadmark.dll"), "--data", _folder, "--port", "0", "--no-browser", "--log", "json"])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,

            // Else the runtime compiles anew what was called often, for seconds on a busy machine and long after the question has ended. It
            // begins to count calls after this many milliseconds, in hexadecimal: an hour.
            Environment = { ["DOTNET_TC_CallCountingDelayMs"] = "36EE80" },
        };
        _process = Process.Start(start)!;
        var line = await _process.StandardOutput.ReadLineAsync(Stop).AsTask().WaitAsync(TimeSpan.FromMinutes(1), Stop);
        var printed = Printed().Match(line ?? "");
        (_address, _key) = (new Uri(printed.Groups["address"].Value), printed.Groups["key"].Value);
    }

    public async ValueTask DisposeAsync()
    {
        _process.Kill(entireProcessTree: true);
        await _process.WaitForExitAsync(CancellationToken.None);
        _process.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    [Theory]
    [InlineData("/api/plan", "")]
    [InlineData("/api/plan", "text/event-stream")]
    [InlineData("/api/startup?spread=100000", "")]
    public async Task Processor_time_ends_with_the_connection(string address, string accept)
    {
        // What leaves half of an answer unread closes the connection at once, as a program that ends does.
        using var client = new HttpClient(new SocketsHttpHandler { ResponseDrainTimeout = TimeSpan.Zero, MaxResponseDrainSize = 0 }) { BaseAddress = _address };
        client.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", _key);
        using var leaving = new CancellationTokenSource();
        using var request = new HttpRequestMessage(HttpMethod.Post, address) { Content = new StringContent(HardRig.Ninety(), Encoding.UTF8, "application/yaml") };
        if (accept.Length > 0)
            request.Headers.Accept.ParseAdd(accept);
        var answer = client.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, leaving.Token);

        await Task.Delay(2000, Stop); // past what starting costs
        var worked = TimeSpan.Zero;
        for (var tries = 0; tries < 4 && worked < Busy; tries++)
            worked = await WorkInAsync(TimeSpan.FromSeconds(1));
        Assert.True(worked >= Busy, $"It should be computing, and used {worked} of a second.");
        Assert.True(!answer.IsCompleted || accept.Length > 0, "It should still be computing.");

        await leaving.CancelAsync();
        if (accept.Length > 0)
            (await answer).Dispose();
        else
            await Assert.ThrowsAnyAsync<OperationCanceledException>(() => answer);
        // Counted in processor time, since others use the machine too: a plan would use some ten seconds more, on two threads, samples until their limit of 60 s.
        var (after, used) = (TimeSpan.MaxValue, TimeSpan.Zero);
        for (var tries = 0; tries < 40 && after > Idle; tries++)
        {
            after = await WorkInAsync(TimeSpan.FromSeconds(1));
            used += after;
        }

        Assert.True(after <= Idle && used < MostAfter, $"It used {used} after the caller had left, and {after} in the last second.");

        using var alive = await client.GetAsync("/healthz", Stop);
        Assert.True(alive.IsSuccessStatusCode);
    }

    private async Task<TimeSpan> WorkInAsync(TimeSpan time)
    {
        _process.Refresh();
        var before = _process.TotalProcessorTime;
        await Task.Delay(time, Stop);
        _process.Refresh();
        return _process.TotalProcessorTime - before;
    }

    [GeneratedRegex(@"^Loadmark is at (?<address>http://127\.0\.0\.1:\d+)/\?key=(?<key>[\w-]+) ", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Printed();
}
