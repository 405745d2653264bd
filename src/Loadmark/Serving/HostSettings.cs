using Loadmark.Api.Requests;
using Loadmark.Serving.Logs;
using Loadmark.Web.Guarding;
using Loadmark.Web.Views;

namespace Loadmark.Serving;

/// <summary>How page and API are served.</summary>
internal sealed record HostSettings
{
    /// <summary>Where the log is written.</summary>
    public required TextWriter Error { get; init; }

    /// <summary>The clock that the server goes by.</summary>
    public required TimeProvider Clock { get; init; }

    /// <summary>The secret that lets in.</summary>
    public EntryKey Key { get; init; } = EntryKey.New();

    /// <summary>How the log is written.</summary>
    public LogOptions Log { get; init; } = new();

    /// <summary>How much the page may ask of the machine.</summary>
    public PageLimits Page { get; init; } = new();

    /// <summary>How much other programs may ask of the server.</summary>
    public ApiLimits Api { get; init; } = new();
}
