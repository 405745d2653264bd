namespace Loadmark.Core.Acceptance;

/// <summary>What a reading says of whether a value is within its limits.</summary>
public enum Conformity
{
    /// <summary>Within, whatever the reading may be off.</summary>
    Pass,

    /// <summary>So near a limit that the reading does not tell, or how far it may be off is not known.</summary>
    NotSure,

    /// <summary>Outside, whatever the reading may be off.</summary>
    Fail,
}
