namespace Loadmark.Core.Gear;

/// <summary>Which side of its supply a load joins to the ground of its audio leads.</summary>
public enum GroundSide
{
    /// <summary>The 0 V side, as nearly all loads do.</summary>
    Negative,

    /// <summary>The positive side, as some circuits with germanium transistors do.</summary>
    Positive,
}
