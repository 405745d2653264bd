using Microsoft.AspNetCore.Http;

namespace Loadmark.Web.Guarding;

/// <summary>
/// Tells the browser what a page of this program may do: use what comes from here, run no script but ours, be framed by nobody.
/// </summary>
/// <param name="next">What handles the request.</param>
public sealed class AnswerHeaders(RequestDelegate next)
{
    // The component library writes its theme into a style element, so styles may be inline; scripts may not.
    private const string Policy =
        "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; font-src 'self'; "
        + "connect-src 'self'; " +
        "manifest-src 'self'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    /// <summary>Handles a request and adds the headers to its answer.</summary>
    /// <param name="context">The request.</param>
    public Task InvokeAsync(HttpContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        context.Response.OnStarting(
            static state =>
            {
                var headers = ((HttpResponse)state).Headers;
                headers.ContentSecurityPolicy = Policy;
                headers.XContentTypeOptions = "nosniff";
                headers.XFrameOptions = "DENY";
                headers["Referrer-Policy"] = "no-referrer";
                headers["Cross-Origin-Opener-Policy"] = "same-origin";
                headers["Cross-Origin-Resource-Policy"] = "same-origin";
                headers["Permissions-Policy"] = "camera=(), microphone=(), geolocation=(), usb=()";
                return Task.CompletedTask;
            },
            context.Response);
        return next(context);
    }
}
