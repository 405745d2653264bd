using Google.OrTools.Sat;

namespace Loadmark.Planning.Model;

/// <summary>Runs the integer solver so that it answers alike each time, on one thread from one seed, and can be stopped.</summary>
internal static class StoppableSolver
{
    /// <summary>Solves a model.</summary>
    /// <param name="solver">The solver; it has the answer afterwards.</param>
    /// <param name="model">The model.</param>
    /// <param name="parameters">The solver's parameters beside these.</param>
    /// <param name="cancellation">Stops it; what it has found until then stands.</param>
    public static CpSolverStatus Run(CpSolver solver, CpModel model, string parameters, CancellationToken cancellation)
    {
        // The solver would take Ctrl-C for itself while it searches, and whoever asked would never hear of it.
        solver.StringParameters = $"num_workers:1 random_seed:1 catch_sigint_signal:false {parameters}";

        // Asked again and again, because a request that comes before the search has begun is lost.
        using var asking = new Timer(_ => solver.StopSearch(), null, Timeout.Infinite, Timeout.Infinite);
        using var registration = cancellation.Register(() => asking.Change(0, 20));
        return solver.Solve(model);
    }
}
