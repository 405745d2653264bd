using Loadmark.Workshop.Solves;


namespace Loadmark.Workshop.Tests.Solves;

/// <summary>A long solve of a page: it tells how it goes, can be ended, and never takes the page down.</summary>
public sealed class SolveJobTests : IDisposable
{
    private readonly SolveGate _gate = new(2);
    private readonly HandClock _clock = new();
    private int _changes;

    public void Dispose() => _gate.Dispose();

    [Fact]
    public async Task The_answer_is_there_when_it_has_ended()
    {
        using var job = Job();
        Assert.False(job.IsRunning);
        var run = job.RunAsync(_ => "42");
        await run;
        Assert.Equal(("42", null, false), (job.Answer, job.Fault, job.IsRunning));
        Assert.Equal(2, _changes); // begun and ended
        job.Clear();
        Assert.Null(job.Answer);
    }

    [Fact]
    public async Task Progress_is_told_a_few_times_a_second_and_the_last_is_kept()
    {
        using var job = Job();
        await job.RunAsync(_ =>
        {
            for (var number = 0; number < 1000; number++)
                job.Report($"{number}");
            Assert.Equal(2, _changes); // begun, and the first
            _clock.Advance(TimeSpan.FromMilliseconds(199));
            job.Report("too soon");
            Assert.Equal(2, _changes);
            _clock.Advance(TimeSpan.FromMilliseconds(1));
            job.Report("told");
            Assert.Equal(3, _changes);
            job.Report("last");
            return "done";
        });
        Assert.Equal(4, _changes);
        Assert.Equal("last", job.Latest);
    }

    [Fact]
    public async Task Stopped_it_ends_with_what_it_has()
    {
        using var job = Job();
        using var begun = new ManualResetEventSlim();
        var run = job.RunAsync(stop =>
        {
            begun.Set();
            stop.WaitHandle.WaitOne();
            return "so far";
        });
        begun.Wait(Stop);
        Assert.True(job.IsRunning);
        job.Stop();
        await run;
        Assert.Equal(("so far", null, false), (job.Answer, job.Fault, job.IsRunning));
    }

    [Fact]
    public async Task A_solve_that_gives_up_leaves_the_answer_before()
    {
        using var job = Job();
        await job.RunAsync(_ => "before");
        using var begun = new ManualResetEventSlim();
        var run = job.RunAsync(stop =>
        {
            begun.Set();
            stop.WaitHandle.WaitOne();
            throw new OperationCanceledException(stop);
        });
        begun.Wait(Stop);
        job.Stop();
        await run;
        Assert.Equal(("before", null, false), (job.Answer, job.Fault, job.IsRunning));
    }

    [Fact]
    public async Task A_fault_ends_as_a_sentence()
    {
        using var job = Job();
        await job.RunAsync(_ => throw new InvalidOperationException("The solver lost its way."));
        Assert.Equal((null, "The solver lost its way.", false), (job.Answer, job.Fault, job.IsRunning));
        await job.RunAsync(_ => "well");
        Assert.Equal(("well", null), (job.Answer, job.Fault));
    }

    [Fact]
    public async Task A_new_solve_ends_the_one_before_and_its_answer_counts()
    {
        using var job = Job();
        using var begun = new ManualResetEventSlim();
        var first = job.RunAsync(stop =>
        {
            begun.Set();
            stop.WaitHandle.WaitOne();
            return "old";
        });
        begun.Wait(Stop);
        await job.RunAsync(_ => "new");
        await first;
        Assert.Equal("new", job.Answer);
        Assert.False(job.IsRunning);
    }

    [Fact]
    public async Task A_solve_that_was_replaced_may_fail_unheard()
    {
        using var job = Job();
        using var begun = new ManualResetEventSlim();
        var first = job.RunAsync(stop =>
        {
            begun.Set();
            stop.WaitHandle.WaitOne();
            throw new InvalidOperationException("half way");
        });
        begun.Wait(Stop);
        await job.RunAsync(_ => "new");
        Assert.Null(await Record.ExceptionAsync(() => first));
        Assert.Equal(("new", null), (job.Answer, job.Fault));
    }

    [Fact]
    public async Task Disposed_it_is_stopped_and_its_answer_is_dropped()
    {
        var job = Job();
        using var begun = new ManualResetEventSlim();
        var run = job.RunAsync(stop =>
        {
            begun.Set();
            stop.WaitHandle.WaitOne();
            return "too late";
        });
        begun.Wait(Stop);
        job.Dispose();
        await run;
        Assert.Null(job.Answer);
    }

    private static CancellationToken Stop => Xunit.TestContext.Current.CancellationToken;

    private SolveJob<string, string> Job() => new(_gate, () => Interlocked.Increment(ref _changes), _clock);

    private sealed class HandClock : TimeProvider
    {
        private long _ticks = 1;

        public override long TimestampFrequency => TimeSpan.TicksPerSecond;

        public void Advance(TimeSpan by) => _ticks += by.Ticks;

        public override long GetTimestamp() => _ticks;
    }
}
