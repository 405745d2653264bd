namespace Loadmark.Workshop.Solves;

/// <summary>Runs what computes for long on a thread of its own.</summary>
/// <remarks>
/// The pool has a thread for each core at first, and adds others only seconds later while the machine is busy. Computations on its threads
/// would keep from running what is to stop them: the news that a caller has gone, and the clock of a time limit.
/// </remarks>
internal static class OwnThread
{
    /// <summary>Runs it.</summary>
    /// <typeparam name="T">What comes of it.</typeparam>
    /// <param name="compute">The computation.</param>
    public static Task<T> RunAsync<T>(Func<T> compute) =>
        Task.Factory.StartNew(compute, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
}
