namespace Loadmark.Simulation.Figures;

/// <summary>What an outlet is doing.</summary>
public enum OutletState
{
    /// <summary>Within its limit.</summary>
    Regulating,

    /// <summary>At its limit.</summary>
    Limiting,

    /// <summary>It gives nothing: switched off, its fuse tripped, or held up by a higher voltage.</summary>
    Off,
}
