using System.Net;
using System.Net.Sockets;
using Loadmark.Browser.Tests.House;

namespace Loadmark.Browser.Tests;

/// <summary>Another program has the port that is asked for.</summary>
public sealed class TakenPortTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("loadmark-browser-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task A_taken_port_moves_on_to_the_next_without_a_fuss()
    {
        using var other = new TcpListener(IPAddress.Loopback, 0);
        other.Start();
        var taken = ((IPEndPoint)other.LocalEndpoint).Port;
        await using var program = await RunningProgram.StartAsync(_folder, taken);
        Assert.InRange(program.Address.Port, taken + 1, taken + 20);
        Assert.Equal(200, (await RawAnswer.AskAsync(program, "GET", "/")).Status);
        Assert.DoesNotContain(program.Errors, static line => line.Contains("Exception", StringComparison.Ordinal));
    }
}
