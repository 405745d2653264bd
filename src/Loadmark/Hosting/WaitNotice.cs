using System.Globalization;

namespace Loadmark.Hosting;

/// <summary>Says every second that something is still being done; what is quick says nothing.</summary>
internal sealed class WaitNotice : IDisposable
{
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(1);

    private readonly ITimer _timer;

    /// <summary>Begins to count.</summary>
    /// <param name="around">Where to say it, and the clock.</param>
    /// <param name="what">What is being done: "computing the first seconds".</param>
    public WaitNotice(Surroundings around, string what)
    {
        var begin = around.Time.GetTimestamp();
        _timer = around.Time.CreateTimer(
            _ => around.Error.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture, $"{around.Time.GetElapsedTime(begin).TotalSeconds:0} s: {what}. Ctrl-C stops.")),
            null,
            Pause,
            Pause);
    }

    /// <inheritdoc/>
    public void Dispose() => _timer.Dispose();
}
