using System.Text;
using Loadmark.Api.Execution;
using Loadmark.Api.Requests;
using Loadmark.Web.Views;
using Loadmark.Workshop.Solves;
using Microsoft.Extensions.DependencyInjection;

namespace Loadmark.Tests.Http;

/// <summary>Small limits hold, and page and programs leave room to each other.</summary>
public sealed class LimitsTests
{
    private static readonly string Festival = File.ReadAllText(Repository.PathOf("examples", "festival.rig.yaml"));

    [Fact]
    public async Task A_body_that_is_too_large()
    {
        await using var host = await RunningHost.StartAsync(new ApiLimits { LargestBody = 1000 });
        var body = "rig: r\n" + new string('#', 1000);
        foreach (var address in (string[])["/api/check", "/api/rigs"])
            await RunningHost.ProblemOfAsync(await host.PostAsync(address, body), 413, "too-large");

        // Nobody says beforehand how long it is.
        using var request = new HttpRequestMessage(HttpMethod.Post, "/api/check") { Content = new StreamContent(new MemoryStream(Encoding.UTF8.GetBytes(body))) };
        request.Content.Headers.ContentType = new("application/yaml");
        request.Headers.TransferEncodingChunked = true;
        await RunningHost.ProblemOfAsync(await host.Client.SendAsync(request, RunningHost.Stop), 413, "too-large");
        Assert.True((await host.PostAsync("/api/check", body[..1000])).IsSuccessStatusCode);
    }

    [Fact]
    public async Task More_than_the_server_takes_at_all()
    {
        await using var host = await RunningHost.StartAsync();
        using var request = new HttpRequestMessage(HttpMethod.Post, "/api/check") { Content = new ByteArrayContent(new byte[(2 * 1024 * 1024) + 1]) };
        request.Content.Headers.ContentType = new("application/yaml");
        request.Headers.ExpectContinue = true;

        // The server closes a connection whose body it has not taken: the next request is not to run into that.
        request.Headers.ConnectionClose = true;
        await RunningHost.ProblemOfAsync(await host.Client.SendAsync(request, RunningHost.Stop), 413, "too-large");

        var large = "rig: r\n" + new string('#', 1024 * 1024);
        await RunningHost.ProblemOfAsync(await host.PostAsync("/api/check", large), 422, "unreadable");
    }

    [Fact]
    public async Task Texts_that_are_too_many()
    {
        await using var host = await RunningHost.StartAsync(new ApiLimits { MostTexts = 2 });
        await RunningHost.ProblemOfAsync(await host.PostAsync("/api/read", "a\nb\nc", "text/plain"), 400, "bad-request");
        Assert.True((await host.PostAsync("/api/read", "a\n\nb\n", "text/plain")).IsSuccessStatusCode);
    }

    [Fact]
    public async Task A_computation_that_takes_too_long_is_ended()
    {
        await using var host = await RunningHost.StartAsync(new ApiLimits { LongestSolve = TimeSpan.FromMilliseconds(300) });
        await RunningHost.ProblemOfAsync(await host.PostAsync("/api/startup?spread=100000", Festival), 504, "out-of-time");
        await RunningHost.ProblemOfAsync(await host.PostAsync("/api/plan", HardRig.Ninety()), 504, "out-of-time");
        Assert.Equal(0, host.Services.GetRequiredService<ApiGate>().Present);
    }

    [Fact]
    public async Task Too_many_at_once_are_told_to_come_again()
    {
        await using var host = await RunningHost.StartAsync(new ApiLimits { MostPresent = 1, RetryAfterSeconds = 3 });
        using var leaving = new CancellationTokenSource();
        var first = AskUntilAsync(host, leaving.Token);
        var gate = host.Services.GetRequiredService<ApiGate>();
        await WaitAsync(() => gate.Present == 1);
        using var second = await host.PostAsync("/api/check", Festival);
        await RunningHost.ProblemOfAsync(second, 503, "busy");
        Assert.Equal(TimeSpan.FromSeconds(3), second.Headers.RetryAfter?.Delta);
        Assert.True((await host.Client.GetAsync("/api/rigs", RunningHost.Stop)).IsSuccessStatusCode);

        await leaving.CancelAsync();
        await first;
        await WaitAsync(() => gate.Present == 0);
        Assert.True((await host.PostAsync("/api/check", Festival)).IsSuccessStatusCode);
    }

