namespace Loadmark.Files;

/// <summary>One thing that keeps a file from being read, with its place.</summary>
/// <param name="File">The file's name, as it was given.</param>
/// <param name="Line">The line, from 1.</param>
/// <param name="Column">The column, from 1, counted in UTF-16 code units.</param>
/// <param name="Message">What is wrong and what was expected, one line for people.</param>
public sealed record FileError(string File, int Line, int Column, string Message)
{
    /// <summary>The text found there, shortened; null when the fault is not one piece of text.</summary>
    public string? Found { get; init; }

    /// <summary>What was expected ("a current such as 300 mA"); null when nothing particular was.</summary>
    public string? Expected { get; init; }

    /// <summary>The nearest right word; null when none is near.</summary>
    public string? Suggestion { get; init; }

    /// <summary>The error as compilers write it: <c>file:line:column: message</c>.</summary>
    public override string ToString() => $"{File}:{Line}:{Column}: {Message}";
}
