using System.Globalization;

namespace Loadmark.Processes;

/// <summary>Says every second that something is still being done; what is quick says nothing.</summary>
internal sealed class WaitNotice : IDisposable
{
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(1);

    private readonly ITimer _timer;

    /// <summary>Begins to count.</summary>
    /// <param name="process">Where to say it, and the clock.</param>
    /// <param name="what">What is being done: "computing the first seconds".</param>
    public WaitNotice(ProcessContext process, string what)
    {
        var begin = process.Time.GetTimestamp();
        _timer = process.Time.CreateTimer(
            _ => process.Error.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture, $"{process.Time.GetElapsedTime(begin).TotalSeconds:0} s: {what}. Ctrl-C stops.")),
            null,
            Pause,
            Pause);
    }

    /// <inheritdoc/>
    public void Dispose() => _timer.Dispose();
}
