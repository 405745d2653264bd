using Microsoft.AspNetCore.Http;

namespace Loadmark.Web.Problems;

/// <summary>Says as a problem what routing only says by its status: there is no such address, or it takes something else.</summary>
/// <param name="next">What handles the request.</param>
public sealed class ProblemFiller(RequestDelegate next)
{
    /// <summary>Handles a request.</summary>
    /// <param name="context">The request.</param>
    public async Task InvokeAsync(HttpContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        await next(context);
        var response = context.Response;
        if (response.StatusCode < StatusCodes.Status400BadRequest || response.HasStarted || response.ContentLength is not null
            || !string.IsNullOrEmpty(response.ContentType) || !ProblemAnswer.IsFor(context.Request))
        {
            return;
        }

        var kind = ProblemKind.Of(response.StatusCode);
        await ProblemAnswer.WriteAsync(context, new Problem(kind, kind.Meaning) { Status = response.StatusCode });
    }
}
