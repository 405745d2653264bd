namespace Loadmark.Planning.Buying;

/// <summary>
/// The little time in which the options that were found are wired once a search was stopped, all of them together: whoever stops it waits
/// for the answer.
/// </summary>
/// <param name="time">Tells the time.</param>
internal sealed class LastLook(TimeProvider time)
{
    private static readonly TimeSpan Whole = TimeSpan.FromSeconds(0.3);
    private static readonly TimeSpan Least = TimeSpan.FromSeconds(0.1);

    private long _begin;

    /// <summary>Whether the time is over.</summary>
    public bool IsOver => Whole - Elapsed() <= TimeSpan.Zero;

    /// <summary>What is left, and never less than it takes to wire an ordinary rig.</summary>
    public TimeSpan Left
    {
        get
        {
            var left = Whole - Elapsed();
            return left > Least ? left : Least;
        }
    }

    /// <summary>How long it is since it was first asked: it begins with that.</summary>
    private TimeSpan Elapsed()
    {
        var now = time.GetTimestamp();
        var begin = Interlocked.CompareExchange(ref _begin, now, 0);
        return begin == 0 ? TimeSpan.Zero : time.GetElapsedTime(begin, now);
    }
}
