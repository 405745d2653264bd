using System.Net;
using Loadmark.Web.Problems;
using Microsoft.AspNetCore.Http;

namespace Loadmark.Web.Guarding;

/// <summary>
/// Lets in only who has the key of this start of the program. A browser that opens the address with the key in it is given a cookie for it,
/// and goes on to the address without.
/// </summary>
/// <param name="next">What handles what is let in.</param>
/// <param name="key">The key.</param>
public sealed class KeyGuard(RequestDelegate next, EntryKey key)
{
    /// <summary>Handles a request; refuses it with 401, or, where a cookie alone is not enough, with 403.</summary>
    /// <param name="context">The request.</param>
    public Task InvokeAsync(HttpContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        var request = context.Request;
        if (Entrance.KeyInHeader(request) is { } sent)
            return key.Is(sent) ? next(context) : RefuseAsync(context);
        if (Entrance.KeyInAddress(request) is { } typed)
            return key.Is(typed) ? AdmitAsync(context) : RefuseAsync(context);
        if (Entrance.CookieIn(request) is not { } cookie || !key.IsCookie(cookie))
            return RefuseAsync(context);
        return Refusal.IsAsked(request) || IsOfOwnPage(request)
            ? next(context)
            : Refusal.WriteAsync(
                context,
                ProblemKind.Refused,
                "A change, or an open line, is taken from Loadmark's own page only. A program sends the key in a header.");
    }

    /// <summary>
    /// Whether a browser says that the program's own page asks. An origin that is another's has been refused before; what sends none is no
    /// page, and may have got the cookie anyhow.
    /// </summary>
    private static bool IsOfOwnPage(HttpRequest request) =>
        request.Headers.Origin.Count > 0 || request.Headers["Sec-Fetch-Site"] == "same-origin";

    private async Task AdmitAsync(HttpContext context)
    {
        var response = context.Response;
        response.Cookies.Append(
            Entrance.CookieName(context),
            key.Cookie,
            new CookieOptions { HttpOnly = true, SameSite = SameSiteMode.Strict, Path = "/", IsEssential = true });
        response.Headers.CacheControl = "no-store";
        var address = Entrance.AddressWithoutKey(context.Request);
        if (context.Request.Headers["Sec-Fetch-Site"].ToString() is "" or "none")
        {
            response.StatusCode = StatusCodes.Status303SeeOther;
            response.Headers.Location = address;
            return;
        }

        // Whoever came by a link, or from the file that opens the browser, is from elsewhere still after a redirection, and a browser would
        // keep the cookie back (RFC 6265bis, "Strict"). From a page of this address it is sent.
        response.ContentType = "text/html; charset=utf-8";
        await response.WriteAsync(
            $"""
            <!DOCTYPE html>
            <html lang="en"><head><meta charset="utf-8" /><title>Loadmark</title>
            <meta http-equiv="refresh" content="0; url={WebUtility.HtmlEncode(address)}" /></head>
            <body><p><a href="{WebUtility.HtmlEncode(address)}">On to Loadmark</a></p></body></html>
            """,
            context.RequestAborted);
    }

    private static Task RefuseAsync(HttpContext context)
    {
        context.Response.Headers.WWWAuthenticate = $"{Entrance.Scheme} realm=\"Loadmark\"";
        return Refusal.WriteAsync(
            context,
            ProblemKind.NoKey,
            "Open the address that Loadmark printed when it was started: it ends in a long key, and without that nobody sees your rigs.",
            "Was it started again since? Then it has printed a new address, and the old one opens no more. Your rigs are safe.");
    }
}
