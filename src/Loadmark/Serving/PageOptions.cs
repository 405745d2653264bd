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

    /// <summary>The folder where rigs are kept: as asked, else as the environment says, else in the user's own data.</summary>
    /// <param name="asked">What was asked for on the command line; null for nothing.</param>
    /// <param name="environment">Reads the environment.</param>
    public static string FolderFrom(string? asked, Func<string, string?> environment)
    {
        if (!string.IsNullOrEmpty(asked))
            return Path.GetFullPath(asked);
        if (environment("LOADMARK_DATA") is { Length: > 0 } set)
            return Path.GetFullPath(set);
        var own = Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify);
        return Path.Combine(own.Length == 0 ? Path.GetTempPath() : own, "loadmark");
    }
}
