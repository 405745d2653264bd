using Google.OrTools.Sat;
using Loadmark.Planning.Model;

namespace Loadmark.Planning.Cutting;

/// <summary>
/// The graph's ways as an integer program: how many reels are cut along each arc. As many ways come to a place as leave it, and the arcs of
/// each kind are as many as there are pieces. Which reel it is does not occur, so that exchanging two alike ones is no other solution.
/// </summary>
internal sealed class CuttingModel
{
    /// <summary>The relaxation in fractions is nearly always within one reel of the answer, so it leads the search.</summary>
    private const string Strategy = "linearization_level:2 search_branching:LP_SEARCH symmetry_level:0";

    private readonly CuttingProblem _problem;
    private readonly CuttingGraph _graph;
    private readonly WorkLeft _work;
    private readonly CpModel _model = new();
    private readonly IntVar[] _arcs;
    private readonly IntVar[] _ends;
    private readonly IntVar[] _uncut;
    private readonly StockCost _cost;

    /// <summary>States the program.</summary>
    /// <param name="problem">What is cut.</param>
    /// <param name="graph">Its graph.</param>
    /// <param name="best">The best way of cutting so far.</param>
    /// <param name="work">What the searches may take.</param>
    public CuttingModel(CuttingProblem problem, CuttingGraph graph, Packing best, WorkLeft work)
    {
        (_problem, _graph, _work, Best) = (problem, graph, work, best);
        _cost = new StockCost(problem);
        _arcs = [.. graph.Arcs.Select(arc => _model.NewIntVar(0, problem.Kinds[arc.Kind].Count, ""))];
        _ends = [.. graph.Ends.Select(end => _model.NewIntVar(0, problem.Stock[end.Stock].Most, ""))];
        _uncut = [.. problem.Kinds.Select(kind => _model.NewIntVar(0, best.Score.Uncut == 0 ? 0 : kind.Count, ""))];

        var arcsOut = graph.Arcs.Select(static (arc, place) => (arc.From, place)).ToLookup(static arc => arc.From, arc => _arcs[arc.place]);
        var endsOut = graph.Ends.Select(static (end, place) => (end.Filled, place))
            .ToLookup(static end => end.Filled, end => _ends[end.place]);
        foreach (var into in graph.Arcs.Select(static (arc, place) => (arc.To, place)).GroupBy(static arc => arc.To))
            _model.Add(LinearExpr.Sum(into.Select(arc => _arcs[arc.place])) == LinearExpr.Sum(arcsOut[into.Key].Concat(endsOut[into.Key])));
        var ofKind = graph.Arcs.Select(static (arc, place) => (arc.Kind, place)).ToLookup(static arc => arc.Kind, arc => _arcs[arc.place]);
        for (var kind = 0; kind < problem.Kinds.Length; kind++)
            _model.Add(LinearExpr.Sum(ofKind[kind].Append(_uncut[kind])) == problem.Kinds[kind].Count);
        foreach (var stock in graph.Ends.Select(static (end, place) => (end.Stock, place)).GroupBy(static end => end.Stock))
            _model.Add(LinearExpr.Sum(stock.Select(end => _ends[end.place])) <= problem.Stock[stock.Key].Most);
    }

    /// <summary>The best way of cutting so far.</summary>
    public Packing Best { get; private set; }

    /// <summary>What the reels cost at the least, as far as the last search of <see cref="LeastCost"/> has told.</summary>
    public long CostBound { get; private set; }

    /// <summary>Leaves as few pieces over as can be, then as few metres of them; whether that is proven.</summary>
    public bool LeastUncut()
    {
        if (Best.Score.Uncut == 0)
            return true;
        var count = LinearExpr.Sum(_uncut);
        if (!Minimize(count, 0, out _))
            return false;
        _model.Add(count == Best.Score.Uncut);
        var size = LinearExpr.WeightedSum(_uncut, _problem.Kinds.Select(kind => kind.Size / _problem.Unit));
        if (!Minimize(size, 0, out _))
            return false;
        _model.Add(size == Best.Score.UncutSize / _problem.Unit);
        return true;
    }

