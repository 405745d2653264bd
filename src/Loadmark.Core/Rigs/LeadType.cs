namespace Loadmark.Core.Rigs;

/// <summary>The sorts of d.c. lead.</summary>
public enum LeadType
{
    /// <summary>One plug at either end.</summary>
    Straight,

    /// <summary>One end for the outlet, several plugs along the wire for loads.</summary>
    DaisyChain,

    /// <summary>Straight, with centre and sleeve exchanged.</summary>
    Reversing,

    /// <summary>Two or more ends for outlets joined one after the other, one plug for a load.</summary>
    Series,

    /// <summary>Two or more ends for outlets joined side by side, one plug for a load.</summary>
    Parallel,
}
