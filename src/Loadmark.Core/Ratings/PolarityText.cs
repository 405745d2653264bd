using Loadmark.Core.Gear;

namespace Loadmark.Core.Ratings;

/// <summary>Polarity in words.</summary>
public static class PolarityText
{
    /// <summary>"centre negative" or "centre positive".</summary>
    public static string Of(Polarity polarity) => polarity == Polarity.CentreNegative ? "centre negative" : "centre positive";
}
