namespace Loadmark.Storage.Copies;

/// <summary>How many of the program's own copies stay, how old and how large they may be in all.</summary>
internal static class CopyRota
{
    /// <summary>For so many of the last days on which one was made, the last one of the day stays.</summary>
    public const int Days = 7;

    /// <summary>For so many of the last weeks in which one was made, the last one of the week stays.</summary>
    public const int Weeks = 4;

    /// <summary>So many of those that were made before an upgrade or before restoring stay.</summary>
    public const int Before = 5;

    /// <summary>In all they take no more than this, in bytes; the last one stays however large it is.</summary>
    public const long MostBytes = 1L << 30;

    private const int DaysOfWeek = 7;

    /// <summary>Those that may go, now that the last one is written and checked.</summary>
    /// <param name="newestFirst">All of them, the last one first.</param>
    public static IEnumerable<KeptCopy> Superfluous(IReadOnlyList<KeptCopy> newestFirst)
    {
        var daily = newestFirst.Where(static copy => copy.Reason == CopyReason.Day).ToList();
        HashSet<KeptCopy> wanted =
        [
            .. newestFirst.Take(1),
            .. daily.DistinctBy(DayOf).Take(Days),
            .. daily.DistinctBy(static copy => DayOf(copy) / DaysOfWeek).Take(Weeks),
            .. newestFirst.Where(static copy => copy.Reason != CopyReason.Day).Take(Before),
        ];
        var bytes = 0L;
        foreach (var copy in newestFirst)
        {
            if (wanted.Contains(copy))
                bytes += copy.Bytes;
            if (!wanted.Contains(copy) || (bytes > MostBytes && copy != newestFirst[0]))
                yield return copy;
        }
    }

    private static int DayOf(KeptCopy copy) => DateOnly.FromDateTime(copy.Made.UtcDateTime).DayNumber;
}
