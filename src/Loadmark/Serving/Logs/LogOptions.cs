namespace Loadmark.Serving.Logs;

/// <summary>How the log is written.</summary>
internal sealed record LogOptions
{
    /// <summary>The form of the log's lines.</summary>
    public LogForm Form { get; init; }

    /// <summary>Whether texts that may hold pieces of a rig may be in the log: messages of faults, and what libraries say.</summary>
    public bool WithContent { get; init; }

    /// <summary>Reads what was typed; null where there is no such form.</summary>
    /// <param name="form">What follows <c>--log</c>; null where it was not typed.</param>
    /// <param name="withContent">Whether <c>--log-content</c> was typed.</param>
    public static LogOptions? Read(string? form, bool withContent) => form switch
    {
        null or "text" => new LogOptions { Form = LogForm.Text, WithContent = withContent },
        "json" => new LogOptions { Form = LogForm.Json, WithContent = withContent },
        _ => null,
    };
}
