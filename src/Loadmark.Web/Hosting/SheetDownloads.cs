using System.Text;
using Loadmark.Files;
using Loadmark.Storage;
using Loadmark.Workshop.Library;
using Loadmark.Workshop.Sheets;
using Loadmark.Workshop.Solves;
using Loadmark.Workshop.TypedInput;
using Microsoft.AspNetCore.Http;
using Microsoft.Net.Http.Headers;

namespace Loadmark.Web.Hosting;

/// <summary>Hands the sheet of a kept rig to the browser, which shows it or keeps it.</summary>
internal static class SheetDownloads
{
    /// <summary>
    /// Answers with the sheet of a rig, made as the address asks: <c>as</c>, <c>only</c>, <c>paper</c>, <c>labels</c>, <c>contact</c>.
    /// </summary>
    /// <param name="id">The rig.</param>
    /// <param name="store">Where it is kept.</param>
    /// <param name="cache">What it may take from the gear library.</param>
    /// <param name="gate">Lets it be computed among what else is computed.</param>
    /// <param name="clock">Tells the day.</param>
    /// <param name="context">The request.</param>
    public static async Task<IResult> AnswerAsync(
        Guid id, RigStore store, LibraryCache cache, SolveGate gate, TimeProvider clock, HttpContext context)
    {
        context.Response.Headers[HeaderNames.CacheControl] = "no-store";
        var query = context.Request.Query;
        var word = query["as"].ToString();
        if (SheetFile.KindOf(word.Length == 0 ? "pdf" : word) is not { } kind)
            return Refused($"as: expected {string.Join(", ", SheetFile.KindWords)}, found \"{word}\".");
        if (TypedSheetOptions.Read(
            new SheetOptions { Made = clock.GetLocalNow() },
            new TypedSheet
            {
                Only = CommaList.Of([.. query["only"].OfType<string>()]),
                Paper = Given("paper"),
                Labels = Given("labels"),
                Contact = Given("contact"),
                Reels = CommaList.Of([.. query["reels"].OfType<string>()]),
                Ends = Given("ends"),
                Cut = Given("cut"),
            },
            out var options) is { } problem)
            return Refused(problem);
        if (await store.FindAsync(id, context.RequestAborted) is not { } kept)
            return Results.NotFound();
        var library = await cache.NowAsync(context.RequestAborted);
        if (RigFileReader.Read(kept.Text, "", library).Rig is not { } rig)
            return Refused("The rig's file has errors. See the page File.");

        options = options with { RigText = StandAloneText.Of(kept.Text, rig, library) };
        var bytes = await gate.RunAsync(
            cancellation => SheetFile.Write(SheetBuilder.Build(SheetFigures.Of(rig, cancellation), options, cancellation), kind),
            context.RequestAborted);

        // Shown in the browser rather than kept at once; the name is for who keeps it.
        var disposition = new ContentDispositionHeaderValue("inline");
        disposition.SetHttpFileName($"{FileNames.Of(rig.Name)}.sheet.{SheetFile.KindWords[(int)kind]}");
        context.Response.Headers[HeaderNames.ContentDisposition] = disposition.ToString();
        return Results.Bytes(bytes, SheetFile.MediaTypeOf(kind));

        string? Given(string name) => query[name].ToString() is { Length: > 0 } text ? text : null;
    }

    private static IResult Refused(string sentence) =>
        Results.Text(sentence, "text/plain", Encoding.UTF8, StatusCodes.Status400BadRequest);
}
