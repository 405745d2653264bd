using System.Text;
using Loadmark.Core.Gear;
using Loadmark.Workshop.Library;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.Net.Http.Headers;

namespace Loadmark.Web.Hosting;

/// <summary>The gear library as files.</summary>
internal static class GearExports
{
    /// <summary>Maps the addresses that the gear library is downloaded from.</summary>
    public static void MapGearExports(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/gear/library.yaml", async (LibraryCache cache, HttpContext context) =>
            Download(
                context, ExportedGear.AsYaml(await cache.NowAsync(context.RequestAborted), null).Text, "application/yaml", "library.yaml"));
        Map("loads", GearKind.Load);
        Map("supplies", GearKind.Supply);
        Map("leads", GearKind.Lead);

        void Map(string name, GearKind kind) => routes.MapGet($"/gear/{name}.csv", async (LibraryCache cache, HttpContext context) =>
            Download(context, ExportedGear.AsTable(await cache.NowAsync(context.RequestAborted), kind).Text, "text/csv", $"{name}.csv"));
    }

    private static IResult Download(HttpContext context, string text, string type, string name)
    {
        context.Response.Headers[HeaderNames.CacheControl] = "no-store";
        return Results.File(Encoding.UTF8.GetBytes(text), type, name);
    }
}
