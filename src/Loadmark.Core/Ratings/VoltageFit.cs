namespace Loadmark.Core.Ratings;

/// <summary>How a voltage suits a load, nominal against nominal (common practice, no source: match the voltage).</summary>
public enum VoltageFit
{
    /// <summary>Within 5 % of the printed range.</summary>
    Fine,

    /// <summary>Over the highest printed voltage by more than 5 %, up to 10 %.</summary>
    High,

    /// <summary>Over the highest printed voltage by more than 10 %.</summary>
    TooHigh,

    /// <summary>Under the lowest printed voltage by more than 5 %, down to 10 %.</summary>
    Low,

    /// <summary>
    /// Under the lowest printed voltage by more than 10 %, at least half of it, and the load is analog: it runs, with less headroom in its
    /// sound.
    /// </summary>
    Starved,

    /// <summary>Under the lowest printed voltage by more than 10 %, or under half of it where the load is analog.</summary>
    TooLow,
}