    [Fact]
    public async Task Who_waits_too_long_is_told_to_come_again()
    {
        await using var host = await RunningHost.StartAsync(new ApiLimits { LongestWait = TimeSpan.FromMilliseconds(100) });
        using var leaving = new CancellationTokenSource();
        var first = AskUntilAsync(host, leaving.Token);
        var gate = host.Services.GetRequiredService<ApiGate>();
        await WaitAsync(() => gate.Present == 1);
        await Task.Delay(200, RunningHost.Stop); // until it has its lane
        await RunningHost.ProblemOfAsync(await host.PostAsync("/api/check", Festival), 503, "busy");
        await leaving.CancelAsync();
        await first;
    }

    [Fact]
    public async Task The_page_finds_room_however_much_programs_ask()
    {
        using var shared = new SolveGate(new PageLimits().SolvesAtOnce);
        using var gate = new ApiGate(shared, new ApiLimits(), TimeProvider.System);
        using var end = new ManualResetEventSlim();
        var asked = Enumerable.Range(0, 10).Select(_ => gate.RunAsync((_, _) => { end.Wait(RunningHost.Stop); return default; }, new SolveProgress(), RunningHost.Stop)).ToList();
        Assert.Equal(7, await shared.RunAsync(static _ => 7, RunningHost.Stop).WaitAsync(TimeSpan.FromSeconds(30), RunningHost.Stop));
        end.Set();
        await Task.WhenAll(asked);
    }

    [Fact]
    public async Task Programs_get_their_turn_when_the_page_is_done()
    {
        using var shared = new SolveGate(2);
        using var gate = new ApiGate(shared, new ApiLimits(), TimeProvider.System);
        using var end = new ManualResetEventSlim();
        var pages = Enumerable.Range(0, 2).Select(_ => shared.RunAsync(_ => { end.Wait(RunningHost.Stop); return 0; }, RunningHost.Stop)).ToList();
        var asked = gate.RunAsync((_, _) => new byte[1], new SolveProgress(), RunningHost.Stop);
        await Task.Delay(100, RunningHost.Stop);
        Assert.False(asked.IsCompleted);
        end.Set();
        Assert.Equal(1, (await asked).Body.Length);
        await Task.WhenAll(pages);
    }

    [Fact]
    public async Task The_page_of_docs_tells_the_limits()
    {
        var (limits, page) = (new ApiLimits(), await File.ReadAllTextAsync(Repository.PathOf("docs", "api.md"), RunningHost.Stop));
        Assert.Contains($"| a body | {limits.LargestBody / 1024 / 1024} MiB;", page, StringComparison.Ordinal);
        Assert.Contains($"| texts to read at once | {limits.MostTexts} |", page, StringComparison.Ordinal);
        Assert.Contains($"| one computation | {limits.LongestSolve.TotalSeconds} s, then 504;", page, StringComparison.Ordinal);
        Assert.Contains($"| computations at once | {limits.SolvesAtOnce} of", page, StringComparison.Ordinal);
        Assert.Contains($"up to {limits.MostPresent} wait or run", page, StringComparison.Ordinal);
        Assert.Contains($"{limits.LongestWait.TotalSeconds} s of waiting", page, StringComparison.Ordinal);
    }

    private static async Task AskUntilAsync(RunningHost host, CancellationToken leaving)
    {
        using var client = host.NewClient();
        using var body = new StringContent(Festival, Encoding.UTF8, "application/yaml");
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => client.PostAsync("/api/startup?spread=100000", body, leaving));
    }

    private static async Task WaitAsync(Func<bool> until)
    {
        for (var tries = 0; tries < 600 && !until(); tries++)
            await Task.Delay(50, RunningHost.Stop);
        Assert.True(until());
    }
}
