using Loadmark.Web.Guarding;

namespace Loadmark.Api.Requests;

/// <summary>How much one caller, and all together, may ask of the machine over HTTP. docs/api.md tells them.</summary>
internal sealed record ApiLimits
{
    /// <summary>The largest body, bytes; more is answered with 413. Not above what the server takes at all.</summary>
    public long LargestBody { get; init; } = OwnAddressGuard.LargestBody;

    /// <summary>The most texts in one request to read them.</summary>
    public int MostTexts { get; init; } = 5000;

    /// <summary>The longest that one computation may take; then it is ended, and answered with 504.</summary>
    public TimeSpan LongestSolve { get; init; } = TimeSpan.FromSeconds(60);

    /// <summary>How many computations may wait or run; more are answered with 503 at once.</summary>
    public int MostPresent { get; init; } = 16;

    /// <summary>
    /// How many computations may run at once; less than the page and this together may, so that the page always finds room.
    /// </summary>
    public int SolvesAtOnce { get; init; } = 1;

    /// <summary>The longest that a computation waits for its turn; then it is answered with 503.</summary>
    public TimeSpan LongestWait { get; init; } = TimeSpan.FromSeconds(30);

    /// <summary>How often progress is told when there is news.</summary>
    public TimeSpan EventPause { get; init; } = TimeSpan.FromMilliseconds(200);

    /// <summary>After how many seconds to ask again when there was no room, s.</summary>
    public int RetryAfterSeconds { get; init; } = 5;
}
