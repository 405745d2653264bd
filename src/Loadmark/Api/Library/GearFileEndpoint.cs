using System.Text;
using Loadmark.Answers;
using Loadmark.Api.Execution;
using Loadmark.Api.Requests;
using Loadmark.Api.StoredRigs;
using Loadmark.Questions;
using Loadmark.Web.Problems;
using Loadmark.Workshop.Library;
using Loadmark.Workshop.TypedInput;

namespace Loadmark.Api.Library;

/// <summary>Takes files of gear into the library, and writes them.</summary>
/// <param name="cache">The gear.</param>
/// <param name="editor">Changes it.</param>
/// <param name="requests">Takes requests.</param>
internal sealed class GearFileEndpoint(LibraryCache cache, LibraryEditor editor, StoreRequests requests)
{
    private const string New = "new";
    private const string All = "all";

    /// <summary>Takes a file, or says what taking it would do.</summary>
    public Task<IResult> ImportAsync(HttpContext context) => requests.AnswerAsync(context, GearOperations.Import, async request =>
    {
        if (GearBody.Read(request, out var refusal) is not { } file)
            return new ProblemResult(refusal!);
        var preview = ImportPreview.Of(await cache.NowAsync(context.RequestAborted), file);
        var result = new ImportResult([], [], [.. preview.Rows.Where(static row => row.State == ImportState.Differs)], []);
        if (request.Options.Names(GearOperations.Take) is { Count: > 0 } names)
        {
            var take = new TakenTags([.. names.Where(static name => name is not (New or All))], names.Contains(All));
            if (take.Strangers(preview).FirstOrDefault() is { } stranger)
                return new ProblemResult(
                    new Problem(ProblemKind.BadRequest, $"take: there is no {stranger} to take. Nothing was changed."));
            result = await editor.TakeAsync(preview, take.Has, WhatOf(request), context.RequestAborted);
        }

        return TypedResults.Bytes(AnswerBytes.Of(output => ImportJson.Write(output, preview, result, file.LeftOut)), ApiContent.Json);
    });

    /// <summary>Writes a file of what there is.</summary>
    public Task<IResult> ExportAsync(HttpContext context) => requests.AnswerAsync(context, GearOperations.Export, async request =>
    {
        var now = await cache.NowAsync(context.RequestAborted);
        var kind = GearAddress.KindOf(request.Options.Text(QuestionSpecs.Kind));
        var isTable = request.Options.Text(GearOperations.Form) is { } form
            ? form == "csv"
            : request.AnswerTypeOf(GearOperations.Export) == ApiContent.Csv;
        var gear = isTable ? ExportedGear.AsTable(now, kind) : ExportedGear.AsYaml(now, kind);
        return TypedResults.Bytes(Encoding.UTF8.GetBytes(gear.Text), isTable ? ApiContent.Csv : ApiContent.Yaml);
    });

    private static string WhatOf(ApiRequest request) =>
        Path.GetFileName(request.File.Replace('\0', ' ')).Trim() is { Length: > 0 } name
            ? $"imported from {name}"
            : "imported by another program";
}
