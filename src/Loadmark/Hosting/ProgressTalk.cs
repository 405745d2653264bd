using System.Globalization;
using Loadmark.Planning;

namespace Loadmark.Hosting;

/// <summary>Says every second or so what a long plan is at; a short one says nothing.</summary>
internal sealed class ProgressTalk : IProgress<PlanProgress>, IDisposable
{
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(1);

    private readonly TextWriter _error;
    private readonly TimeProvider _time;
    private readonly long _begin;
    private readonly ITimer _timer;
    private volatile PlanProgress? _last;

    /// <summary>Begins to count.</summary>
    /// <param name="error">Where to say it.</param>
    /// <param name="time">The clock.</param>
    public ProgressTalk(TextWriter error, TimeProvider time)
    {
        _error = error;
        _time = time;
        _begin = time.GetTimestamp();
        _timer = time.CreateTimer(_ => Say(), null, Pause, Pause);
    }

    /// <inheritdoc/>
    public void Report(PlanProgress value) => _last = value;

    /// <inheritdoc/>
    public void Dispose() => _timer.Dispose();

    private void Say()
    {
        if (_last is { } at)
        {
            _error.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{_time.GetElapsedTime(_begin).TotalSeconds:0} s: {at.Level} {at.Value:0.###}, not below {at.Bound:0.###}. Ctrl-C shows the best so far."));
        }
    }
}
