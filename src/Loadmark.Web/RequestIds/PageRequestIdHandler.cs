using Microsoft.AspNetCore.Components.Server.Circuits;
using Microsoft.Extensions.Logging;

namespace Loadmark.Web.Marks;

/// <summary>Whatever the log is told while a page's browser asks for something carries the page's id.</summary>
/// <param name="mark">The page's id.</param>
/// <param name="log">The log.</param>
internal sealed class CircuitMarks(PageMark mark, ILogger<CircuitMarks> log) : CircuitHandler
{
    /// <inheritdoc/>
    public override Func<CircuitInboundActivityContext, Task> CreateInboundActivityHandler(Func<CircuitInboundActivityContext, Task> next) =>
        async context =>
        {
            using var scope = log.BeginScope(mark);
            await next(context);
        };
}
