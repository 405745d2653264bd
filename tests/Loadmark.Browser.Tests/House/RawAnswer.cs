using System.Net;
using System.Net.Sockets;
using System.Text;

namespace Loadmark.Browser.Tests.House;

/// <summary>What the program answers to a request that is sent byte for byte, as no well-behaved client would send it.</summary>
/// <param name="Status">The status; 0 when it closed the connection without a word.</param>
/// <param name="Headers">The headers, in lower case.</param>
/// <param name="Body">What followed, as Latin-1.</param>
internal sealed record RawAnswer(int Status, IReadOnlyDictionary<string, string> Headers, string Body)
{
    /// <summary>Asks with the program's key.</summary>
    /// <param name="program">Whom.</param>
    /// <param name="method">GET, POST and the like.</param>
    /// <param name="target">The path, sent as it stands.</param>
    /// <param name="headers">Lines; a Host line is added unless there is one.</param>
    /// <param name="body">The body; none by default.</param>
    public static Task<RawAnswer> AskAsync(RunningProgram program, string method, string target, string[]? headers = null, byte[]? body = null) =>
        AskAsync(program.Address, method, target, [.. headers ?? [], $"Authorization: Bearer {program.Key}"], body);

    /// <summary>Asks without a key.</summary>
    /// <param name="page">Where.</param>
    /// <param name="method">GET, POST and the like.</param>
    /// <param name="target">The path, sent as it stands.</param>
    /// <param name="headers">Lines; a Host line is added unless there is one.</param>
    /// <param name="body">The body; none by default.</param>
    public static async Task<RawAnswer> AskAsync(Uri page, string method, string target, string[]? headers = null, byte[]? body = null)
    {
        headers ??= [];
        var token = TestContext.Current.CancellationToken;
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(token);
        patience.CancelAfter(Patience.Page);
        using var client = new TcpClient();
        await client.ConnectAsync(IPAddress.Loopback, page.Port, patience.Token);
        await using var stream = client.GetStream();

        var head = new StringBuilder($"{method} {target} HTTP/1.1\r\n");
        if (!headers.Any(static line => line.StartsWith("Host:", StringComparison.OrdinalIgnoreCase)))
            head.Append($"Host: {page.Authority}\r\n");
        foreach (var line in headers)
            head.Append($"{line}\r\n");
        if (body is not null)
            head.Append($"Content-Length: {body.Length}\r\n");
        head.Append("Connection: close\r\n\r\n");
        await stream.WriteAsync(Encoding.Latin1.GetBytes(head.ToString()), patience.Token);
        var all = new MemoryStream();
        try
        {
            if (body is not null)
                await stream.WriteAsync(body, patience.Token);
            await stream.CopyToAsync(all, patience.Token);
        }
        catch (IOException) when (all.Length > 0 || body is not null)
        {
            // It has answered and hung up before it was told everything; what came is the answer.
            await ReadRestAsync(stream, all, patience.Token);
        }

        return Parse(Encoding.Latin1.GetString(all.ToArray()));
    }

    private static async Task ReadRestAsync(NetworkStream stream, MemoryStream all, CancellationToken token)
    {
        try
        {
            await stream.CopyToAsync(all, token);
        }
        catch (IOException)
        {
            // Nothing more.
        }
    }

    private static RawAnswer Parse(string text)
    {
        var end = text.IndexOf("\r\n\r\n", StringComparison.Ordinal);
        if (end < 0)
            return new RawAnswer(0, new Dictionary<string, string>(StringComparer.Ordinal), "");
        var lines = text[..end].Split("\r\n");
        var headers = lines.Skip(1).Select(static line => line.Split(':', 2))
            .GroupBy(static pair => pair[0].ToLowerInvariant(), StringComparer.Ordinal)
            .ToDictionary(static group => group.Key, static group => string.Join(", ", group.Select(static pair => pair[1].Trim())), StringComparer.Ordinal);
        return new RawAnswer(int.Parse(lines[0].Split(' ')[1]), headers, text[(end + 4)..]);
    }
}
