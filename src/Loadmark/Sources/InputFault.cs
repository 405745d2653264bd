namespace Loadmark.Sources;

/// <summary>One thing that keeps a file from being read, and where it stands.</summary>
/// <param name="Line">The line, from 1; 0 when the fault is of the file as a whole.</param>
/// <param name="Column">The column, from 1; 0 when the fault is of the file as a whole.</param>
/// <param name="Found">What stands there; empty when nothing does.</param>
/// <param name="Expected">What was expected; empty when that cannot be said.</param>
/// <param name="Suggestion">The nearest right word; null when none is near.</param>
/// <param name="Message">The fault in a sentence.</param>
internal sealed record InputFault(int Line, int Column, string Found, string Expected, string? Suggestion, string Message)
{
    /// <summary>The fault as one line that editors know how to jump to: <c>file:line:col: message</c>.</summary>
    public string In(string file) => Line > 0 ? $"{file}:{Line}:{Column}: {Message}" : $"{file}: {Message}";
}
