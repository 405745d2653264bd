namespace Loadmark.Simulation.Figures;

/// <summary>How a load fares.</summary>
public enum LoadState
{
    /// <summary>The load draws, at no less than 0.90 of its lowest printed voltage.</summary>
    Runs,

    /// <summary>The load draws, but its voltage is under 0.90 of its lowest printed one.</summary>
    Low,

    /// <summary>The load does not run: not fed, dropped out, or starting over and over.</summary>
    Off,
}
