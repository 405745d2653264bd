using System.Collections.Immutable;

namespace Loadmark.Planning.Cutting;

/// <summary>
/// Two levels of the objective as one number: the wire that is opened, in the largest unit of which every reel is a multiple, and among
/// equals the number of reels.
/// </summary>
internal sealed class StockCost
{
    private readonly long _unit;
    private readonly long _perUnit;

    /// <summary>Finds the units.</summary>
    public StockCost(CuttingProblem problem)
    {
        _unit = CuttingUnits.CommonDivisor(problem.Stock.Select(static stock => stock.Length));

        // Of one length alone, as little as possible is as few as possible.
        var perReel = problem.Stock.Length == 1 ? 0 : 1;
        _perUnit = (perReel * problem.Kinds.Sum(static kind => kind.Count)) + 1;
        Weights = [.. problem.Stock.Select(stock => (stock.Length / _unit * _perUnit) + perReel)];
    }

    /// <summary>What each reel costs, by the place of its stock.</summary>
    public ImmutableArray<long> Weights { get; }

    /// <summary>What a packing costs.</summary>
    public long Of(Packing packing) => packing.Reels.Sum(reel => Weights[reel.Stock]);

    /// <summary>The wire that is opened at such a cost, in micrometres.</summary>
    public long OpenedOf(long cost) => cost / _perUnit * _unit;
}
