using System.Globalization;
using Loadmark.Answers;
using Loadmark.Api.Execution;
using Loadmark.Api.Requests;
using Loadmark.Shapes;
using Loadmark.Storage;
using Loadmark.Storage.Rigs;
using Loadmark.Web.Problems;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Loadmark.Api.StoredRigs;

/// <summary>Lists, tells, adds, saves and removes kept rigs.</summary>
/// <param name="store">The rigs.</param>
/// <param name="requests">Takes requests.</param>
internal sealed class RigsEndpoint(RigStore store, StoreRequests requests)
{
    private const string CommonWords = "changing the file from another program";

    /// <summary>Tells the list.</summary>
    public Task<IResult> ListAsync(HttpContext context) => requests.AnswerAsync(context, RigsOperations.List, async _ =>
    {
        var rigs = await store.ListAsync(context.RequestAborted);
        return TypedResults.Bytes(AnswerBytes.Of(output => JsonFormat.WriteLine(output, StoredRigJson.List, rigs)), ApiContent.Json);
    });

    /// <summary>Answers with one rig.</summary>
    public Task<IResult> GetAsync(HttpContext context, Guid id) => requests.AnswerAsync(context, RigsOperations.Get, async _ =>
        await store.FindAsync(id, context.RequestAborted) is { } rig ? (IResult)Show(context, rig) : Missing());

    /// <summary>Stores a new rig.</summary>
    public Task<IResult> AddAsync(HttpContext context) => requests.AnswerAsync(context, RigsOperations.Add, async request =>
    {
        if (request.ReadRig(out var text, out var refusal) is not { } rig)
            return new ProblemResult(refusal!);
        var kept = await store.AddAsync(rig.Name, text, context.RequestAborted);
        context.Response.Headers.Location = $"/api/rigs/{kept.Id}";
        return Show(context, kept, StatusCodes.Status201Created);
    });

    /// <summary>Keeps an edit.</summary>
    public Task<IResult> SaveAsync(HttpContext context, Guid id) => requests.AnswerAsync(context, RigsOperations.Save, async request =>
    {
        if (Revision.In(context.Request, out var refusal) is not { } revision)
            return new ProblemResult(refusal!);
        if (request.ReadRig(out var text, out refusal) is not { } rig)
            return new ProblemResult(refusal!);
        var outcome = await store.SaveAsync(
            id, revision, rig.Name, text, StoreRequests.WhatOf(request, CommonWords), context.RequestAborted);
        return outcome.State == SaveState.Saved ? Show(context, outcome.Rig!) : Refuse(outcome);
    });

    /// <summary>Removes one rig.</summary>
    public Task<IResult> RemoveAsync(HttpContext context, Guid id) => requests.AnswerAsync(context, RigsOperations.Remove, async _ =>
    {
        if (Revision.In(context.Request, out var refusal) is not { } revision)
            return new ProblemResult(refusal!);
        var outcome = await store.RemoveAsync(id, revision, context.RequestAborted);
        return outcome.State == SaveState.Saved ? TypedResults.NoContent() : Refuse(outcome);
    });

    private static FileContentHttpResult Show(HttpContext context, StoredRig rig, int status = StatusCodes.Status200OK)
    {
        context.Response.Headers.ETag = string.Create(CultureInfo.InvariantCulture, $"\"{rig.Revision}\"");
        context.Response.StatusCode = status;
        return TypedResults.Bytes(AnswerBytes.Of(output => JsonFormat.WriteLine(output, StoredRigJson.Rig, rig)), ApiContent.Json);
    }

    private static ProblemResult Missing() => new(new Problem(ProblemKind.NotFound, "There is no such rig, or it was removed."));

    private static ProblemResult Refuse(SaveOutcome outcome) => outcome is { State: SaveState.Conflict, Rig: { } present }
        ? new ProblemResult(new Problem(ProblemKind.Conflict, $"The rig is at revision {present.Revision} by now.")
        {
            More = new ProblemExtras { Present = present }.Write,
        })
        : Missing();
}
