using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using Loadmark.Files.Library;
using Loadmark.Hosting;
using Loadmark.Storage;
using Loadmark.Web.Bench;
using Loadmark.Web.Guarding;
using Loadmark.Web.Hosting;
using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.Server.Kestrel.Core;

namespace Loadmark.Serving;

/// <summary>Serves the page to this machine's own browser.</summary>
internal static class PageServer
{
    private const int MostConnections = 200;

    /// <summary>How long an open page may keep the program from ending; every edit is kept by then.</summary>
    private static readonly TimeSpan Farewell = TimeSpan.FromSeconds(2);

    /// <summary>How many ports are tried, beginning with the one that was asked for.</summary>
    private const int PortsTried = 20;

    /// <summary>Serves until a wish to come to an end.</summary>
    /// <param name="options">Where the rigs are, and how it is reached.</param>
    /// <param name="around">Streams.</param>
    /// <param name="stop">The wish to come to an end.</param>
    public static async Task RunAsync(PageOptions options, Surroundings around, CancellationToken stop)
    {
        using var store = new Store(options.Folder, around.Time, RigMentions.Of);
        var opening = await store.OpenAsync(stop);
        if (opening.Trouble is { } trouble)
            await around.Error.WriteLineAsync($"loadmark: {trouble}");
        else if (opening.WasCreated)
            await DemoRigs.AddAsync(store.Rigs, stop);

        await using var app = await StartAsync(options, store, opening, stop);
        var address = app.Urls.First();
        await using (var output = new StreamWriter(around.Output, around.OutputEncoding, leaveOpen: true))
            await output.WriteLineAsync($"Loadmark is at {address}  (Ctrl-C ends it; rigs are kept in {options.Folder})");
        if (options.OpensBrowser)
            Open(address);
        await app.WaitForShutdownAsync(stop);
    }

    /// <summary>Starts on the first port that is free.</summary>
    private static async Task<WebApplication> StartAsync(PageOptions options, Store store, StoreOpening opening, CancellationToken stop)
    {
        for (var tried = 0; ; tried++)
        {
            var app = Build(options.Port == 0 ? 0 : options.Port + tried, store, opening);
            try
            {
                await app.StartAsync(stop);
                return app;
            }
            catch (IOException fault) when (fault.InnerException is AddressInUseException && tried < PortsTried)
            {
                await app.DisposeAsync();
            }
            catch (SocketException fault) when (fault.SocketErrorCode == SocketError.AccessDenied && tried < PortsTried)
            {
                await app.DisposeAsync();
            }
        }
    }

    private static WebApplication Build(int port, Store store, StoreOpening opening)
    {
        var builder = WebApplication.CreateSlimBuilder(new WebApplicationOptions
        {
            ApplicationName = typeof(PageServer).Assembly.GetName().Name,
            ContentRootPath = AppContext.BaseDirectory,
            EnvironmentName = Environments.Production,
        });

        // Neither a file beside the program nor the environment decides where this listens: loopback, and nothing else.
        builder.Configuration.Sources.Clear();
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = OwnAddressGuard.LargestBody;
            kestrel.Limits.MaxConcurrentConnections = MostConnections;
            kestrel.Limits.MaxConcurrentUpgradedConnections = MostConnections;
            kestrel.Listen(IPAddress.Loopback, port, static listen => listen.Protocols = HttpProtocols.Http1);
        });
        builder.Logging.ClearProviders();
        builder.Logging.AddSimpleConsole(static console => console.SingleLine = true);

        // Results are on standard output, talk is not.
        builder.Services.Configure<Microsoft.Extensions.Logging.Console.ConsoleLoggerOptions>(static console => console.LogToStandardErrorThreshold = LogLevel.Trace);
        builder.Logging.AddFilter("Microsoft.Extensions.Hosting.Internal.Host", LogLevel.None);
        builder.Logging.SetMinimumLevel(LogLevel.Warning);
        builder.Services.Configure<HostOptions>(static host => host.ShutdownTimeout = Farewell);
        builder.Services.AddPage(store, opening, new PageLimits());

        var app = builder.Build();
        app.UsePageGuards();
        app.UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true);
        app.UseAntiforgery();
        app.MapPage();
        return app;
    }

    /// <summary>Opens the address in the user's browser, where there is one; it is printed in any case.</summary>
    private static void Open(string address)
    {
        try
        {
            using var browser = Process.Start(new ProcessStartInfo(address) { UseShellExecute = true });
        }
        catch (Exception fault) when (fault is InvalidOperationException or System.ComponentModel.Win32Exception or PlatformNotSupportedException)
        {
            // No desktop here: whoever reads the line above opens it.
        }
    }
}
