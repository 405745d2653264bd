using System.Collections.Immutable;

namespace Loadmark.Planning.Cutting;

/// <summary>
/// Fills one reel after another as full as the pieces that are left allow, the longest of them always among those that are taken. Source:
/// minimum bin slack, J. N. D. Gupta and J. C. Ho, A new heuristic algorithm for the one-dimensional bin-packing problem, 1999; the fullest
/// reel is found here by summing up subsets.
/// </summary>
internal sealed class ReelFilling
{
    /// <summary>Steps that all reels together may take; lengths are rounded to the safe side where that would not do.</summary>
    private const long MostSteps = 100_000_000;

    private const long FewestUnits = 200;

    private readonly CuttingProblem _problem;
    private readonly long[] _sizes;
    private readonly long[] _capacities;

    /// <summary>Rounds the lengths.</summary>
    public ReelFilling(CuttingProblem problem)
    {
        _problem = problem;
        var longest = problem.Stock.Max(static stock => stock.Capacity);
        var reels = Math.Max(1, problem.TotalSize / problem.Stock.Min(static stock => stock.Capacity));
        var units = Math.Max(FewestUnits, MostSteps / problem.Kinds.Length / reels);
        var unit = Math.Max(problem.Unit, (longest + units - 1) / units);
        _sizes = [.. problem.Kinds.Select(kind => (kind.Size + unit - 1) / unit)];
        _capacities = [.. problem.Stock.Select(stock => stock.Capacity / unit)];
    }

    /// <summary>Fills reels.</summary>
    /// <param name="order">Which stock each reel is taken from, by its place; no more of each than there are.</param>
    /// <param name="cancellation">Ends it; what would come then stays uncut.</param>
    public Packing Fill(IEnumerable<int> order, CancellationToken cancellation)
    {
        var left = _problem.Kinds.Select(static kind => kind.Count).ToArray();
        var reels = new List<FilledReel>();
        foreach (var stock in order)
        {
            if (cancellation.IsCancellationRequested || !Array.Exists(left, static count => count > 0))
                break;
            var cut = Fullest(_capacities[stock], left);
            if (!cut.IsEmpty)
                reels.Add(new FilledReel(stock, cut));
        }

        return new Packing(_problem, [.. reels]);
    }

    /// <summary>The pieces that fill a reel best; they are taken from those that are left.</summary>
    private ImmutableArray<int> Fullest(long capacity, int[] left)
    {
        var first = Enumerable.Range(0, left.Length).FirstOrDefault(kind => left[kind] > 0 && _sizes[kind] <= capacity, -1);
        if (first < 0)
            return [];
        left[first]--;
        var room = (int)(capacity - _sizes[first]);

        // By what is filled: the kind of the piece that came last, or -1 where nothing comes to that.
        var last = new int[room + 1];
        var uses = new int[room + 1];
        Array.Fill(last, -1);
        for (var kind = first; kind < left.Length && last[room] < 0; kind++)
        {
            if (left[kind] == 0 || _sizes[kind] > room)
                continue;
            Array.Clear(uses);
            for (var filled = (int)_sizes[kind]; filled <= room; filled++)
            {
                var before = filled - (int)_sizes[kind];
                if (last[filled] >= 0 || (before > 0 && last[before] < 0) || uses[before] >= left[kind])
                    continue;
                last[filled] = kind;
                uses[filled] = uses[before] + 1;
            }
        }

        var cut = ImmutableArray.CreateBuilder<int>();
        cut.Add(first);
        for (var filled = Array.FindLastIndex(last, static kind => kind >= 0); filled > 0; filled -= (int)_sizes[cut[^1]])
        {
            cut.Add(last[filled]);
            left[last[filled]]--;
        }

        return cut.ToImmutable();
    }
}
