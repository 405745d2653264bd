using Loadmark.Planning.Objective;

namespace Loadmark.Planning.Search;

/// <summary>The first levels of a vector that no wiring's is before in order, as far as that is proven.</summary>
internal sealed class ObjectiveBounds
{
    /// <summary>The levels, in the model's whole units.</summary>
    public long[] Levels { get; private set; } = [];

    /// <summary>The levels with zero for what is not proven yet: nothing is below.</summary>
    public long[] Ideal => [.. Levels, .. new long[Enum.GetValues<Level>().Length - Levels.Length]];

    /// <summary>Takes another such vector into account: the later in order says more.</summary>
    public void Raise(long[] levels)
    {
        if (Levels.AsSpan().SequenceCompareTo(levels) < 0)
            Levels = levels;
    }

    /// <summary>How far a wiring may be from the best in each level; null where nothing is proven.</summary>
    /// <param name="levels">The wiring's levels, in the model's whole units.</param>
    public long?[] GapsOf(ReadOnlySpan<long> levels)
    {
        var gaps = new long?[levels.Length];
        for (var level = 0; level < Levels.Length; level++)
        {
            gaps[level] = levels[level] - Levels[level];
            if (gaps[level] != 0)
                break;
        }

        return gaps;
    }

    /// <summary>Whether a wiring is proven the best.</summary>
    /// <param name="levels">The wiring's levels, in the model's whole units.</param>
    public bool AreMetBy(ReadOnlySpan<long> levels) => levels.SequenceEqual(Levels);
}
