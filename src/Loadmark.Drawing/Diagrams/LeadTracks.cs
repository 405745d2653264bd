namespace Loadmark.Drawing.Diagrams;

/// <summary>Gives each lead that wanders up and down a track of its own beside the others that pass the same rows.</summary>
internal static class LeadTracks
{
    /// <summary>The tracks of intervals, each from 0; intervals that overlap never share one.</summary>
    /// <param name="intervals">From where to where each lead goes.</param>
    /// <returns>The track of each interval, and how many tracks there are.</returns>
    public static (int[] Tracks, int Count) Of(IReadOnlyList<(double From, double To)> intervals)
    {
        var order = Enumerable.Range(0, intervals.Count).OrderBy(index => intervals[index].From).ThenBy(index => intervals[index].To)
            .ToList();
        var tracks = new int[intervals.Count];
        var busy = new PriorityQueue<int, double>();
        var free = new PriorityQueue<int, int>();
        var count = 0;
        foreach (var index in order)
        {
            while (busy.TryPeek(out var ended, out var until) && until < intervals[index].From)
            {
                busy.Dequeue();
                free.Enqueue(ended, ended);
            }

            if (!free.TryDequeue(out var track, out _))
                track = count++;
            tracks[index] = track;
            busy.Enqueue(track, intervals[index].To);
        }

        return (tracks, count);
    }
}
