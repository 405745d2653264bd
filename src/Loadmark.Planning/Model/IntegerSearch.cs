using Google.OrTools.Sat;

namespace Loadmark.Planning.Model;

/// <summary>Searches the integer program, whose objective is set, for its least solution.</summary>
/// <param name="wiring">The model.</param>
internal sealed class IntegerSearch(WiringModel wiring)
{
    /// <summary>
    /// The relaxation of these models is tight, so it leads the search; and the models are small and solved often, so little
    /// time goes into preparing them, and none into cuts.
    /// </summary>
    private const string Strategy =
        "linearization_level:2 search_branching:LP_SEARCH max_presolve_iterations:1 cp_model_probing_level:0 symmetry_level:0 cut_level:0";

    /// <summary>
    /// For the few that do not end so: well prepared, with cuts, and led by what the branches before have shown. It takes longer at most,
    /// and far less time where the other does not come to an end.
    /// </summary>
    private const string SecondStrategy = "linearization_level:2 search_branching:PSEUDO_COST_SEARCH exploit_best_solution:true";

    /// <summary>After so many dead ends the second strategy takes over.</summary>
    private const int Patience = 300;

    /// <summary>Models of so many variables are searched sooner than prepared.</summary>
    private const int Small = 300;

    private readonly IntVar[] _variables = [.. wiring.Variables.All];

    /// <summary>The best solution so far: the variables' values by their indices; null where there is none.</summary>
    public long[]? Values { get; set; }

    /// <summary>What no solution is below, of the last search.</summary>
    public long Bound { get; private set; }

    /// <summary>Searches, from the best solution so far if there is one.</summary>
    /// <param name="left">How much time it may take; asked before each of two searches.</param>
    /// <param name="cancellation">Stops it.</param>
    public CpSolverStatus Run(Func<TimeSpan> left, CancellationToken cancellation)
    {
        Bound = 0;
        if (left() <= TimeSpan.Zero || cancellation.IsCancellationRequested)
            return CpSolverStatus.Unknown;

        var preparation = _variables.Length > Small ? "true" : "false";
        var first = Run(
            $"{Strategy} cp_model_presolve:{preparation} max_number_of_conflicts:{Patience}", left(), cancellation, out var conflicts);
        if (first == CpSolverStatus.Optimal || conflicts < Patience || left() <= TimeSpan.Zero || cancellation.IsCancellationRequested)
            return first;

        // What the first has found the second begins with.
        var second = Run(SecondStrategy, left(), cancellation, out _);
        return second == CpSolverStatus.Unknown ? first : second;
    }

    private CpSolverStatus Run(string strategy, TimeSpan left, CancellationToken cancellation, out long conflicts)
    {
        wiring.Model.ClearHints();
        if (Values is not null)
        {
            foreach (var variable in _variables)
                wiring.Model.AddHint(variable, Values[variable.Index]);
        }

        using var solver = new CpSolver();
        var parameters = FormattableString.Invariant($"max_time_in_seconds:{left.TotalSeconds:0.######} {strategy}");
        var status = StoppableSolver.Run(solver, wiring.Model, parameters, cancellation);
        conflicts = solver.NumConflicts();
        if (status is CpSolverStatus.Optimal or CpSolverStatus.Feasible)
        {
            Values = [.. _variables.Select(variable => solver.Value(variable))];
            Bound = Math.Max(Bound, (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6));
        }

        return status;
    }
}
