using System.Collections.Immutable;

namespace Loadmark.Planning.Cutting;

/// <summary>Takes a flow through the graph apart into ways, one for each reel.</summary>
/// <param name="graph">The graph.</param>
/// <param name="arcs">How many reels are cut along each arc; they are counted down.</param>
/// <param name="ends">How many reels end at each end; they are counted down.</param>
internal sealed class FlowReader(CuttingGraph graph, long[] arcs, long[] ends)
{
    private readonly ILookup<int, int> _arcsFrom =
        Enumerable.Range(0, graph.Arcs.Length).ToLookup(arc => graph.Arcs[arc].From);

    private readonly ILookup<int, int> _endsAt =
        Enumerable.Range(0, graph.Ends.Length).ToLookup(end => graph.Ends[end].Filled);

    /// <summary>The reels of all ways.</summary>
    /// <param name="problem">What is cut.</param>
    /// <exception cref="InvalidOperationException">More comes to a place than leaves it.</exception>
    public Packing Read(CuttingProblem problem)
    {
        var reels = ImmutableArray.CreateBuilder<FilledReel>();
        while (Next() is { } reel)
            reels.Add(reel);
        return new Packing(problem, reels.ToImmutable());
    }

    private FilledReel? Next()
    {
        var (kinds, place) = (ImmutableArray.CreateBuilder<int>(), 0);
        while (true)
        {
            // Where reels end and others go on, this one goes on: any choice gives a set of ways.
            if (_arcsFrom[place].FirstOrDefault(arc => arcs[arc] > 0, -1) is >= 0 and var next)
            {
                arcs[next]--;
                kinds.Add(graph.Arcs[next].Kind);
                place = graph.Arcs[next].To;
                continue;
            }

            if (place == 0)
                return null;
            var end = _endsAt[place].FirstOrDefault(end => ends[end] > 0, -1);
            if (end < 0)
                throw new InvalidOperationException($"Nothing leaves {place}, and something comes to it.");
            ends[end]--;
            return new FilledReel(graph.Ends[end].Stock, kinds.ToImmutable());
        }
    }
}
