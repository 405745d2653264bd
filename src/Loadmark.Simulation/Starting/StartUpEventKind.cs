namespace Loadmark.Simulation.Starting;

/// <summary>What can happen while a rig starts.</summary>
public enum StartUpEventKind
{
    /// <summary>An outlet reaches its limit.</summary>
    AtLimit,

    /// <summary>An outlet is within its limit again.</summary>
    WithinLimit,

    /// <summary>An outlet switches off, as hiccup does.</summary>
    SwitchesOff,

    /// <summary>An outlet that has switched off tries again.</summary>
    TriesAgain,

    /// <summary>A fuse trips.</summary>
    FuseTrips,

    /// <summary>A fuse has closed again.</summary>
    FuseCloses,

    /// <summary>A load starts.</summary>
    Starts,

    /// <summary>A load has started and draws its running current.</summary>
    HasStarted,

    /// <summary>A load drops out.</summary>
    DropsOut,

    /// <summary>What has happened to a part of the rig happens over and over from here on.</summary>
    Repeats,
}
