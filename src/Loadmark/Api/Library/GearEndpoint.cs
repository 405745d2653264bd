using System.Globalization;
using System.Text;
using Loadmark.Answers;
using Loadmark.Api.Execution;
using Loadmark.Api.Requests;
using Loadmark.Api.StoredRigs;
using Loadmark.Files.Library;
using Loadmark.Storage;
using Loadmark.Storage.Gear;
using Loadmark.Questions;
using Loadmark.Web.Problems;
using Loadmark.Workshop.Library;
using Loadmark.Workshop.TypedInput;

namespace Loadmark.Api.Library;

/// <summary>Lists, tells, adds, changes, measures and removes gear of the library.</summary>
/// <param name="store">What is kept.</param>
/// <param name="cache">The gear of it.</param>
/// <param name="editor">Changes it.</param>
/// <param name="requests">Takes requests.</param>
/// <param name="clock">Tells when something was measured.</param>
internal sealed class GearEndpoint(Store store, LibraryCache cache, LibraryEditor editor, StoreRequests requests, TimeProvider clock)
{
    /// <summary>Tells the list.</summary>
    public Task<IResult> ListAsync(HttpContext context) => requests.AnswerAsync(context, GearOperations.List, async request =>
    {
        var options = request.Options;
        var found = await ListedGear.FindAsync(
            store,
            cache,
            options.Text(GearOperations.Words) ?? "",
            GearAddress.KindOf(options.Text(QuestionSpecs.Kind)),
            options.Number(GearOperations.Most),
            context.RequestAborted);
        return TypedResults.Bytes(AnswerBytes.Of(output => GearJson.WriteList(output, found)), ApiContent.Json);
    });

    /// <summary>Answers with one piece of gear.</summary>
    public Task<IResult> GetAsync(HttpContext context, string kind, string tag) =>
        requests.AnswerAsync(context, GearOperations.Get, async request =>
    {
        if (GearAddress.Find(await cache.NowAsync(context.RequestAborted), kind, tag, out var refusal) is not { } gear)
            return new ProblemResult(refusal!);
        if (request.AnswerTypeOf(GearOperations.Get) != ApiContent.Yaml)
            return await ShowAsync(context, gear);
        if (gear.Piece is not { } piece)
            return new ProblemResult(new Problem(ProblemKind.Unreadable, "A newer version of the program wrote what is said of it."));
        TellRevision(context, gear.Stored);
        return TypedResults.Bytes(Encoding.UTF8.GetBytes(GearFileWriter.WriteYaml([(piece, gear.Stored.Content.Words)])), ApiContent.Yaml);
    });

    /// <summary>Adds one piece of gear.</summary>
    public Task<IResult> AddAsync(HttpContext context) => requests.AnswerAsync(context, GearOperations.Add, async request =>
    {
        if (GearBody.ReadOne(request, out var refusal) is not { } row)
            return new ProblemResult(refusal!);
        var outcome = await editor.AddAsync(
            row.Piece!, row.Words ?? [], StoreRequests.WhatOf(request, "added by another program"), context.RequestAborted);
        if (outcome.State != GearState.Saved)
            return await RefuseAsync(context, outcome);
        context.Response.Headers.Location = GearAddress.Of(row.Piece!.Kind, row.Piece.Tag);
        return await ShowAsync(context, new LibraryGear(outcome.Gear!), StatusCodes.Status201Created);
    });

    /// <summary>Says something else of one.</summary>
    public Task<IResult> ChangeAsync(HttpContext context, string kind, string tag) =>
        requests.AnswerAsync(context, GearOperations.Change, async request =>
    {
        if (Revision.In(context.Request, out var refusal) is not { } revision)
            return new ProblemResult(refusal!);
        if (GearAddress.Find(await cache.NowAsync(context.RequestAborted), kind, tag, out refusal) is not { } gear)
            return new ProblemResult(refusal!);
        if (GearBody.ReadOne(request, out refusal) is not { } row)
            return new ProblemResult(refusal!);
        if (row.Piece!.Kind != gear.Kind)
            return new ProblemResult(
                new Problem(
                    ProblemKind.BadRequest,
                    $"The address names a {kind}, and the body has a {JsonWords.Of(row.Piece.Kind)}. Gear stays of the kind that it is."));
        var what = StoreRequests.WhatOf(request, "changed by another program");
        var outcome = await editor.ChangeAsync(
            gear.Stored with { Revision = revision }, row.Piece, row.Words ?? [], what, context.RequestAborted);
        return outcome.State == GearState.Saved
            ? await ShowAsync(context, new LibraryGear(outcome.Gear!))
            : await RefuseAsync(context, outcome);
    });

