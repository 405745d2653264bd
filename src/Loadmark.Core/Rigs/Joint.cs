namespace Loadmark.Core.Rigs;

/// <summary>How a feed joins its outlets.</summary>
public enum Joint
{
    /// <summary>One outlet, nothing to join.</summary>
    None,

    /// <summary>One after the other: the voltages add, the smallest limit counts.</summary>
    Series,

    /// <summary>Side by side: the limits add, the voltages must be equal.</summary>
    Parallel,
}
