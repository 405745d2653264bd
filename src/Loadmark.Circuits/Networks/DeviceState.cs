namespace Loadmark.Circuits.Networks;

/// <summary>What a device with states is doing.</summary>
public enum DeviceState
{
    /// <summary>A device with one state only.</summary>
    Plain,

    /// <summary>Load: drawing its running draw.</summary>
    Running,

    /// <summary>Load: drawing its starting draw.</summary>
    Booting,

    /// <summary>Load: dropped out or not started. Outlet: switched off between two tries, or not yet started.</summary>
    Off,

    /// <summary>Outlet: giving less than its current limit.</summary>
    Regulating,

    /// <summary>Outlet: held at its current limit.</summary>
    Limiting,

    /// <summary>Outlet: its node is above its EMF, so it gives nothing.</summary>
    Blocking,

    /// <summary>Fuse: heat state below 1.</summary>
    Closed,

    /// <summary>Fuse: heat state of 1 or more.</summary>
    Tripped,
}
