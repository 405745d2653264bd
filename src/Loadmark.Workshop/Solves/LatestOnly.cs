namespace Loadmark.Workshop.Solves;

/// <summary>Computes the newest of what is asked for, on another thread; what was asked for before is stopped and forgotten.</summary>
/// <typeparam name="T">What is computed.</typeparam>
public sealed class LatestOnly<T> : IDisposable
    where T : class
{
    private CancellationTokenSource? _stop;

    /// <summary>Runs a computation, and stops the one that was asked for before.</summary>
    /// <param name="compute">The computation; ends soon after its token is cancelled.</param>
    /// <returns>What came of it; null where something newer was asked for meanwhile.</returns>
    public async Task<T?> RunAsync(Func<CancellationToken, T> compute)
    {
        _stop?.Cancel();
        using var stop = new CancellationTokenSource();
        _stop = stop;
        try
        {
            var result = await OwnThread.RunAsync(() => compute(stop.Token));
            return _stop == stop ? result : null;
        }
        catch (OperationCanceledException)
        {
            return null;
        }
        finally
        {
            if (_stop == stop)
                _stop = null;
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _stop?.Cancel();
        _stop = null;
    }
}
