using System.Globalization;
using System.Text;
using Loadmark.Drawing.Svg;
using Loadmark.Files;
using Loadmark.Files.Entry;
using Loadmark.Storage;
using Loadmark.Storage.Acceptances;
using Loadmark.Storage.Faults;
using Loadmark.Web.Guarding;
using Loadmark.Web.RequestIds;
using Loadmark.Workshop.Library;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Components.Server;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.Net.Http.Headers;

namespace Loadmark.Web.Hosting;

/// <summary>The addresses that the page answers at.</summary>
public static class PageEndpoints
{
    /// <summary>
    /// Gives each request its id, lets in only what the page's own address asks for with the key, and sends every answer with what a
    /// browser may do with it.
    /// </summary>
    /// <param name="app">The application, with an <see cref="EntryKey"/> among its services; to be called before anything else handles
    /// requests.</param>
    public static IApplicationBuilder UsePageGuards(this IApplicationBuilder app) =>
        app.UseMiddleware<RequestIdMiddleware>().UseMiddleware<AnswerHeaders>().UseMiddleware<OwnAddressGuard>().UseMiddleware<KeyGuard>()
            .UseRequestLocalization(options =>
        {
            // The browser's language where there is a file of texts for it. Numbers and units stay as the trade writes them.
            options.SetDefaultCulture(PageLanguages.Own).AddSupportedUICultures([.. PageLanguages.In(AppContext.BaseDirectory)]);
            options.ApplyCurrentCultureToResponseHeaders = true;
        });

    /// <summary>Maps the page.</summary>
    /// <param name="routes">Where to.</param>
    public static IEndpointRouteBuilder MapPage(this IEndpointRouteBuilder routes)
    {
        routes.MapStaticAssets();
        routes.MapGet("/scene.css", static () => Results.Text(SvgStyle.PageCss("html.dark"), "text/css", Encoding.UTF8));
        routes.MapGet("/rig/{id:guid}/file", ExportAsync);
        routes.MapGet("/rig/{id:guid}/loads.csv", ExportLoadsAsync);
        routes.MapGet("/rig/{id:guid}/paper", SheetDownloads.AnswerAsync);
        routes.MapGet("/rig/{id:guid}/readings/{record:guid}", ExportReadingsAsync);
        routes.MapGet("/backup", BackUpAsync);
        routes.MapGearExports();
        routes.MapRazorComponents<App>().AddInteractiveServerRenderMode(static (ServerComponentsEndpointOptions options) =>
            options.ContentSecurityFrameAncestorsPolicy = null); // said by AnswerHeaders, for every answer
        return routes;
    }

    private static async Task<IResult> ExportAsync(Guid id, RigStore store, HttpContext context)
    {
        if (await store.FindAsync(id, context.RequestAborted) is not { } rig)
            return Results.NotFound();

        return Download(context, rig.Text, "application/yaml", FileNames.Of(rig.Name) + ".rig.yaml");
    }

    private static async Task<IResult> ExportLoadsAsync(Guid id, RigStore store, LibraryCache cache, HttpContext context)
    {
        if (await store.FindAsync(id, context.RequestAborted) is not { } kept
            || RigFileReader.Read(kept.Text, "", await cache.NowAsync(context.RequestAborted)).Rig is not { } rig)
            return Results.NotFound();

        // The mark at the start tells spreadsheets that it is UTF-8.
        return Download(context, "\uFEFF" + LoadTable.Write(rig.Loads), "text/csv", FileNames.Of(rig.Name) + ".loads.csv");
    }

    /// <summary>What was measured on a rig, as <c>loadmark accept</c> reads it.</summary>
    private static async Task<IResult> ExportReadingsAsync(
        Guid id, Guid record, RigStore store, AcceptanceStore acceptances, HttpContext context)
    {
        var records = await acceptances.ListAsync(id, context.RequestAborted);
        if (await store.FindAsync(id, context.RequestAborted) is not { } rig
            || records.FirstOrDefault(one => one.Id == record) is not { } kept)
            return Results.NotFound();
        return Download(context, kept.Content.Readings, "text/csv", $"{FileNames.Of(rig.Name)}.{kept.Content.Version}.readings.csv");
    }

    /// <summary>All that is kept, in one file.</summary>
    private static async Task<IResult> BackUpAsync(Store store, TimeProvider clock, HttpContext context)
    {
        context.Response.Headers[HeaderNames.CacheControl] = "no-store";
        var folder = new TemporaryFolder();
        context.Response.RegisterForDispose(folder);
        try
        {
            var backup = await store.Copies.BackUpAsync(Path.Combine(folder.Path, "backup.db"), cancellationToken: context.RequestAborted);
            var name = string.Create(CultureInfo.InvariantCulture, $"loadmark-{clock.GetLocalNow():yyyyMMdd-HHmm}.db");
            return Results.File(backup.File, "application/vnd.sqlite3", name);
        }
        catch (StorageException fault)
        {
            return Results.Text(fault.Message, "text/plain", Encoding.UTF8, StatusCodes.Status503ServiceUnavailable);
        }
    }

    private static IResult Download(HttpContext context, string text, string type, string name)
    {
        context.Response.Headers[HeaderNames.CacheControl] = "no-store";
        return Results.File(Encoding.UTF8.GetBytes(text), type, name);
    }
}
