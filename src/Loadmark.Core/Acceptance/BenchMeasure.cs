namespace Loadmark.Core.Acceptance;

/// <summary>What is measured at a plug when a rig is proven, in the order in which it is.</summary>
public enum BenchMeasure
{
    /// <summary>The voltage with nothing plugged in, and its polarity.</summary>
    Open,

    /// <summary>The voltage with every load plugged in and running.</summary>
    Loaded,

    /// <summary>The current that the load draws while all of them run.</summary>
    Draw,
}
