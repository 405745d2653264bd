using System.Net;
using System.Net.Sockets;
using System.Text;
using Loadmark.Meters.Instruments;

namespace Loadmark.Meters.Tests;

/// <summary>What answers anything: a line, no line, or more than a line.</summary>
internal sealed class FakeInstrument : IAsyncDisposable
{
    private readonly TcpListener _listener = new(IPAddress.Loopback, 0);
    private readonly CancellationTokenSource _closing = new();
    private readonly Task _talking;

    /// <summary>Serves one client.</summary>
    /// <param name="answer">What is sent for a line, as it is; empty for nothing. Null closes the connection, or takes the next error.</param>
    /// <param name="errors">The errors, one after the other.</param>
    public FakeInstrument(Func<string, string?> answer, IReadOnlyList<string> errors)
    {
        _listener.Start();
        _talking = TalkAsync(answer, new Queue<string>(errors));
    }

    public Task<Instrument> ConnectAsync(InstrumentOptions options) =>
        InstrumentPort.ConnectAsync("127.0.0.1", ((IPEndPoint)_listener.LocalEndpoint).Port, options, TestContext.Current.CancellationToken);

    public async ValueTask DisposeAsync()
    {
        await _closing.CancelAsync();
        _listener.Stop();
        await _talking;
        _closing.Dispose();
    }

    private async Task TalkAsync(Func<string, string?> answer, Queue<string> errors)
    {
        try
        {
            using var client = await _listener.AcceptTcpClientAsync(_closing.Token);
            using var reader = new StreamReader(client.GetStream(), Encoding.ASCII);
            while (await reader.ReadLineAsync(_closing.Token) is { } line)
            {
                var sent = answer(line) ?? (errors.TryDequeue(out var error) ? error + "\n" : null);
                if (sent is null)
                    return;
                await client.GetStream().WriteAsync(Encoding.ASCII.GetBytes(sent), _closing.Token);
            }
        }
        catch (Exception fault) when (fault is IOException or SocketException or ObjectDisposedException or OperationCanceledException)
        {
            // The test is over.
        }
    }
}
