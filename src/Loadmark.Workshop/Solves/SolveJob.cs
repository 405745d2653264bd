namespace Loadmark.Workshop.Solves;

/// <summary>One long solve of a page: what it has come to so far, and how to end it.</summary>
/// <typeparam name="TAnswer">Its answer.</typeparam>
/// <typeparam name="TProgress">What it tells on the way.</typeparam>
/// <param name="gate">Who lets it run.</param>
/// <param name="changed">Told on any thread when there is news; a few times a second at the most.</param>
/// <param name="clock">Tells how long ago there was news.</param>
public sealed class SolveJob<TAnswer, TProgress>(SolveGate gate, Action changed, TimeProvider clock) : IProgress<TProgress>, IDisposable
    where TAnswer : class
    where TProgress : class
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(200);

    private CancellationTokenSource? _stop;
    private long _told;

    /// <summary>Whether the job waits or runs.</summary>
    public bool IsRunning => _stop is not null;

    /// <summary>The last that was told; null before anything was.</summary>
    public TProgress? Latest { get; private set; }

    /// <summary>The answer; null before there is one.</summary>
    public TAnswer? Answer { get; private set; }

    /// <summary>Why there is no answer, in a sentence; null when there is one, or none was asked for.</summary>
    public string? Fault { get; private set; }

    /// <summary>Runs a solve; ends the one before.</summary>
    /// <param name="solve">The solve; it is to end soon after its token is cancelled, with what it has by then.</param>
    public async Task RunAsync(Func<CancellationToken, TAnswer> solve)
    {
        if (_stop is { } other)
            await other.CancelAsync();
        var stop = new CancellationTokenSource();
        (_stop, Latest, Fault, _told) = (stop, null, null, 0);
        changed();
        try
        {
            var answer = await gate.RunAsync(solve, stop.Token);
            if (_stop == stop)
                Answer = answer;
        }
        catch (OperationCanceledException)
        {
            // The answer before stays.
        }
        catch (Exception fault) // whatever it is, the page goes on; of a solve that was replaced nobody waits to hear
        {
            if (_stop == stop)
                Fault = fault.Message;
        }
        finally
        {
            if (_stop == stop)
                _stop = null;
            stop.Dispose();
            changed();
        }
    }

    /// <summary>Ends the job; what it has by then becomes the answer, if it is any.</summary>
    public void Stop() => _stop?.Cancel();

    /// <summary>Forgets the answer.</summary>
    public void Clear() => (Answer, Fault) = (null, null);

    /// <inheritdoc/>
    public void Report(TProgress value)
    {
        Latest = value;
        var now = clock.GetTimestamp();
        if (_told != 0 && clock.GetElapsedTime(_told, now) < Pause)
            return;
        _told = now;
        changed();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        var stop = _stop;
        _stop = null;
        stop?.Cancel();
    }
}
