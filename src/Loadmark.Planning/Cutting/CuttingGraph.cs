using System.Collections.Immutable;

namespace Loadmark.Planning.Cutting;

/// <summary>
/// All ways of cutting a reel at once. Its places are what can be taken from a reel by some pieces; an arc is one piece more; each way from
/// nothing taken to an end is a pattern. Pieces come in the order of their length, so that one set of pieces is one way. Source:
/// J. M. Valério de Carvalho, Exact solution of bin-packing problems using column generation and branch-and-bound, Annals of Operations
/// Research 86, 1999 (arc flow).
/// </summary>
internal sealed class CuttingGraph
{
    /// <summary>More arcs and ends than the solver can do with in the work it has.</summary>
    private const int MostArcs = 20_000;

    /// <summary>As many are enough where lengths are rounded anyway, so that nothing is proven by what is found.</summary>
    private const int MostRoundedArcs = 5_000;

    private CuttingGraph(IEnumerable<GraphArc> arcs, IEnumerable<GraphEnd> ends, long unit, bool isExact)
    {
        Arcs = [.. arcs];
        Ends = [.. ends];
        Unit = unit;
        IsExact = isExact;
    }

    /// <summary>The arcs.</summary>
    public ImmutableArray<GraphArc> Arcs { get; }

    /// <summary>The ends.</summary>
    public ImmutableArray<GraphEnd> Ends { get; }

    /// <summary>The unit of its places, in micrometres.</summary>
    public long Unit { get; }

    /// <summary>Whether no length was rounded: then what no way through the graph can do, nothing can.</summary>
    public bool IsExact { get; }

    /// <summary>
    /// The graph of a problem in the finest unit in which it has not too many arcs and ends. In a coarser one than the problem's own
    /// pieces are rounded up and reels down, so that all its ways are patterns, and not all patterns ways.
    /// </summary>
    /// <param name="problem">The problem, with pieces.</param>
    public static CuttingGraph Of(CuttingProblem problem)
    {
        for (var unit = problem.Unit; unit > 0; unit <<= 1)
        {
            if (Build(problem, unit, unit == problem.Unit ? MostArcs : MostRoundedArcs) is { } graph)
                return graph;
        }

        throw new InvalidOperationException("In a unit longer than every reel there is nothing to cut.");
    }

    private static CuttingGraph? Build(CuttingProblem problem, long unit, int most)
    {
        var sizes = problem.Kinds.Select(kind => (kind.Size + unit - 1) / unit).ToArray();
        var capacities = problem.Stock.Select(stock => stock.Capacity / unit).ToArray();
        if (capacities.Max() > most)
            return null;
        var longest = (int)capacities.Max();
        var arcs = new List<GraphArc>();

        // Of the pieces so far; and those of the present kind that a way to a place has behind it at the least, where it needs any.
        var isReached = new bool[longest + 1];
        isReached[0] = true;
        for (var kind = 0; kind < sizes.Length; kind++)
        {
            var size = (int)Math.Min(sizes[kind], longest + 1);
            var counts = new int[longest + 1];
            for (var place = 0; place + size <= longest; place++)
            {
                var isNew = counts[place] > 0;
                if ((!isReached[place] && !isNew) || counts[place] >= problem.Kinds[kind].Count)
                    continue;
                arcs.Add(new GraphArc(place, place + size, kind));
                if (!isReached[place + size])
                    counts[place + size] = counts[place] + 1;
            }

            for (var place = 0; place <= longest; place++)
                isReached[place] |= counts[place] > 0;
            if (arcs.Count > most)
                return null;
        }

        var ends = Enumerable.Range(1, longest).Where(place => isReached[place])
            .SelectMany(place => Enumerable.Range(0, capacities.Length).Where(stock => capacities[stock] >= place)
                .Select(stock => new GraphEnd(place, stock))).ToList();
        return arcs.Count + ends.Count > most ? null : new CuttingGraph(arcs, ends, unit, unit == problem.Unit);
    }
}
