using System.Collections.Immutable;
using Google.OrTools.Sat;
using Loadmark.Planning.Model;

namespace Loadmark.Planning.Cutting;

/// <summary>
/// What must be opened at the least, whatever is cut from which reel: the sizes of the pieces come to no more than the reels hold; and of
/// the pieces from each length on, a reel holds only so many, which is what decides where few fit on one. A small integer program in the
/// numbers of reels alone.
/// </summary>
internal sealed class StockBound
{
    /// <summary>Bounds a problem that has pieces.</summary>
    /// <param name="problem">What is cut.</param>
    /// <param name="work">What the search may take.</param>
    public StockBound(CuttingProblem problem, WorkLeft work)
    {
        var model = new CpModel();
        var opened = problem.Stock.Select(stock => model.NewIntVar(0, stock.Most, "")).ToArray();
        var (count, size) = (0L, 0L);
        foreach (var kind in problem.Kinds)
        {
            count += kind.Count;
            size += kind.Count * (kind.Size / problem.Unit);
            model.Add(LinearExpr.WeightedSum(opened, problem.Stock.Select(stock => stock.Capacity / kind.Size)) >= count);
            model.Add(
                LinearExpr.WeightedSum(
                    opened, problem.Stock.Select(stock => stock.Capacity < kind.Size ? 0 : stock.Capacity / problem.Unit)) >= size);
        }

        var cost = new StockCost(problem);
        model.Minimize(LinearExpr.WeightedSum(opened, cost.Weights));
        using var solver = new CpSolver();
        var status = StoppableSolver.Run(solver, model, work.Parameter, work.Cancellation);
        work.Spend(solver.Response?.DeterministicTime ?? 0);
        IsShort = status == CpSolverStatus.Infeasible;
        Cost = status is CpSolverStatus.Optimal or CpSolverStatus.Feasible ? (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6) : 0;
        Counts = status is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? [.. opened.Select(variable => (int)solver.Value(variable))]
            : [.. opened.Select(static _ => 0)];
    }

    /// <summary>Whether the stock is proven too little for all pieces.</summary>
    public bool IsShort { get; }

    /// <summary>What the reels cost at the least when all pieces are cut, in the units of <see cref="StockCost"/>.</summary>
    public long Cost { get; }

    /// <summary>How many reels of each stock come to that; none where it was not found.</summary>
    public ImmutableArray<int> Counts { get; }
}
