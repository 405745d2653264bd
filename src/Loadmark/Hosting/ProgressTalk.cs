using System.Globalization;
using Loadmark.Planning;
using Loadmark.Planning.Buying;

namespace Loadmark.Hosting;

/// <summary>Says every second or so what a long search is at; a short one says nothing.</summary>
internal sealed class ProgressTalk : IProgress<PlanProgress>, IProgress<BuyProgress>, IDisposable
{
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(1);

    private readonly TextWriter _error;
    private readonly TimeProvider _time;
    private readonly long _begin;
    private readonly ITimer _timer;
    private volatile object? _last;

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
    public void Report(BuyProgress value) => _last = value;

    /// <inheritdoc/>
    public void Dispose() => _timer.Dispose();

    private void Say()
    {
        if (_last is { } at)
            _error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{_time.GetElapsedTime(_begin).TotalSeconds:0} s: {TextOf(at)} Ctrl-C shows the best so far."));
    }

    private static string TextOf(object at) => at switch
    {
        PlanProgress plan => string.Create(CultureInfo.InvariantCulture, $"{plan.Level} {plan.Value:0.###}, not below {plan.Bound:0.###}."),
        BuyProgress { Planned: { } planned } buy => string.Create(CultureInfo.InvariantCulture, $"{planned} of {buy.Found} options are wired."),
        BuyProgress { Found: 0 } buy => string.Create(CultureInfo.InvariantCulture, $"nothing that costs less than {buy.LeastPrice:0.00} feeds every load."),
        BuyProgress buy => string.Create(CultureInfo.InvariantCulture, $"{buy.Found} options below {buy.LeastPrice:0.00}, looking at dearer ones."),
        _ => throw new InvalidOperationException($"Nobody says what {at.GetType().Name} means."),
    };
}
