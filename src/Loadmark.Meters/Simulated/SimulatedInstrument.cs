using System.Net;
using System.Net.Sockets;
using Loadmark.Meters.Instruments;

namespace Loadmark.Meters.Simulated;

/// <summary>A simulated meter behind a TCP port, for tests and for showing the program without a meter.</summary>
public sealed class SimulatedInstrument : IAsyncDisposable
{
    private const int LongestLine = 1024;

    private readonly SimulatedMeter _meter;
    private readonly TcpListener _listener;
    private readonly CancellationTokenSource _closing = new();
    private readonly Lock _turn = new();
    private readonly Task _serving;

    /// <summary>Listens, for one client after the other and several at once.</summary>
    /// <param name="meter">What answers.</param>
    /// <param name="port">The port; 0 for one that is free.</param>
    /// <param name="address">The address; null for the machine's own, which nobody else reaches.</param>
    /// <exception cref="SocketException">The port is taken.</exception>
    public SimulatedInstrument(SimulatedMeter meter, int port = 0, IPAddress? address = null)
    {
        ArgumentNullException.ThrowIfNull(meter);
        _meter = meter;
        _listener = new TcpListener(address ?? IPAddress.Loopback, port);
        _listener.Start();
        _serving = ServeAsync();
    }

    /// <summary>Where it listens.</summary>
    public int Port => ((IPEndPoint)_listener.LocalEndpoint).Port;

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await _closing.CancelAsync().ConfigureAwait(false);
        _listener.Stop();
        await _serving.ConfigureAwait(false);
        _closing.Dispose();
    }

    private async Task ServeAsync()
    {
        var clients = new List<Task>();
        try
        {
            while (true)
            {
                clients.RemoveAll(static client => client.IsCompleted);
                clients.Add(TalkAsync(await _listener.AcceptTcpClientAsync(_closing.Token).ConfigureAwait(false)));
            }
        }
        catch (Exception fault) when (fault is OperationCanceledException or SocketException or ObjectDisposedException)
        {
            await Task.WhenAll(clients).ConfigureAwait(false);
        }
    }

    private async Task TalkAsync(TcpClient client)
    {
        using var _ = client;
        client.NoDelay = true;
        var lines = new LineStream(client.GetStream(), LongestLine);
        await using (lines.ConfigureAwait(false))
        {
            try
            {
                while (await lines.ReadAsync(_closing.Token).ConfigureAwait(false) is { } line)
                {
                    string? answer;
                    lock (_turn)
                        answer = _meter.Answer(line);
                    if (answer is not null)
                        await lines.WriteAsync(answer, _closing.Token).ConfigureAwait(false);
                }
            }
            catch (Exception fault) when (fault is OperationCanceledException or IOException or InstrumentException)
            {
                // A client that leaves, or sends what has no end, is no client any more.
            }
        }
    }
}
