namespace Loadmark.Circuits.LinearAlgebra;

/// <summary>Where a matrix and its factors may have values, row by row, in the order of elimination. Symmetric, with fill.</summary>
internal sealed class SparsePattern
{
    private SparsePattern(int[] position, int[] starts, int[] columns, int[] diagonals)
    {
        Position = position;
        Starts = starts;
        Columns = columns;
        Diagonals = diagonals;
    }

    /// <summary>Place in the order of elimination, for each unknown as it was numbered by the caller.</summary>
    public int[] Position { get; }

    /// <summary>Index of the first value of each row, and one more at the end.</summary>
    public int[] Starts { get; }

    /// <summary>The column of each value, ascending within a row.</summary>
    public int[] Columns { get; }

    /// <summary>Index of each row's value on the diagonal.</summary>
    public int[] Diagonals { get; }

    public int Size => Diagonals.Length;

    public int ValueCount => Columns.Length;

    /// <summary>Orders and fills a pattern.</summary>
    /// <param name="size">Number of unknowns.</param>
    /// <param name="entries">Pairs of unknowns that meet in an equation; the mirrored pair is added.</param>
    /// <param name="after">For each unknown those of which one must be eliminated before it (see <see cref="MinimumDegree"/>).</param>
    public static SparsePattern Create(int size, IEnumerable<(int Row, int Column)> entries, IReadOnlyList<int>[] after)
    {
        var neighbours = new HashSet<int>[size];
        for (var unknown = 0; unknown < size; unknown++)
            neighbours[unknown] = [];
        foreach (var (row, column) in entries)
        {
            if (row == column)
                continue;
            neighbours[row].Add(column);
            neighbours[column].Add(row);
        }

        var original = neighbours.Select(set => set.ToArray()).ToArray();
        var order = MinimumDegree.Order(neighbours, after);
        var position = new int[size];
        for (var place = 0; place < size; place++)
            position[order[place]] = place;
        return Fill(position, order, original);
    }

    /// <summary>The index of a value by the caller's numbers.</summary>
    public int IndexOf(int row, int column)
    {
        var place = Position[row];
        var index = Array.BinarySearch(Columns, Starts[place], Starts[place + 1] - Starts[place], Position[column]);
        return index >= 0 ? index : throw new InvalidOperationException("A value outside the pattern was asked for.");
    }

    private static SparsePattern Fill(int[] position, int[] order, int[][] original)
    {
        // Row by row: the part right of the diagonal of an eliminated row passes on to its parent, the next row it meets.
        var size = order.Length;
        var upper = new List<int>[size];
        var children = new List<int>[size];
        for (var place = 0; place < size; place++)
            children[place] = [];
        var metBy = new int[size];
        for (var place = 0; place < size; place++)
        {
            var row = upper[place] = [];
            foreach (var unknown in original[order[place]])
                Meet(place, position[unknown]);
            foreach (var child in children[place])
            {
                foreach (var other in upper[child])
                    Meet(place, other);
            }

            row.Sort();
            if (row.Count > 0)
                children[row[0]].Add(place);
        }

        var rows = new List<int>[size];
        for (var place = 0; place < size; place++)
            rows[place] = [];
        for (var place = 0; place < size; place++)
        {
            foreach (var other in upper[place])
                rows[other].Add(place);
        }

        var starts = new int[size + 1];
        var diagonals = new int[size];
        var columns = new List<int>();
        for (var place = 0; place < size; place++)
        {
            starts[place] = columns.Count;
            columns.AddRange(rows[place]);
            diagonals[place] = columns.Count;
            columns.Add(place);
            columns.AddRange(upper[place]);
        }

        starts[size] = columns.Count;
        return new SparsePattern(position, starts, [.. columns], diagonals);

        void Meet(int place, int other)
        {
            if (other <= place || metBy[other] > place)
                return;
            metBy[other] = place + 1;
            upper[place].Add(other);
        }
    }
}
