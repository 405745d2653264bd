using System.Collections.Immutable;

namespace Loadmark.Planning.Problem;

/// <summary>
/// One lead on hand that may make a feed of its own kind: a chain, a series or a parallel lead; or, in a pooled problem, all
/// that are alike. Not a record: two leads that are alike are two.
/// </summary>
internal sealed class LeadSlot(int kind, int count, int least, int plugs, LeadEnds ends, ImmutableArray<FeedClass> classes)
{
    /// <summary>Which leads are alike: slots of one kind may be exchanged.</summary>
    public int Kind { get; } = kind;

    /// <summary>How many leads the slot stands for: one, or in a pooled problem all that are alike.</summary>
    public int Count { get; } = count;

    /// <summary>The fewest loads worth putting on one: two for a chain, one where the lead does more than split.</summary>
    public int Least { get; } = least;

    /// <summary>The most loads each has plugs for.</summary>
    public int Plugs { get; } = plugs;

    /// <summary>What the slot does to polarity and plug.</summary>
    public LeadEnds Ends { get; } = ends;

    /// <summary>What the slot may take from.</summary>
    public ImmutableArray<FeedClass> Classes { get; } = classes;
}
