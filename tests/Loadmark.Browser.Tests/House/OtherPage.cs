using System.Net;
using System.Net.Sockets;
using System.Text;

namespace Loadmark.Browser.Tests.House;

/// <summary>A page of another program on this machine, at a port of its own, as anybody may run one.</summary>
internal sealed class OtherPage : IDisposable
{
    private readonly HttpListener _listener = new();
    private readonly string _html;

    /// <summary>Serves a page.</summary>
    /// <param name="html">The page.</param>
    public OtherPage(string html)
    {
        _html = html;
        using (var free = new TcpListener(IPAddress.Loopback, 0))
        {
            free.Start();
            Port = ((IPEndPoint)free.LocalEndpoint).Port;
        }

        // One name of this machine is of the program's own site for a browser, the other is not.
        _listener.Prefixes.Add($"http://127.0.0.1:{Port}/");
        _listener.Prefixes.Add($"http://localhost:{Port}/");
        _listener.Start();
        _ = ServeAsync();
    }

    /// <summary>Its port.</summary>
    public int Port { get; }

    /// <inheritdoc/>
    public void Dispose() => ((IDisposable)_listener).Dispose();

    private async Task ServeAsync()
    {
        try
        {
            while (true)
            {
                var context = await _listener.GetContextAsync();
                context.Response.ContentType = "text/html; charset=utf-8";
                await context.Response.OutputStream.WriteAsync(Encoding.UTF8.GetBytes(_html));
                context.Response.Close();
            }
        }
        catch (Exception fault) when (fault is HttpListenerException or ObjectDisposedException)
        {
            // It was disposed of.
        }
    }
}
