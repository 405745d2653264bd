using Microsoft.AspNetCore.Components.Server.Circuits;
using Microsoft.Extensions.Logging;

namespace Loadmark.Web.RequestIds;

/// <summary>Whatever the log is told while a page's browser asks for something carries the page's id.</summary>
/// <param name="id">The page's id.</param>
/// <param name="log">The log.</param>
internal sealed class PageRequestIdHandler(PageRequestId id, ILogger<PageRequestIdHandler> log) : CircuitHandler
{
    /// <inheritdoc/>
    public override Func<CircuitInboundActivityContext, Task> CreateInboundActivityHandler(
        Func<CircuitInboundActivityContext, Task> next) =>
        async context =>
        {
            using var scope = log.BeginScope(id);
            await next(context);
        };
}
