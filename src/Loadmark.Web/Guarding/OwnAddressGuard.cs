using System.Net;
using Loadmark.Web.Problems;
using Microsoft.AspNetCore.Http;

namespace Loadmark.Web.Guarding;

/// <summary>
/// Lets only this machine's own pages and programs in. A page elsewhere that makes the browser send requests here, or that points its own
/// name at the loopback address (DNS rebinding), is refused by the Host, the Origin and the fetch metadata that the browser then sends.
/// </summary>
/// <param name="next">What handles what is let in.</param>
public sealed class OwnAddressGuard(RequestDelegate next)
{
    /// <summary>The largest body that is taken, in bytes: 2 MiB, twice the largest rig.</summary>
    public const long LargestBody = 2 * 1024 * 1024;

    private const int CommonPort = 80;

    /// <summary>Handles a request, or refuses it with 400, 403 or 413.</summary>
    /// <param name="context">The request.</param>
    public Task InvokeAsync(HttpContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        var request = context.Request;
        if (context.Connection.RemoteIpAddress is { } from && !IPAddress.IsLoopback(from))
            return Refusal.WriteAsync(context, ProblemKind.Refused, "Loadmark answers this machine only.");
        if (!IsLoopbackName(request.Host.Host) || (request.Host.Port ?? CommonPort) != context.Connection.LocalPort)
            return Refusal.WriteAsync(context, ProblemKind.BadRequest, "Loadmark is reached as localhost or 127.0.0.1 only, at its port.");
        if (request.Headers.Origin.ToString() is { Length: > 0 } origin && !IsSameOrigin(origin, request.Host))
            return Refusal.WriteAsync(context, ProblemKind.Refused, Elsewhere);
        if (request.ContentLength > LargestBody)
            return Refusal.WriteAsync(context, ProblemKind.TooLarge, "That is more than a rig ever is.");
        if (IsFramed(request))
            return Refusal.WriteAsync(context, ProblemKind.Refused, "Loadmark is not shown within another page.");
        return IsFromElsewhere(request) && !IsEntrance(request)
            ? Refusal.WriteAsync(context, ProblemKind.Refused, Elsewhere)
            : next(context);
    }

    private static string Elsewhere => "Another page led here, and Loadmark takes nothing from other pages, not even a link.";

    private static bool IsLoopbackName(string host) =>
        host.Equals("localhost", StringComparison.OrdinalIgnoreCase)
        || (IPAddress.TryParse(host.Trim('[', ']'), out var address) && IPAddress.IsLoopback(address));

    private static bool IsSameOrigin(string origin, HostString host) =>
        Uri.TryCreate(origin, UriKind.Absolute, out var uri) && uri.Authority.Equals(host.Value, StringComparison.OrdinalIgnoreCase);

    /// <summary>Another port of this address is of the same site, and may be another user's program.</summary>
    private static bool IsFromElsewhere(HttpRequest request) => request.Headers["Sec-Fetch-Site"].ToString() is "cross-site" or "same-site";

    /// <summary>Within a page, even one of this program: it has no frames of its own.</summary>
    private static bool IsFramed(HttpRequest request) =>
        request.Headers["Sec-Fetch-Dest"].ToString() is "iframe" or "frame" or "embed" or "object" or "fencedframe";

    /// <summary>The address with the key may be opened from a file or a link, in a window of its own.</summary>
    private static bool IsEntrance(HttpRequest request) =>
        Entrance.KeyInAddress(request) is not null
        && request.Headers["Sec-Fetch-Mode"] == "navigate"
        && request.Headers["Sec-Fetch-Dest"].ToString() is "document" or "";
}
