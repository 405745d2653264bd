using Microsoft.Extensions.Logging;

namespace Loadmark.Web.RequestIds;

/// <summary>What the log is told of requests: never their address or content, which may be a rig's.</summary>
internal static partial class RequestLog
{
    [LoggerMessage(EventId = 1, Level = LogLevel.Information, Message = "{Method} {Route} answered {Status} after {Milliseconds} ms")]
    public static partial void Answered(ILogger log, string method, string route, int status, long milliseconds);

    [LoggerMessage(EventId = 2, Level = LogLevel.Error, Message = "{Method} {Route} stopped at a fault in the program")]
    public static partial void Stopped(ILogger log, string method, string route, Exception fault);

    [LoggerMessage(EventId = 3, Level = LogLevel.Information, Message = "{Method} {Route} was left by who asked after {Milliseconds} ms")]
    public static partial void Left(ILogger log, string method, string route, long milliseconds);
}
