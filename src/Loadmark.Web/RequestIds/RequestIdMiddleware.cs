using System.Net;
using Loadmark.Web.Problems;
using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.Logging;

namespace Loadmark.Web.RequestIds;

/// <summary>
/// Gives each request its id, tells the log what became of it, and answers for a fault in the program: with the id, and without details.
/// </summary>
/// <param name="next">What handles the request.</param>
/// <param name="ids">Gives ids.</param>
/// <param name="clock">Measures how long an answer takes.</param>
/// <param name="log">The log.</param>
public sealed class RequestIdMiddleware(RequestDelegate next, RequestIdSource ids, TimeProvider clock, ILogger<RequestIdMiddleware> log)
{
    private static readonly string[] Methods =
        [HttpMethods.Get, HttpMethods.Post, HttpMethods.Put, HttpMethods.Delete, HttpMethods.Head, HttpMethods.Options, HttpMethods.Patch];

    /// <summary>Handles a request.</summary>
    /// <param name="context">The request.</param>
    public async Task InvokeAsync(HttpContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        context.TraceIdentifier = ids.Next();
        using var scope = log.BeginScope(new Dictionary<string, object?>(StringComparer.Ordinal) { ["id"] = context.TraceIdentifier });
        var begin = clock.GetTimestamp();
        try
        {
            await next(context);
        }
        catch (Exception fault) when (IsOfTheCaller(fault, context))
        {
            // Whoever asked has gone, or sent half of what was announced: nobody is there to be answered.
            context.Abort();
            var (asked, at, passed) = (MethodOf(context), RouteOf(context), (long)clock.GetElapsedTime(begin).TotalMilliseconds);
            RequestLog.Left(log, asked, at, passed);
            return;
        }
        catch (BadHttpRequestException fault) when (!context.Response.HasStarted)
        {
            await ProblemAnswer.WriteAsync(context, Problem.OfBody(fault.StatusCode));
        }
        catch (Exception fault) // the one place where a fault of the program ends, whatever it is
        {
            RequestLog.Stopped(log, MethodOf(context), RouteOf(context), fault);
            if (context.Response.HasStarted)
                context.Abort();
            else
                await AnswerAsync(context);
        }

        var (method, route, took) = (MethodOf(context), RouteOf(context), (long)clock.GetElapsedTime(begin).TotalMilliseconds);
        RequestLog.Answered(log, method, route, context.Response.StatusCode, took);
    }

    private static bool IsOfTheCaller(Exception fault, HttpContext context) =>
        fault is ConnectionResetException or ConnectionAbortedException
        || (fault is OperationCanceledException or IOException and not BadHttpRequestException
            && context.RequestAborted.IsCancellationRequested);

    /// <summary>A method of HTTP; anything else may be anything.</summary>
    private static string MethodOf(HttpContext context) => Methods.FirstOrDefault(context.Request.Method.Equals) ?? "other";

    /// <summary>The pattern of the address, never the address.</summary>
    private static string RouteOf(HttpContext context) => (context.GetEndpoint() as RouteEndpoint)?.RoutePattern.RawText ?? "none";

    private static Task AnswerAsync(HttpContext context)
    {
        context.Response.Clear();
        if (ProblemAnswer.IsFor(context.Request))
            return ProblemAnswer.WriteAsync(
                context,
                new Problem(ProblemKind.Fault, "A fault in the program kept it from answering; nothing here says anything about the rig."));

        context.Response.StatusCode = StatusCodes.Status500InternalServerError;
        context.Response.ContentType = "text/html; charset=utf-8";
        return context.Response.WriteAsync(
            $"""
            <!DOCTYPE html>
            <html lang="en"><head><meta charset="utf-8" /><title>Loadmark stopped here</title></head>
            <body><h1>A fault in the program</h1>
            <p>It says nothing about your rigs; every edit is kept. <a href="/">Back to the rigs</a></p>
            <p>Whoever looks into it finds it by this id: <strong>{WebUtility.HtmlEncode(context.TraceIdentifier)}</strong></p>
            </body></html>
            """,
            context.RequestAborted);
    }
}
