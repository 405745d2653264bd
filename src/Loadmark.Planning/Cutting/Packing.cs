using System.Collections.Immutable;

namespace Loadmark.Planning.Cutting;

/// <summary>A way of cutting in whole numbers: reels, each with the kinds of its pieces.</summary>
/// <param name="problem">What is cut.</param>
/// <param name="reels">The reels that are opened, each with at least one piece.</param>
internal sealed class Packing(CuttingProblem problem, ImmutableArray<FilledReel> reels)
{
    /// <summary>The reels that are opened.</summary>
    public ImmutableArray<FilledReel> Reels { get; } = reels;

    /// <summary>How good it is.</summary>
    public CuttingScore Score { get; } = ScoreOf(problem, reels);

    /// <summary>What is left on a reel, in micrometres.</summary>
    public long OffcutOf(FilledReel reel) =>
        Math.Max(0, problem.Stock[reel.Stock].Length - reel.Kinds.Sum(kind => problem.Kinds[kind].Size));

    /// <summary>The same pieces, each reel exchanged for the shortest that is free and long enough, those with most left first.</summary>
    public Packing OnShorterReels()
    {
        var free = problem.Stock.Select(static stock => stock.Most).ToArray();
        foreach (var reel in Reels)
            free[reel.Stock]--;
        var changed = new List<FilledReel>();
        foreach (var reel in Reels.OrderByDescending(OffcutOf))
        {
            var size = reel.Kinds.Sum(kind => problem.Kinds[kind].Size);
            free[reel.Stock]++;
            var shortest = Enumerable.Range(0, free.Length)
                .Where(stock => free[stock] > 0 && problem.Stock[stock].Capacity >= size)
                .MinBy(stock => problem.Stock[stock].Length);
            free[shortest]--;
            changed.Add(reel with { Stock = shortest });
        }

        return new Packing(problem, [.. changed]);
    }

    private static CuttingScore ScoreOf(CuttingProblem problem, ImmutableArray<FilledReel> reels)
    {
        var sizes = reels.Select(reel => reel.Kinds.Sum(kind => problem.Kinds[kind].Size)).ToArray();
        return new CuttingScore(
            problem.Kinds.Sum(static kind => kind.Count) - reels.Sum(static reel => reel.Kinds.Length),
            problem.TotalSize - sizes.Sum(),
            reels.Sum(reel => problem.Stock[reel.Stock].Length),
            reels.Length,
            reels.Select((reel, place) => problem.Stock[reel.Stock].Length - sizes[place]).Prepend(0).Max() / CuttingUnits.OffcutStep);
    }
}
