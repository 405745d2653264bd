namespace Loadmark.Planning.Cutting;

/// <summary>
/// Cutting as a person does without a plan: each piece from the first opened reel that still has enough, and where none has, from the next
/// reel of the list that is long enough. Nothing is ever moved again. Sources: first fit and first fit decreasing, D. S. Johnson,
/// Near-optimal bin packing algorithms, 1973.
/// </summary>
public static class FirstFitCutting
{
    /// <summary>The pieces as they come.</summary>
    /// <inheritdoc cref="CuttingPlanner.Plan" path="/param[@name='pieces' or @name='reels' or @name='options']"/>
    /// <inheritdoc cref="CuttingPlanner.Plan" path="/exception[@cref='T:System.ArgumentException']"/>
    public static CuttingResult InOrder(IReadOnlyList<CutPiece> pieces, IReadOnlyList<StockReel> reels, CuttingOptions options)
    {
        var problem = ProblemOf(pieces, reels, options);
        return Read(problem, problem.InOrder);
    }

    /// <summary>The longest pieces first.</summary>
    /// <inheritdoc cref="CuttingPlanner.Plan" path="/param[@name='pieces' or @name='reels' or @name='options']"/>
    /// <inheritdoc cref="CuttingPlanner.Plan" path="/exception[@cref='T:System.ArgumentException']"/>
    public static CuttingResult Decreasing(IReadOnlyList<CutPiece> pieces, IReadOnlyList<StockReel> reels, CuttingOptions options)
    {
        var problem = ProblemOf(pieces, reels, options);
        return Read(problem, problem.LongestFirst);
    }

    /// <summary>Packs pieces of these kinds in this order.</summary>
    /// <param name="problem">What is cut.</param>
    /// <param name="kinds">The kinds of the pieces, by their place.</param>
    /// <param name="order">In which order stock is opened, by its place.</param>
    internal static Packing Pack(CuttingProblem problem, IEnumerable<int> kinds, IReadOnlyList<int> order)
    {
        var free = problem.Stock.Select(static stock => stock.Most).ToArray();
        var (stocks, left, cuts) = (new List<int>(), new List<long>(), new List<List<int>>());
        foreach (var kind in kinds)
        {
            var size = problem.Kinds[kind].Size;
            var reel = left.FindIndex(rest => rest >= size);
            if (reel < 0)
            {
                var place = order.Select(static stock => (int?)stock)
                    .FirstOrDefault(stock => free[stock!.Value] > 0 && problem.Stock[stock.Value].Capacity >= size);
                if (place is not { } next)
                    continue;
                free[next]--;
                reel = left.Count;
                stocks.Add(next);
                left.Add(problem.Stock[next].Capacity);
                cuts.Add([]);
            }

            left[reel] -= size;
            cuts[reel].Add(kind);
        }

        return new Packing(problem, [.. stocks.Select((stock, reel) => new FilledReel(stock, [.. cuts[reel]]))]);
    }

    private static CuttingResult Read(CuttingProblem problem, IEnumerable<int> kinds) => PackingReader.Read(
        problem, Pack(problem, kinds, [.. Enumerable.Range(0, problem.Stock.Length)]), CuttingStatus.Feasible, openedBound: null);

    private static CuttingProblem ProblemOf(IReadOnlyList<CutPiece> pieces, IReadOnlyList<StockReel> reels, CuttingOptions options)
    {
        ArgumentNullException.ThrowIfNull(pieces);
        ArgumentNullException.ThrowIfNull(reels);
        ArgumentNullException.ThrowIfNull(options);
        return new CuttingProblem(pieces, reels, options);
    }
}
