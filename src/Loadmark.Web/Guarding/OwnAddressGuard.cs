using System.Net;
using Loadmark.Web.Problems;
using Microsoft.AspNetCore.Http;

namespace Loadmark.Web.Guarding;

/// <summary>
/// Lets only this machine's own pages in. A page elsewhere that makes the browser send requests here, or that points its own name at
/// the loopback address (DNS rebinding), is refused by the Host and Origin that the browser then sends.
/// </summary>
/// <param name="next">What handles what is let in.</param>
public sealed class OwnAddressGuard(RequestDelegate next)
{
    /// <summary>The largest body that is taken, in bytes: 2 MiB, twice the largest rig.</summary>
    public const long LargestBody = 2 * 1024 * 1024;

    /// <summary>Handles a request, or refuses it with 400, 403 or 413.</summary>
    /// <param name="context">The request.</param>
    public Task InvokeAsync(HttpContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        var request = context.Request;
        if (context.Connection.RemoteIpAddress is { } from && !IPAddress.IsLoopback(from))
            return Refuse(context, StatusCodes.Status403Forbidden, "Loadmark answers this machine only.");
        if (!IsLoopbackName(request.Host.Host))
            return Refuse(context, StatusCodes.Status400BadRequest, "Loadmark is reached as localhost or 127.0.0.1 only.");
        if (request.Headers.Origin.ToString() is { Length: > 0 } origin && !IsSameOrigin(origin, request.Host))
            return Refuse(context, StatusCodes.Status403Forbidden, "A page of another address has no business here.");
        if (request.ContentLength > LargestBody)
            return Refuse(context, StatusCodes.Status413PayloadTooLarge, "That is more than a rig ever is.");
        return IsFromElsewhere(request) ? Refuse(context, StatusCodes.Status403Forbidden, "A page of another address has no business here.") : next(context);
    }

    private static bool IsLoopbackName(string host) =>
        host.Equals("localhost", StringComparison.OrdinalIgnoreCase)
        || (IPAddress.TryParse(host.Trim('[', ']'), out var address) && IPAddress.IsLoopback(address));

    private static bool IsSameOrigin(string origin, HostString host) =>
        Uri.TryCreate(origin, UriKind.Absolute, out var uri) && uri.Authority.Equals(host.Value, StringComparison.OrdinalIgnoreCase);

    /// <summary>A link from another site may open a page; nothing else may be asked for from there.</summary>
    private static bool IsFromElsewhere(HttpRequest request) =>
        request.Headers["Sec-Fetch-Site"].ToString() is "cross-site" or "same-site" && request.Headers["Sec-Fetch-Mode"] != "navigate";

    private static Task Refuse(HttpContext context, int status, string because)
    {
        if (ProblemAnswer.IsFor(context.Request))
            return ProblemAnswer.WriteAsync(context, new Problem(ProblemKind.Of(status), because));
        context.Response.StatusCode = status;
        context.Response.ContentType = "text/plain; charset=utf-8";
        return context.Response.WriteAsync(because, context.RequestAborted);
    }
}
