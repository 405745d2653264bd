using Microsoft.Extensions.Logging;

namespace Loadmark.Web.Parts;

/// <summary>What the page writes into the log.</summary>
internal static partial class FaultLog
{
    [LoggerMessage(Level = LogLevel.Error, Message = "The part '{Part}' of the page stopped")]
    public static partial void PartStopped(ILogger log, string part, Exception fault);
}
