namespace Loadmark.Planning.Buying;

/// <summary>How the outlets of a supply are taken to feed loads.</summary>
internal enum CarryingWay
{
    /// <summary>Each outlet feeds one load, over a straight or a reversing lead.</summary>
    Alone,

    /// <summary>Each outlet feeds one load over a straight lead.</summary>
    AloneStraight,

    /// <summary>Each outlet feeds one load over a straight lead that changes no plug.</summary>
    AlonePlain,

    /// <summary>Each outlet has the lead with the most plugs there is.</summary>
    Shared,
}
