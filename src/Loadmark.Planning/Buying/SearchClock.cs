namespace Loadmark.Planning.Buying;

/// <summary>How much of the time is left.</summary>
internal sealed class SearchClock(TimeSpan limit, TimeProvider time, CancellationToken cancellation)
{
    private readonly long _begin = time.GetTimestamp();

    /// <summary>Whether the time is over, or the search was cancelled.</summary>
    public bool IsOver => cancellation.IsCancellationRequested || Left <= TimeSpan.Zero;

    /// <summary>What is left.</summary>
    public TimeSpan Left => limit - time.GetElapsedTime(_begin);

    /// <summary>A limit that does not reach beyond the end.</summary>
    public TimeSpan AtMost(TimeSpan part) => part < Left ? part : Left;
}
