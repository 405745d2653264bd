using System.Collections.Immutable;

namespace Loadmark.Planning.Cutting;

/// <summary>Gives a packing its names: pieces and reels of one kind are taken in the order in which they were given.</summary>
internal static class PackingReader
{
    /// <summary>The packing as a result.</summary>
    /// <param name="problem">What is cut.</param>
    /// <param name="packing">How.</param>
    /// <param name="status">What is proven of it.</param>
    /// <param name="openedBound">What is opened at the least, in micrometres; null where that is not known.</param>
    public static CuttingResult Read(CuttingProblem problem, Packing packing, CuttingStatus status, long? openedBound)
    {
        var taken = new int[problem.Kinds.Length];
        var reels = new List<ReelCuts>();
        foreach (var stock in Enumerable.Range(0, problem.Stock.Length))
        {
            var names = Names(problem.Stock[stock]).GetEnumerator();
            foreach (var reel in packing.Reels.Where(reel => reel.Stock == stock).OrderBy(packing.OffcutOf))
            {
                names.MoveNext();
                var pieces = reel.Kinds.Order().Select(kind => problem.Kinds[kind].Pieces[taken[kind]++]);
                reels.Add(Cuts(problem, names.Current, [.. pieces]));
            }
        }

        var result = new CuttingResult
        {
            Status = status,
            Reels = [.. reels],
            Impossible = new(problem.Impossible),
            LeftOver = [.. problem.Kinds.SelectMany((kind, place) => kind.Pieces.Skip(taken[place]))],
            WastedBound = null,
        };
        return openedBound is not { } bound
            ? result
            : result with
            {
                WastedBound = bound >= packing.Score.Opened
                    ? result.Wasted
                    : Metres.Max(Metres.Zero, CuttingUnits.Length(bound) - result.Used),
            };
    }

    private static ReelCuts Cuts(CuttingProblem problem, (StockReel Reel, int Number) name, ImmutableArray<CutPiece> pieces)
    {
        var used = pieces.Aggregate(Metres.Zero, static (sum, piece) => sum + piece.Length);
        return new ReelCuts
        {
            Reel = name.Reel,
            Number = name.Number,
            Pieces = new(pieces),
            Used = used,
            Offcut = Metres.Max(Metres.Zero, name.Reel.Length - used - (pieces.Length * problem.Loss)),
        };
    }

    private static IEnumerable<(StockReel Reel, int Number)> Names(StockKind stock) => stock.Reels.SelectMany(
        reel => Enumerable.Range(1, Math.Min(reel.Count ?? stock.Most, stock.Most)).Select(number => (reel, number)));
}