    /// <summary>Opens as little wire as can be, on as few reels as can be; whether that is proven.</summary>
    /// <param name="bound">What no way of cutting costs less than.</param>
    public bool LeastCost(long bound)
    {
        var isProven = Minimize(Cost, bound, out var found);
        CostBound = Math.Max(bound, found);
        return isProven;
    }

    /// <summary>Leaves the longest offcut on one reel, without opening more; whether that is proven.</summary>
    /// <param name="most">What no offcut is longer than, in <see cref="CuttingUnits.OffcutStep"/>.</param>
    public bool LongestOffcut(long most)
    {
        _model.Add(Cost <= _cost.Of(Best));
        var lengths = _graph.Ends.Select(EndOffcut).ToArray();
        var longer = Enumerable.Range(0, lengths.Length).Where(end => lengths[end] > Best.Score.Offcut && lengths[end] <= most).ToArray();
        if (longer.Length == 0)
            return true;
        var kept = longer.Select(_ => _model.NewBoolVar("")).ToArray();
        for (var place = 0; place < kept.Length; place++)
            _model.Add(kept[place] <= _ends[longer[place]]);
        _model.Add(LinearExpr.Sum(kept) <= 1);
        var shorter = LinearExpr.WeightedSum(kept, longer.Select(end => Best.Score.Offcut - lengths[end]));
        return Minimize(shorter, Best.Score.Offcut - most, out _);
    }

    private LinearExpr Cost => LinearExpr.WeightedSum(_ends, _graph.Ends.Select(end => _cost.Weights[end.Stock]));

    private long EndOffcut(GraphEnd end) =>
        Math.Max(0, _problem.Stock[end.Stock].Length - (end.Filled * _graph.Unit)) / CuttingUnits.OffcutStep;

    private bool Minimize(LinearExpr goal, long bound, out long found)
    {
        found = bound;
        if (_work.IsOver)
            return false;
        _model.ClearHints();
        Hint();
        _model.Minimize(goal);
        using var solver = new CpSolver();
        var status = StoppableSolver.Run(solver, _model, $"{_work.Parameter} {Strategy}", _work.Cancellation);
        _work.Spend(solver.Response?.DeterministicTime ?? 0);
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
            return false;
        found = (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6);
        var packing = new FlowReader(_graph, [.. _arcs.Select(solver.Value)], [.. _ends.Select(solver.Value)]).Read(_problem);
        if (packing.Score.IsBetterThan(Best.Score))
            Best = packing;
        return status == CpSolverStatus.Optimal;
    }

    /// <summary>Tells the solver the best way of cutting so far, where the graph has it.</summary>
    private void Hint()
    {
        var arcs = _graph.Arcs.Select(static (arc, place) => ((arc.From, arc.Kind), place)).ToDictionary();
        var ends = _graph.Ends.Select(static (end, place) => ((end.Filled, end.Stock), place)).ToDictionary();
        var (onArcs, onEnds) = (new long[_arcs.Length], new long[_ends.Length]);
        foreach (var reel in Best.Reels)
        {
            var place = 0;
            foreach (var kind in reel.Kinds.Order())
            {
                if (!arcs.TryGetValue((place, kind), out var arc))
                    return;
                onArcs[arc]++;
                place = _graph.Arcs[arc].To;
            }

            if (!ends.TryGetValue((place, reel.Stock), out var end))
                return;
            onEnds[end]++;
        }

        for (var arc = 0; arc < _arcs.Length; arc++)
            _model.AddHint(_arcs[arc], onArcs[arc]);
        for (var end = 0; end < _ends.Length; end++)
            _model.AddHint(_ends[end], onEnds[end]);
        for (var kind = 0; kind < _uncut.Length; kind++)
            _model.AddHint(_uncut[kind], _problem.Kinds[kind].Count - Best.Reels.Sum(reel => reel.Kinds.Count(one => one == kind)));
    }
}
