using System.Globalization;

namespace Loadmark.Processes;

/// <summary>Says every second or so what a long computation is at; a short one says nothing.</summary>
/// <typeparam name="TProgress">What the computation tells.</typeparam>
internal sealed class ProgressNotice<TProgress> : IProgress<TProgress>, IDisposable
    where TProgress : class
{
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(1);

    private readonly TextWriter _error;
    private readonly TimeProvider _time;
    private readonly Func<TProgress, string> _words;
    private readonly long _begin;
    private readonly ITimer _timer;
    private volatile TProgress? _last;

    /// <summary>Begins to count.</summary>
    /// <param name="process">Where to say it, and the clock.</param>
    /// <param name="words">What to say of how far it has come, as a sentence or two.</param>
    public ProgressNotice(ProcessContext process, Func<TProgress, string> words)
    {
        (_error, _time, _words) = (process.Error, process.Time, words);
        _begin = _time.GetTimestamp();
        _timer = _time.CreateTimer(_ => Say(), null, Pause, Pause);
    }

    /// <inheritdoc/>
    public void Report(TProgress value) => _last = value;

    /// <inheritdoc/>
    public void Dispose() => _timer.Dispose();

    private void Say()
    {
        if (_last is { } at)
            _error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{_time.GetElapsedTime(_begin).TotalSeconds:0} s: {_words(at)}"));
    }
}
