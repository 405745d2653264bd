using Loadmark.Workshop.Solves;


namespace Loadmark.Workshop.Tests.Solves;

/// <summary>So many solves at once, and no more.</summary>
public sealed class SolveGateTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    public async Task No_more_run_at_once_than_there_is_room_for(int most)
    {
        using var gate = new SolveGate(most);
        var (running, peak, ran) = (0, 0, 0);
        using var full = new CountdownEvent(most);
        using var go = new ManualResetEventSlim();
        var solves = Enumerable.Range(0, 8).Select(_ => gate.RunAsync(
            _ =>
            {
                var now = Interlocked.Increment(ref running);
                InterlockedMax(ref peak, now);
                if (!full.IsSet)
                    full.Signal();
                go.Wait(Stop);
                Interlocked.Decrement(ref running);
                return Interlocked.Increment(ref ran);
            },
            Stop)).ToList();
        full.Wait(Stop);
        await Task.Delay(50, Stop); // for one that should not be let in
        Assert.Equal(most, running);
        go.Set();
        await Task.WhenAll(solves);
        Assert.Equal((most, 8), (peak, ran));
    }

    [Fact]
    public async Task A_solve_leaves_the_pool_s_threads_to_what_is_to_stop_it()
    {
        using var gate = new SolveGate(1);
        using var latest = new LatestOnly<string>();
        Assert.False(await gate.RunAsync(static _ => Thread.CurrentThread.IsThreadPoolThread, Stop));
        Assert.Equal("False", await latest.RunAsync(static _ => $"{Thread.CurrentThread.IsThreadPoolThread}"));
    }

    [Fact]
    public async Task A_solve_that_waits_can_be_cancelled_and_takes_no_room()
    {
        using var gate = new SolveGate(1);
        using var go = new ManualResetEventSlim();
        var first = gate.RunAsync(_ => go.Wait(TimeSpan.FromSeconds(30), Stop), Stop);
        using var cancel = new CancellationTokenSource();
        var waiting = gate.RunAsync(_ => true, cancel.Token);
        await cancel.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => waiting);
        go.Set();
        Assert.True(await first);
        Assert.True(await gate.RunAsync(_ => true, Stop));
    }

    [Fact]
    public async Task A_solve_that_fails_leaves_its_room()
    {
        using var gate = new SolveGate(1);
        await Assert.ThrowsAsync<InvalidOperationException>(() => gate.RunAsync<int>(_ => throw new InvalidOperationException(), Stop));
        Assert.Equal(7, await gate.RunAsync(_ => 7, Stop));
    }

    private static CancellationToken Stop => Xunit.TestContext.Current.CancellationToken;

    private static void InterlockedMax(ref int peak, int value)
    {
        int seen;
        while ((seen = Volatile.Read(ref peak)) < value && Interlocked.CompareExchange(ref peak, value, seen) != seen)
        {
        }
    }
}
