using System.Net;
using System.Net.Http.Headers;
using System.Net.Sockets;
using System.Text;

namespace Loadmark.Browser.Tests.House;

/// <summary>Callers that ask a running program for more than it can do, or do not go on with what they began, until it is disposed.</summary>
/// <param name="program">The program.</param>
internal sealed class Pressure(RunningProgram program) : IAsyncDisposable
{
    private readonly CancellationTokenSource _stop = new();
    private readonly List<Task> _callers = [];
    private readonly HttpClient _client = new(new SocketsHttpHandler { MaxConnectionsPerServer = 200 })
    {
        BaseAddress = program.Address,
        Timeout = TimeSpan.FromMinutes(5),
        DefaultRequestHeaders = { Authorization = new AuthenticationHeaderValue("Bearer", program.Key) },
    };

    private int _answered;
    private int _refused;
    private int _other;

    /// <summary>How many questions were answered, how many refused for want of room, and how many met with anything else.</summary>
    public (int Answered, int Refused, int Other) Count => (_answered, _refused, _other);

    /// <summary>Callers that each ask for the same thing again and again; one that is refused asks again soon.</summary>
    /// <param name="callers">How many.</param>
    /// <param name="address">What they ask.</param>
    /// <param name="body">What they send.</param>
    public void Ask(int callers, string address, string body) => Begin(callers, async () =>
    {
        while (!_stop.IsCancellationRequested)
        {
            using var content = new StringContent(body, Encoding.UTF8, "application/yaml");
            using var answer = await _client.PostAsync(new Uri(address, UriKind.Relative), content, _stop.Token);
            Interlocked.Increment(ref answer.StatusCode is HttpStatusCode.OK or HttpStatusCode.UnprocessableEntity ? ref _answered : ref answer.StatusCode == HttpStatusCode.ServiceUnavailable ? ref _refused : ref _other);
            if (answer.StatusCode != HttpStatusCode.OK)
                await Task.Delay(50, _stop.Token);
        }
    });

    /// <summary>Callers that ask for a stream of events and never read it.</summary>
    /// <param name="callers">How many.</param>
    public void LeaveStreamsOpen(int callers) => Begin(callers, async () =>
    {
        var body = HardRig.Sixty();
        using var socket = await ConnectAsync();
        await SendAsync(socket, $"POST /api/plan HTTP/1.1\r\nHost: {program.Address.Authority}\r\nAuthorization: Bearer {program.Key}\r\nAccept: text/event-stream\r\nContent-Type: application/yaml\r\nContent-Length: {body.Length}\r\n\r\n{body}");
        await Task.Delay(Timeout.Infinite, _stop.Token);
    });

    /// <summary>Callers that send their request a letter at a time.</summary>
    /// <param name="callers">How many.</param>
    public void AskSlowly(int callers) => Begin(callers, async () =>
    {
        while (!_stop.IsCancellationRequested)
        {
            using var socket = await ConnectAsync();
            try
            {
                await SendAsync(socket, $"GET / HTTP/1.1\r\nHost: {program.Address.Authority}\r\nX-Slow: ");
                while (!_stop.IsCancellationRequested)
                {
                    await Task.Delay(1000, _stop.Token);
                    await SendAsync(socket, "a");
                }
            }
            catch (SocketException)
            {
                // It was shown the door, and comes again.
            }
        }
    });

    /// <summary>Callers that connect and say nothing.</summary>
    /// <param name="callers">How many.</param>
    public void SayNothing(int callers) => Begin(callers, async () =>
    {
        using var socket = await ConnectAsync();
        await Task.Delay(Timeout.Infinite, _stop.Token);
    });

    /// <summary>A caller that connects and leaves again, over and over.</summary>
    public void ComeAndGo() => Begin(1, async () =>
    {
        while (!_stop.IsCancellationRequested)
        {
            (await ConnectAsync()).Dispose();
            Interlocked.Increment(ref _answered);
            await Task.Yield();
        }
    });

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await _stop.CancelAsync();
        await Task.WhenAll(_callers);
        _client.Dispose();
        _stop.Dispose();
    }

    private void Begin(int callers, Func<Task> call)
    {
        for (var caller = 0; caller < callers; caller++)
            _callers.Add(Task.Run(CallAsync));

        async Task CallAsync()
        {
            try
            {
                await call();
            }
            catch (OperationCanceledException)
            {
                // The pressure is over.
            }
        }
    }

    private async Task<Socket> ConnectAsync()
    {
        var socket = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp);
        await socket.ConnectAsync(IPAddress.Loopback, program.Address.Port, _stop.Token);
        return socket;
    }

    private async Task SendAsync(Socket socket, string text) => await socket.SendAsync(Encoding.ASCII.GetBytes(text), SocketFlags.None, _stop.Token);
}
