using Loadmark.Serving.Logs;

namespace Loadmark.Serving;

/// <summary>How the page is served.</summary>
internal sealed record PageOptions
{
    /// <summary>The port that is tried first where none is asked for.</summary>
    public const int CommonPort = 5230;

    /// <summary>The folder that rigs are kept in.</summary>
    public required string Folder { get; init; }

    /// <summary>The port that is tried first; 0 for any that is free.</summary>
    public int Port { get; init; } = CommonPort;

    /// <summary>Whether to open the page in the user's browser.</summary>
    public bool OpensBrowser { get; init; } = true;

    /// <summary>How the log is written.</summary>
    public LogOptions Log { get; init; } = new();
}
