namespace Loadmark.Simulation.Starting;

/// <summary>What was seen of an outlet while a rig started.</summary>
internal struct OutletMeter
{
    /// <summary>The most that the outlet gave, A.</summary>
    public double PeakAmps;

    /// <summary>When that was first, s.</summary>
    public double PeakAt;

    /// <summary>How long the outlet was at its limit or over it, s.</summary>
    public double SecondsOver;

    /// <summary>How long the outlet has been at its limit or over it without a break, s.</summary>
    public double Stretch;

    /// <summary>The longest time without a break, s.</summary>
    public double LongestStretch;
}
