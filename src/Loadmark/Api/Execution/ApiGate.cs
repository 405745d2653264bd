using Loadmark.Api.Requests;
using Loadmark.Storage.Faults;
using Loadmark.Web.Problems;
using Loadmark.Workshop.Solves;

namespace Loadmark.Api.Execution;

/// <summary>
/// Lets the computations that programs ask for run a few at a time, through the same gate as the page's, and never in all of its room: a
/// program that asks without end cannot keep the page waiting, nor the page it.
/// </summary>
/// <param name="gate">The gate that the page's computations go through.</param>
/// <param name="limits">The limits.</param>
/// <param name="clock">Measures them.</param>
internal sealed class ApiGate(SolveGate gate, ApiLimits limits, TimeProvider clock) : IDisposable
{
    private readonly SemaphoreSlim _lanes = new(limits.SolvesAtOnce);
    private int _present;

    /// <summary>How many wait or run.</summary>
    public int Present => Volatile.Read(ref _present);

    /// <summary>What is answered when there is no room.</summary>
    public Problem Busy { get; } = new(
        ProblemKind.Busy, "Other computations are running or waiting.")
    { RetryAfterSeconds = limits.RetryAfterSeconds };

    /// <summary>Takes a place among those that wait or run, for <see cref="RunAsync"/>, which gives it back.</summary>
    /// <returns>Whether there was one.</returns>
    public bool TryEnter()
    {
        if (Interlocked.Increment(ref _present) <= limits.MostPresent)
            return true;
        Interlocked.Decrement(ref _present);
        return false;
    }

    /// <summary>Runs a computation when its turn comes.</summary>
    /// <param name="solve">The computation.</param>
    /// <param name="progress">Is told how far it has come.</param>
    /// <param name="left">Cancelled when the caller has gone: then it is ended.</param>
    /// <returns>The answer, or why there is none.</returns>
    /// <exception cref="OperationCanceledException">The caller has gone.</exception>
    public async Task<(ReadOnlyMemory<byte> Body, Problem? Refusal)> RunAsync(
        Computation solve, SolveProgress progress, CancellationToken left)
    {
        try
        {
            using var patience = new CancellationTokenSource(limits.LongestWait, clock);
            using var waiting = CancellationTokenSource.CreateLinkedTokenSource(patience.Token, left);
            try
            {
                await _lanes.WaitAsync(waiting.Token);
                try
                {
                    return await gate.RunAsync(_ => Run(solve, progress, left), waiting.Token);
                }
                finally
                {
                    _lanes.Release();
                }
            }
            catch (OperationCanceledException) when (!left.IsCancellationRequested)
            {
                return (default, Busy);
            }
        }
        finally
        {
            Interlocked.Decrement(ref _present);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _lanes.Dispose();

    private (ReadOnlyMemory<byte> Body, Problem? Refusal) Run(Computation solve, SolveProgress progress, CancellationToken left)
    {
        using var time = new CancellationTokenSource(limits.LongestSolve, clock);
        using var end = CancellationTokenSource.CreateLinkedTokenSource(time.Token, left);
        try
        {
            var body = solve(progress, end.Token);
            left.ThrowIfCancellationRequested();
            if (!time.IsCancellationRequested)
                return (body, null);
        }
        catch (StorageException fault)
        {
            return (default, new Problem(ProblemKind.Store, fault.Message));
        }
        catch (OperationCanceledException) when (!left.IsCancellationRequested)
        {
            // Out of time; said below.
        }

        return (
            default,
            new Problem(ProblemKind.OutOfTime, $"The computation was ended after {limits.LongestSolve.TotalSeconds:0.###} s."));
    }
}
