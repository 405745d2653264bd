using System.Net;
using Loadmark.Api;
using Loadmark.Serving.Logs;
using Loadmark.Storage;
using Loadmark.Storage.Faults;
using Loadmark.Web.Guarding;
using Loadmark.Web.Hosting;
using Loadmark.Web.Problems;
using Microsoft.AspNetCore.Server.Kestrel.Core;

namespace Loadmark.Serving;

/// <summary>The host of page and API.</summary>
internal static class ProgramHost
{
    private const int MostConnections = 200;

    /// <summary>How long an open page may keep the program from ending; every edit is kept by then.</summary>
    private static readonly TimeSpan Farewell = TimeSpan.FromSeconds(2);

    /// <summary>Builds the host; nothing listens before it is started.</summary>
    /// <param name="port">The port on the loopback address; 0 for any that is free.</param>
    /// <param name="store">The rigs.</param>
    /// <param name="opening">What opening them found.</param>
    /// <param name="settings">How it serves.</param>
    public static WebApplication Build(int port, Store store, StoreOpening opening, HostSettings settings)
    {
        var builder = WebApplication.CreateSlimBuilder(new WebApplicationOptions
        {
            ApplicationName = typeof(ProgramHost).Assembly.GetName().Name,
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
        builder.Logging.AddProvider(new LineLogs(settings.Error, settings.Log, settings.Clock));
        builder.Logging.AddFilter("Microsoft.Extensions.Hosting.Internal.Host", LogLevel.None);
        builder.Logging.SetMinimumLevel(LogLevel.Warning);
        if (settings.Log.Form == LogForm.Json)
            builder.Logging.AddFilter("Loadmark", LogLevel.Information);
        builder.Services.Configure<HostOptions>(static host => host.ShutdownTimeout = Farewell);
        builder.Services.AddSingleton(settings.Clock);
        builder.Services.AddSingleton(settings.Key);
        builder.Services.AddPage(store, opening, settings.Page);
        builder.Services.AddApi(settings.Api);

        var app = builder.Build();
        app.UsePageGuards();
        app.UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true);
        app.UseMiddleware<ProblemFiller>();
        app.UseAntiforgery();
        app.MapPage();
        app.MapApi();
        return app;
    }
}
