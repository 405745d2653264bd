namespace Loadmark.Api.Execution;

/// <summary>What the log is told of computations: never what they are of.</summary>
internal static partial class ApiLog
{
    [LoggerMessage(EventId = 10, Level = LogLevel.Error, Message = "The computation of {Request} stopped at a fault in the program")]
    public static partial void SolveStopped(ILogger log, string request, Exception fault);
}
