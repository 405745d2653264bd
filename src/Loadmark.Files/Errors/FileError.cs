namespace Loadmark.Files.Errors;

/// <summary>One thing that keeps a file from being read, with its place.</summary>
/// <param name="File">The file's name, as it was given; <see cref="StandardInput"/> where it is none.</param>
/// <param name="Line">The line, from 1; also 1 where it is wrong with the file as a whole.</param>
/// <param name="Column">The column, from 1, counted in UTF-16 code units; also 1 where it is wrong with the file as a whole.</param>
/// <param name="Message">What is wrong and what was expected, one line for people.</param>
public sealed record FileError(string File, int Line, int Column, string Message)
{
    /// <summary>The name that errors carry in what was read from standard input.</summary>
    public const string StandardInput = "standard input";

    /// <summary>Whether the error is of the file as a whole, such as when there is none: the error then has no place.</summary>
    public bool IsOfWhole { get; init; }

    /// <summary>The text found there, shortened; null when the fault is not one piece of text.</summary>
    public string? Found { get; init; }

    /// <summary>What was expected ("a current such as 300 mA"); null when nothing particular was.</summary>
    public string? Expected { get; init; }

    /// <summary>The nearest right word; null when none is near.</summary>
    public string? Suggestion { get; init; }

    /// <summary>
    /// The error as compilers write it, <c>file:line:column: message</c>; without a place where it has none, and in words where there is no
    /// file.
    /// </summary>
    public override string ToString() => (IsOfWhole, File) switch
    {
        (true, _) => $"{File}: {Message}",
        (_, StandardInput) => $"{File}, line {Line}, column {Column}: {Message}",
        _ => $"{File}:{Line}:{Column}: {Message}",
    };
}
