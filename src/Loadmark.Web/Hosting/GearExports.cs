using System.Text;
using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using Loadmark.Files.Library;
using Loadmark.Workshop.Library;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.Net.Http.Headers;

namespace Loadmark.Web.Hosting;

/// <summary>The gear library as files.</summary>
internal static class GearExports
{
    /// <summary>Maps them.</summary>
    public static void MapGearExports(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/gear/library.yaml", async (GearShelf shelf, HttpContext context) =>
            Download(context, GearFileWriter.WriteYaml(await GearAsync(shelf, context)), "application/yaml", "library.yaml"));
        Map("loads", GearKind.Load);
        Map("supplies", GearKind.Supply);
        Map("leads", GearKind.Lead);

        // The mark at the start tells spreadsheets that it is UTF-8.
        void Map(string name, GearKind kind) => routes.MapGet($"/gear/{name}.csv", async (GearShelf shelf, HttpContext context) =>
            Download(context, "\uFEFF" + GearFileWriter.WriteTable(kind, await GearAsync(shelf, context)), "text/csv", $"{name}.csv"));
    }

    private static async Task<List<(GearPiece Piece, ValueList<string> Words)>> GearAsync(GearShelf shelf, HttpContext context) =>
        [.. from gear in (await shelf.NowAsync(context.RequestAborted)).Gear let piece = gear.Piece where piece is not null select (piece, gear.Stored.Content.Words)];

    private static IResult Download(HttpContext context, string text, string type, string name)
    {
        context.Response.Headers[HeaderNames.CacheControl] = "no-store";
        return Results.File(Encoding.UTF8.GetBytes(text), type, name);
    }
}
