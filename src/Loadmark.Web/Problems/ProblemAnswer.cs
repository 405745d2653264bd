using System.Buffers;
using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using Microsoft.AspNetCore.Http;

namespace Loadmark.Web.Problems;

/// <summary>Writes problems as JSON.</summary>
public static class ProblemAnswer
{
    /// <summary>The media type of problems.</summary>
    public const string MediaType = "application/problem+json";

    private static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Whether a request is a program's, which is told of problems in JSON, and not a browser's.</summary>
    /// <param name="request">The request.</param>
    public static bool IsFor(HttpRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        return request.Path.StartsWithSegments("/api", StringComparison.OrdinalIgnoreCase)
            || request.Path.StartsWithSegments("/healthz", StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>Answers with a problem.</summary>
    /// <param name="context">The request, whose answer has not begun.</param>
    /// <param name="problem">The problem.</param>
    public static async Task WriteAsync(HttpContext context, Problem problem)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(problem);
        var response = context.Response;
        response.StatusCode = problem.Status;
        response.ContentType = MediaType;
        response.Headers.CacheControl = "no-store";
        if (problem.RetryAfterSeconds is { } seconds)
            response.Headers.RetryAfter = seconds.ToString(CultureInfo.InvariantCulture);
        var bytes = Bytes(problem, context.TraceIdentifier);
        response.ContentLength = bytes.Length;
        if (!HttpMethods.IsHead(context.Request.Method))
            await response.Body.WriteAsync(bytes, context.RequestAborted);
    }

    /// <summary>A problem as an object of JSON.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="id">The request's id.</param>
    public static ReadOnlyMemory<byte> Bytes(Problem problem, string id)
    {
        ArgumentNullException.ThrowIfNull(problem);
        var output = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(output, Options))
        {
            json.WriteStartObject();
            json.WriteString(ProblemMember.Kind, ProblemKind.Folder + problem.Kind.Name);
            json.WriteString(ProblemMember.Title, problem.Kind.Title);
            json.WriteNumber(ProblemMember.Status, problem.Status);
            json.WriteString(ProblemMember.Detail, problem.Detail);
            json.WriteString(ProblemMember.Id, id);
            problem.More?.Invoke(json);
            json.WriteEndObject();
        }

        return output.WrittenMemory;
    }
}
