namespace Loadmark.Planning.Cutting;

/// <summary>
/// Cuts pieces from reels so that the least is wasted: one-dimensional cutting stock with reels of several lengths. The objective, one
/// level after the other: the fewest pieces left over where there are too few reels, and the fewest metres of them; the fewest metres
/// opened, which is the same as the fewest wasted; the fewest reels; the longest single offcut, in whole centimetres, since one long rest
/// is of more use than several short ones.
/// </summary>
/// <remarks>
/// First the reels are filled by quick rules, and what must be opened at the least is bounded from the numbers of reels alone. Where both
/// meet, as they mostly do where many pieces fit on a reel, that is proven. Otherwise an integer program over the graph of all patterns
/// (<see cref="CuttingGraph"/>) is solved. Rejected: to say of each piece on which reel it is, because the bound of that program is weak
/// and every exchange of two reels another solution; and to list the patterns, of which a long reel has millions. The graph has no more
/// arcs than a limit; where it would have, lengths are rounded to the safe side, and what is then found is proven by the bound or not at
/// all.
/// </remarks>
public static class CuttingPlanner
{
    /// <summary>Cuts the pieces. The same input gives the same answer.</summary>
    /// <param name="pieces">The pieces, with what their ends take up (<see cref="CutPiece.Length"/>).</param>
    /// <param name="reels">The reels on hand and those that can be had.</param>
    /// <param name="options">What a cut takes away, and how long to search.</param>
    /// <param name="cancellation">Stops the search; what was found so far is returned.</param>
    /// <returns>Every piece is in it: on a reel, or among those that are impossible or left over.</returns>
    /// <exception cref="ArgumentException">
    /// A length is not over zero or is more than a thousand kilometres, or a count or the cut's loss is below zero.
    /// </exception>
    public static CuttingResult Plan(
        IReadOnlyList<CutPiece> pieces, IReadOnlyList<StockReel> reels, CuttingOptions options, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(pieces);
        ArgumentNullException.ThrowIfNull(reels);
        ArgumentNullException.ThrowIfNull(options);
        var problem = new CuttingProblem(pieces, reels, options);
        if (problem.Kinds.IsEmpty)
            return PackingReader.Read(problem, new Packing(problem, []), CuttingStatus.Optimal, openedBound: 0);

        var work = new WorkLeft(options.WorkLimit, cancellation);
        var bound = new StockBound(problem, work);
        var best = QuickPackings(problem, bound, cancellation).Select(static packing => packing.OnShorterReels())
            .MinBy(static packing => packing.Score.Rank)!;
        return Improve(problem, best, bound, work);
    }

    private static CuttingResult Improve(CuttingProblem problem, Packing best, StockBound bound, WorkLeft work)
    {
        var cost = new StockCost(problem);
        var isCostProven = best.Score.Uncut == 0 && cost.Of(best) <= bound.Cost;
        long? opened = best.Score.Uncut == 0 ? cost.OpenedOf(bound.Cost) : null;
        if (isCostProven && best.Score.Offcut >= MostOffcut(problem, best))
            return PackingReader.Read(problem, best, CuttingStatus.Optimal, opened);
        if (work.IsOver)
            return PackingReader.Read(problem, best, CuttingStatus.Feasible, opened);

        var graph = CuttingGraph.Of(problem);
        if (isCostProven && !graph.IsExact)
            return PackingReader.Read(problem, best, CuttingStatus.Feasible, opened);
        var model = new CuttingModel(problem, graph, best, work);
        var isUncutProven = model.LeastUncut() && (graph.IsExact || model.Best.Score.Uncut == 0);
        if (isUncutProven && !isCostProven)
        {
            // What the bound says is said of all pieces; where some stay uncut, fewer reels may do.
            var atLeast = model.Best.Score.Uncut == 0 ? bound.Cost : 0;
            isCostProven = (model.LeastCost(atLeast) && graph.IsExact) || cost.Of(model.Best) <= atLeast;
            opened = cost.OpenedOf(graph.IsExact ? model.CostBound : atLeast);
        }

        // Where lengths are rounded, filling reels has found as much as could be found so, and nothing would be proven.
        var isProven = isCostProven
            && (model.Best.Score.Offcut >= MostOffcut(problem, model.Best)
                || (graph.IsExact && model.LongestOffcut(MostOffcut(problem, model.Best))));
        return PackingReader.Read(problem, model.Best, isProven ? CuttingStatus.Optimal : CuttingStatus.Feasible, opened);
    }

    /// <summary>
    /// No offcut is longer where as much is opened on as many reels: on every other reel no less can be left than nothing, with one cut
    /// fewer than pieces; and every reel that is opened has a piece.
    /// </summary>
    private static long MostOffcut(CuttingProblem problem, Packing best) => Math.Max(0, Math.Min(
        best.Score.Opened - (problem.TotalSize - best.Score.UncutSize) + (problem.CutLoss * (best.Score.Reels - 1)),
        problem.Stock.Max(static stock => stock.Length) - problem.Kinds[^1].Size)) / CuttingUnits.OffcutStep;

    private static IEnumerable<Packing> QuickPackings(CuttingProblem problem, StockBound bound, CancellationToken cancellation)
    {
        int[] listed = [.. Enumerable.Range(0, problem.Stock.Length)];
        int[] longest = [.. listed.OrderByDescending(stock => problem.Stock[stock].Length)];
        int[] shortest = [.. longest.Reverse()];
        yield return FirstFitCutting.Pack(problem, problem.LongestFirst, listed);
        yield return FirstFitCutting.Pack(problem, problem.InOrder, listed);
        yield return FirstFitCutting.Pack(problem, problem.LongestFirst, longest);
        yield return FirstFitCutting.Pack(problem, problem.LongestFirst, shortest);
        var filling = new ReelFilling(problem);
        foreach (var order in new[] { longest, shortest })
        {
            var all = order.SelectMany(stock => Enumerable.Repeat(stock, problem.Stock[stock].Most));
            yield return filling.Fill(all, cancellation);

            // As many of each as the bound says, before any more.
            var bounded = order.SelectMany(stock => Enumerable.Repeat(stock, bound.Counts[stock]));
            var rest = order.SelectMany(stock => Enumerable.Repeat(stock, problem.Stock[stock].Most - bound.Counts[stock]));
            yield return filling.Fill(bounded.Concat(rest), cancellation);
        }
    }
}