    /// <summary>Removes one piece of gear.</summary>
    public Task<IResult> RemoveAsync(HttpContext context, string kind, string tag) =>
        requests.AnswerAsync(context, GearOperations.Remove, async _ =>
    {
        if (Revision.In(context.Request, out var refusal) is not { } revision)
            return new ProblemResult(refusal!);
        if (GearAddress.Find(await cache.NowAsync(context.RequestAborted), kind, tag, out refusal) is not { } gear)
            return new ProblemResult(refusal!);
        var outcome = await store.Gear.RemoveAsync(gear.Id, revision, context.RequestAborted);
        return outcome.State == GearState.Saved ? TypedResults.NoContent() : await RefuseAsync(context, outcome);
    });

    /// <summary>Adds what a meter showed of one.</summary>
    public Task<IResult> MeasureAsync(HttpContext context, string kind, string tag) =>
        requests.AnswerAsync(context, GearOperations.Measure, async request =>
    {
        if (GearAddress.Find(await cache.NowAsync(context.RequestAborted), kind, tag, out var refusal) is not { } gear)
            return new ProblemResult(refusal!);
        if (gear.Kind != Core.Gear.GearKind.Load)
            return new ProblemResult(new Problem(ProblemKind.BadRequest, "Only loads draw, so that only of them a meter shows something."));
        if (BodyObject.Read(request.Body, GearOperations.Shows, out refusal) is not { } body)
            return new ProblemResult(refusal!);
        var (run, start) = (body.TextIfAny(GearOperations.Run, ref refusal), body.TextIfAny(GearOperations.Start, ref refusal));
        var (meter, note) = (body.TextIfAny(GearOperations.Meter, ref refusal), body.TextIfAny(GearOperations.Note, ref refusal));
        if (refusal is not null)
            return new ProblemResult(refusal);
        if (TypedReadings.Read(run, start, meter, note, clock.GetUtcNow(), out var complaint, mark: "") is not { Count: > 0 } readings)
            return new ProblemResult(
                new Problem(ProblemKind.BadRequest, complaint ?? "The body has to say what the meter showed, as run or start."));
        var (figures, outcome) = (new LoadMeasurements([], null, null), new GearOutcome(GearState.Gone, null));
        foreach (var reading in readings)
            (figures, outcome) = await editor.MeasureAsync(gear.Id, reading, context.RequestAborted);
        return outcome.State == GearState.Saved
            ? TypedResults.Bytes(AnswerBytes.Of(output => GearJson.Write(output, outcome.Gear!, figures)), ApiContent.Json)
            : await RefuseAsync(
                context,
                outcome,
                "The reading is kept, but the figure could not be changed: somebody else is changing it. The next reading makes it right.");
    });

    private static void TellRevision(HttpContext context, StoredGear gear) =>
        context.Response.Headers.ETag = string.Create(CultureInfo.InvariantCulture, $"\"{gear.Revision}\"");

    private async Task<IResult> ShowAsync(HttpContext context, LibraryGear gear, int status = StatusCodes.Status200OK)
    {
        var shown = await ShownGear.OfAsync(store, editor, gear, context.RequestAborted);
        TellRevision(context, gear.Stored);
        context.Response.StatusCode = status;
        return TypedResults.Bytes(AnswerBytes.Of(output => GearJson.Write(output, shown)), ApiContent.Json);
    }

    private async Task<IResult> RefuseAsync(HttpContext context, GearOutcome outcome, string? because = null)
    {
        if (outcome is not { State: GearState.Conflict or GearState.TagTaken, Gear: { } present })
            return new ProblemResult(new Problem(ProblemKind.NotFound, "There is no such piece of gear, or it was removed."));
        var shown = await ShownGear.OfAsync(store, editor, new LibraryGear(present), context.RequestAborted);
        var problem = outcome.State == GearState.Conflict
            ? new Problem(ProblemKind.Conflict, because ?? $"It is at revision {present.Revision} by now.")
            : new Problem(
                ProblemKind.TagTaken,
                $"The library has a {JsonWords.Of(present.Content.Kind)} with the tag {present.Content.Tag} already.");
        return new ProblemResult(problem with { More = new ProblemExtras { PresentGear = shown }.Write });
    }
}
