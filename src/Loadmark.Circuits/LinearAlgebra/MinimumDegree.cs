namespace Loadmark.Circuits.LinearAlgebra;

/// <summary>Finds an order of elimination that fills in little: always the unknown with the fewest neighbours left.</summary>
/// <remarks>
/// Minimum degree, after W. F. Tinney and J. W. Walker, Direct solutions of sparse network equations by optimally
/// ordered triangular factorization, Proc. IEEE 55 (1967), scheme 2. A tree is eliminated from its leaves, without fill.
/// </remarks>
internal static class MinimumDegree
{
    /// <summary>The order for a symmetric pattern.</summary>
    /// <param name="neighbours">The neighbours of each unknown, without itself; consumed.</param>
    /// <param name="after">For each unknown those of which one must come before it; empty where it may come at any time.</param>
    /// <returns>The unknowns, first eliminated first.</returns>
    public static int[] Order(HashSet<int>[] neighbours, IReadOnlyList<int>[] after)
    {
        var order = new List<int>(neighbours.Length);
        var done = new bool[neighbours.Length];
        var queue = new PriorityQueue<int, (int Degree, int Unknown)>();
        var waiting = new List<int>();
        for (var unknown = 0; unknown < neighbours.Length; unknown++)
            queue.Enqueue(unknown, (neighbours[unknown].Count, unknown));

        while (order.Count < neighbours.Length)
        {
            if (!queue.TryDequeue(out var next, out var priority))
            {
                // Only unknowns whose turn never came are left: their order is the pivoting solver's business.
                foreach (var left in waiting.Where(left => !done[left]))
                    Eliminate(left);
                break;
            }

            if (done[next] || priority.Degree != neighbours[next].Count)
                continue;
            if (after[next].Count > 0 && !after[next].Any(first => done[first]))
            {
                waiting.Add(next);
                continue;
            }

            Eliminate(next);
        }

        return [.. order];

        void Eliminate(int pivot)
        {
            if (done[pivot])
                return;
            done[pivot] = true;
            order.Add(pivot);
            foreach (var neighbour in neighbours[pivot])
            {
                neighbours[neighbour].Remove(pivot);
                foreach (var other in neighbours[pivot])
                {
                    if (other != neighbour)
                        neighbours[neighbour].Add(other);
                }
            }

            foreach (var neighbour in neighbours[pivot])
                queue.Enqueue(neighbour, (neighbours[neighbour].Count, neighbour));
            for (var index = waiting.Count - 1; index >= 0; index--)
            {
                if (!after[waiting[index]].Contains(pivot))
                    continue;
                queue.Enqueue(waiting[index], (neighbours[waiting[index]].Count, waiting[index]));
                waiting.RemoveAt(index);
            }
        }
    }
}
