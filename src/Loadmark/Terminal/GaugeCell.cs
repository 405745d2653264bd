namespace Loadmark.Terminal;

/// <summary>What one cell of a mark gauge shows.</summary>
internal enum GaugeCell
{
    /// <summary>Nothing is drawn here.</summary>
    Empty,

    /// <summary>The running draw fills it.</summary>
    Run,

    /// <summary>Only the starting draw reaches here.</summary>
    Start,

    /// <summary>Where the draw would show, were it known.</summary>
    Unknown,

    /// <summary>The end of what may be drawn if the headroom is to stay free.</summary>
    Tick,

    /// <summary>The mark at the limit.</summary>
    Mark,

    /// <summary>The running draw is past the limit.</summary>
    RunPast,

    /// <summary>The starting draw is past the limit.</summary>
    StartPast,
}
