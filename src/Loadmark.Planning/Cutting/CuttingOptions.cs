namespace Loadmark.Planning.Cutting;

/// <summary>How to cut.</summary>
public sealed record CuttingOptions
{
    /// <summary>
    /// What each cut takes away: the width of a blade, or a ragged end; zero or more. A piece that ends with its reel, or nearer to that
    /// end than this, needs no more than what is there.
    /// </summary>
    public Metres CutLoss { get; init; }

    /// <summary>
    /// How much work the search may be, in the units in which the solver counts its own steps: about as many seconds on a machine with
    /// nothing else to do, and the same answer on any other. Zero for no search; ten unless set.
    /// </summary>
    public double WorkLimit { get; init; } = 10;
}
