namespace Loadmark.Workshop.Solves;

/// <summary>
/// Lets a few solves run at once and makes the others wait, so that many windows cannot bring the machine to a halt. A solve that waits
/// can be cancelled like one that runs.
/// </summary>
/// <param name="most">How many may run at once, 1 or more.</param>
public sealed class SolveGate(int most) : IDisposable
{
    private readonly SemaphoreSlim _slots = new(most);

    /// <summary>Runs a solve on another thread, when a slot is free.</summary>
    /// <typeparam name="T">The answer.</typeparam>
    /// <param name="solve">The solve; ends soon after its token is cancelled.</param>
    /// <param name="cancellation">Ends the wait, or the solve.</param>
    /// <exception cref="OperationCanceledException">It was cancelled before it began, or the solve gave up.</exception>
    public async Task<T> RunAsync<T>(Func<CancellationToken, T> solve, CancellationToken cancellation)
    {
        await _slots.WaitAsync(cancellation);
        try
        {
            return await OwnThread.RunAsync(() => solve(cancellation));
        }
        finally
        {
            _slots.Release();
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _slots.Dispose();
}
