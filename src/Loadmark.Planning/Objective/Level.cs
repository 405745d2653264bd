namespace Loadmark.Planning.Objective;

/// <summary>The levels of the objective, the first counting most.</summary>
internal enum Level
{
    /// <summary>Loads on no feed.</summary>
    Unfed,

    /// <summary>Loads of priority 1 on no feed.</summary>
    UnfedFirst,

    /// <summary>Loads of priority 2 on no feed.</summary>
    UnfedSecond,

    /// <summary>Loads on what is not known to suit, or well under their voltage.</summary>
    Doubtful,

    /// <summary>Loads that are wired now and are fed otherwise, or not at all; nothing unless a plan is to move as few as it can.</summary>
    Moves,

    /// <summary>Limits of outlets, banks and supplies with too little free.</summary>
    Thin,

    /// <summary>Findings on voltages a little off and plugs that sit loose.</summary>
    Margins,

    /// <summary>Findings of noise.</summary>
    Noise,

    /// <summary>Loads on a return with a finding of noise.</summary>
    NoisyLoads,

    /// <summary>Feeds over another lead than a straight one with one plug.</summary>
    SpecialLeads,

    /// <summary>Loads on a feed with others.</summary>
    Sharing,

    /// <summary>The largest limits of the outlets in use, added up.</summary>
    Capacity,
}
