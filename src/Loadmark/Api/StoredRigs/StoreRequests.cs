using Loadmark.Api.Execution;
using Loadmark.Api.Requests;
using Loadmark.Storage.Faults;
using Loadmark.Web.Problems;

namespace Loadmark.Api.StoredRigs;

/// <summary>Takes requests about what is kept, and says what stands in the way.</summary>
/// <param name="reader">Takes requests.</param>
internal sealed class StoreRequests(RequestReader reader)
{
    /// <summary>Takes a request and has it answered.</summary>
    /// <param name="context">The request.</param>
    /// <param name="operation">What its address takes.</param>
    /// <param name="answer">Answers it.</param>
    public async Task<IResult> AnswerAsync(HttpContext context, ApiOperation operation, Func<ApiRequest, Task<IResult>> answer)
    {
        var (request, refusal) = await reader.ReadAsync(context, operation);
        if (request is null)
            return new ProblemResult(refusal!);
        context.Response.Headers.CacheControl = "no-store";
        try
        {
            return await answer(request);
        }
        catch (StorageException fault)
        {
            return new ProblemResult(new Problem(ProblemKind.Store, fault.Message));
        }
    }

    /// <summary>What a change does, for the list of changes and the page's undo button.</summary>
    /// <param name="request">The request, which may say it.</param>
    /// <param name="otherwise">What is said where it does not.</param>
    public static string WhatOf(ApiRequest request, string otherwise) =>
        request.Options.Text(ApiOptions.What)?.Replace('\0', ' ').Trim() is { Length: > 0 } words ? words : otherwise;
}
