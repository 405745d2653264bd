namespace Loadmark.Drawing.Plots;

/// <summary>Places labels one above the other, each as near as can be to what it names.</summary>
internal static class LabelColumn
{
    /// <summary>Spreads labels so that none overlap: neighbours that would are moved apart evenly around their middle.</summary>
    /// <param name="wanted">Where each label would stand, from top to bottom.</param>
    /// <param name="pitch">The least distance from label to label.</param>
    /// <param name="top">Where the first may stand.</param>
    /// <param name="bottom">Where the last may stand; room for all of them is the caller's care.</param>
    public static double[] Spread(IReadOnlyList<double> wanted, double pitch, double top, double bottom)
    {
        // Blocks of labels that touch; each stands where the distances to what is wanted are least squares.
        var blocks = new List<(int First, int Count, double Sum)>();
        for (var index = 0; index < wanted.Count; index++)
        {
            var block = (First: index, Count: 1, Sum: wanted[index]);
            while (blocks.Count > 0 && Start(blocks[^1]) + (blocks[^1].Count * pitch) > Start(block))
            {
                var above = blocks[^1];
                blocks.RemoveAt(blocks.Count - 1);
                block = (above.First, above.Count + block.Count, above.Sum + block.Sum - (above.Count * block.Count * pitch));
            }

            blocks.Add(block);
        }

        var places = new double[wanted.Count];
        foreach (var block in blocks)
        {
            for (var index = 0; index < block.Count; index++)
                places[block.First + index] = Start(block) + (index * pitch);
        }

        return places;

        double Start((int First, int Count, double Sum) block) =>
            Math.Clamp(block.Sum / block.Count, top, Math.Max(top, bottom - ((block.Count - 1) * pitch)));
    }
}
