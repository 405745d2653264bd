namespace Loadmark.Serving.Logs;

/// <summary>How a line of the log is written.</summary>
internal enum LogForm
{
    /// <summary>For people; warnings and faults only.</summary>
    Text,

    /// <summary>An object of JSON a line, for programs; each request too.</summary>
    Json,
}
