using Loadmark.Serving.Logs;

namespace Loadmark.Tests.Http;

/// <summary>One host for the tests of a class.</summary>
public sealed class SharedHost : IAsyncLifetime
{
    /// <summary>The host.</summary>
    public RunningHost Host { get; private set; } = null!;

    /// <summary>What its document says.</summary>
    public DocumentShapes Shapes { get; private set; } = null!;

    public async ValueTask InitializeAsync()
    {
        Host = await RunningHost.StartAsync(log: new LogOptions { WithContent = true });
        using var answer = await Host.Client.GetAsync("/api/openapi.json", RunningHost.Stop);
        Assert.True(answer.IsSuccessStatusCode, Host.Log);
        Shapes = await DocumentShapes.OfAsync(await answer.Content.ReadAsStringAsync(RunningHost.Stop));
    }

    public ValueTask DisposeAsync() => Host?.DisposeAsync() ?? ValueTask.CompletedTask;
}
