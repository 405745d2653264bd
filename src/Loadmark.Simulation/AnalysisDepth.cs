namespace Loadmark.Simulation;

/// <summary>How far a rig is analysed.</summary>
public enum AnalysisDepth
{
    /// <summary>
    /// To a verdict, in the least time: the circuit is solved where an outlet has not plainly enough, and the first seconds are computed
    /// where a figure calls for it: a starting draw or an input capacitance is given, an outlet meets an overload in another way than by
    /// its limit, or not everything settles.
    /// </summary>
    Verdict,

    /// <summary>To a verdict, with the first seconds computed whatever the figures say.</summary>
    WholeVerdict,

    /// <summary>To the steady state and what the rules say of it, without the first seconds.</summary>
    Steady,

    /// <summary>To the steady state and all of the first seconds, recorded.</summary>
    StartUp,
}
