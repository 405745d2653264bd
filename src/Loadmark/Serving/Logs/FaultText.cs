using System.Text;

namespace Loadmark.Serving.Logs;

/// <summary>Tells where the program stopped without telling what it was working on: a fault's own message may quote a rig.</summary>
internal static class FaultText
{
    /// <summary>The kinds of the faults, the outermost first, and where they happened.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="withContent">Whether their messages may be told.</param>
    public static string Of(Exception fault, bool withContent)
    {
        if (withContent)
            return fault.ToString();
        var text = new StringBuilder();
        for (var at = fault; at is not null; at = at.InnerException)
        {
            text.Append(text.Length == 0 ? "" : "\ncaused by ").Append(at.GetType().FullName);
            if (at.StackTrace is { } trace)
                text.Append('\n').Append(trace.ReplaceLineEndings("\n"));
        }

        return text.ToString();
    }
}
