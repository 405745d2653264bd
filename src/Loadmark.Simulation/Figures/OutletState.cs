namespace Loadmark.Simulation.Figures;

/// <summary>What an outlet is doing.</summary>
public enum OutletState
{
    /// <summary>The outlet gives no more than its limit.</summary>
    Regulating,

    /// <summary>The outlet is held at its limit.</summary>
    Limiting,

    /// <summary>The outlet gives nothing: switched off, its fuse tripped, or held up by a higher voltage.</summary>
    Off,
}
