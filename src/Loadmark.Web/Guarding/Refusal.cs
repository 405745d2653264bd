using System.Net;
using Loadmark.Web.Problems;
using Microsoft.AspNetCore.Http;

namespace Loadmark.Web.Guarding;

/// <summary>Says no: to a program as a problem, to a person as a page that needs nothing else from here, to all else as text.</summary>
internal static class Refusal
{
    /// <summary>Whether a request only asks: it changes nothing, and opens no line that could.</summary>
    /// <param name="request">The request.</param>
    public static bool IsAsked(HttpRequest request) =>
        (HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method)) && request.Headers.Upgrade.Count == 0;

    /// <summary>Writes the refusal as the answer.</summary>
    /// <param name="context">The request, whose answer has not begun.</param>
    /// <param name="kind">Which kind of refusal.</param>
    /// <param name="sentences">Why, and what to do.</param>
    public static Task WriteAsync(HttpContext context, ProblemKind kind, params string[] sentences)
    {
        if (ProblemAnswer.IsFor(context.Request))
        {
            var detail = kind == ProblemKind.NoKey ? kind.Meaning : string.Join(' ', sentences);
            return ProblemAnswer.WriteAsync(context, new Problem(kind, detail));
        }

        var response = context.Response;
        response.StatusCode = kind.Status;
        response.Headers.CacheControl = "no-store";
        if (HttpMethods.IsHead(context.Request.Method))
            return Task.CompletedTask;
        if (!context.Request.Headers.Accept.ToString().Contains("text/html", StringComparison.OrdinalIgnoreCase))
        {
            response.ContentType = "text/plain; charset=utf-8";
            return response.WriteAsync(string.Join('\n', sentences) + "\n", context.RequestAborted);
        }

        // A browser that has been let in before sends its cookie from here, though not from where the link was.
        response.ContentType = "text/html; charset=utf-8";
        return response.WriteAsync(
            $"""
            <!DOCTYPE html>
            <html lang="en"><head><meta charset="utf-8" /><title>Loadmark: not this way</title>
            <meta name="viewport" content="width=device-width, initial-scale=1" /><meta name="color-scheme" content="light dark" /></head>
            <body style="font: 1.125rem/1.5 sans-serif; max-width: 38rem; margin: 3rem auto; padding: 0 1rem"><main><h1>Not this way</h1>
            {string.Concat(sentences.Select(static sentence => $"<p>{WebUtility.HtmlEncode(sentence)}</p>"))}
            <p>Is Loadmark open in this browser already? Then <a href="/">on to your rigs</a>.</p></main></body></html>
            """,
            context.RequestAborted);
    }
}
