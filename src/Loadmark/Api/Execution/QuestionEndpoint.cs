using System.Net.ServerSentEvents;
using System.Runtime.CompilerServices;
using System.Text;
using Loadmark.Api.Requests;
using Loadmark.Storage.Faults;
using Loadmark.Web.Problems;

namespace Loadmark.Api.Execution;

/// <summary>Answers questions: takes the request, waits for room, computes, and writes the answer or the events that lead to it.</summary>
/// <param name="reader">Takes requests.</param>
/// <param name="gate">Lets computations run.</param>
/// <param name="limits">The limits.</param>
/// <param name="clock">Measures time.</param>
/// <param name="log">The log.</param>
internal sealed class QuestionEndpoint(
    RequestReader reader, ApiGate gate, ApiLimits limits, TimeProvider clock, ILogger<QuestionEndpoint> log)
{
    private static readonly TimeSpan Heartbeat = TimeSpan.FromSeconds(1);

    /// <summary>Answers a request that asks a question.</summary>
    /// <param name="context">The request.</param>
    /// <param name="question">The question that it asks.</param>
    public Task<IResult> AnswerAsync(HttpContext context, IQuestion question) =>
        AnswerAsync(context, question.Operation, request => Task.FromResult(question.Prepare(request)));

    /// <summary>Answers a request with the question that a function makes of it.</summary>
    /// <param name="context">The request.</param>
    /// <param name="operation">What its address takes and answers.</param>
    /// <param name="prepare">Understands it.</param>
    public async Task<IResult> AnswerAsync(HttpContext context, ApiOperation operation, Func<ApiRequest, Task<PreparedQuestion>> prepare)
    {
        var (request, refusal) = await reader.ReadAsync(context, operation);
        if (request is null)
            return new ProblemResult(refusal!);
        context.Response.Headers.CacheControl = "no-store";
        var (solve, unfit) = await PrepareAsync(request, prepare);
        if (solve is null)
            return new ProblemResult(unfit!);
        if (!gate.TryEnter())
            return new ProblemResult(gate.Busy);

        var progress = new SolveProgress();
        if (operation.Streams && request.Accepts(ApiContent.Events))
        {
            // Begun here: what is never enumerated would never give its place back.
            var run = RunAsync(context.TraceIdentifier, solve, progress, context.RequestAborted);
            return TypedResults.ServerSentEvents(TellAsync(context.TraceIdentifier, run, progress, context.RequestAborted));
        }

        var (body, problem) = await gate.RunAsync(solve, progress, context.RequestAborted);
        return problem is null ? TypedResults.Bytes(body, request.AnswerTypeOf(operation)) : new ProblemResult(problem);
    }

    private static async Task<PreparedQuestion> PrepareAsync(ApiRequest request, Func<ApiRequest, Task<PreparedQuestion>> prepare)
    {
        try
        {
            return await prepare(request);
        }
        catch (StorageException fault)
        {
            return new Problem(ProblemKind.Store, fault.Message);
        }
    }

    /// <summary>Tells progress from time to time, then the answer, or the problem that keeps from it.</summary>
    private async IAsyncEnumerable<SseItem<string>> TellAsync(
        string id,
        Task<(ReadOnlyMemory<byte> Body, Problem? Refusal)> run,
        SolveProgress progress,
        [EnumeratorCancellation] CancellationToken left)
    {
        var begin = clock.GetTimestamp();
        yield return new SseItem<string>(progress.Write(TimeSpan.Zero), "progress");

        var (told, toldAt) = (progress.Last, begin);
        while (!run.IsCompleted)
        {
            await Task.WhenAny(run, Task.Delay(limits.EventPause, clock, left));
            left.ThrowIfCancellationRequested();
            if (run.IsCompleted || (progress.Last == told && clock.GetElapsedTime(toldAt) < Heartbeat))
                continue;
            (told, toldAt) = (progress.Last, clock.GetTimestamp());
            yield return new SseItem<string>(progress.Write(clock.GetElapsedTime(begin)), "progress");
        }

        var (body, problem) = await run;
        yield return problem is null
            ? new SseItem<string>(Encoding.UTF8.GetString(body.Span).TrimEnd('\n'), "answer")
            : new SseItem<string>(Encoding.UTF8.GetString(ProblemAnswer.Bytes(problem, id).Span), "problem");
    }

    /// <summary>Runs a computation; a fault in the program is told as an event too, since the answer has begun.</summary>
    private async Task<(ReadOnlyMemory<byte> Body, Problem? Refusal)> RunAsync(
        string id, Computation solve, SolveProgress progress, CancellationToken left)
    {
        try
        {
            return await gate.RunAsync(solve, progress, left);
        }
        catch (Exception fault) when (fault is not OperationCanceledException)
        {
            ApiLog.SolveStopped(log, id, fault);
            return (default, new Problem(ProblemKind.Fault, ProblemKind.Fault.Meaning));
        }
    }
}
