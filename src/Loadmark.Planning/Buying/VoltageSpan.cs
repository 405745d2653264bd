using Loadmark.Core.Ratings;

namespace Loadmark.Planning.Buying;

/// <summary>A span of voltages, in volts.</summary>
/// <param name="Low">The lowest.</param>
/// <param name="High">The highest.</param>
internal readonly record struct VoltageSpan(decimal Low, decimal High)
{
    /// <summary>
    /// The nominal voltages at which a supply counts as of use to a load: those it is printed for, and what is forgiven beyond.
    /// </summary>
    public static VoltageSpan Of(LoadRating load)
    {
        var printed = load.Voltage.Value;
        return new VoltageSpan(printed.Low.Value * (1 - VoltageBand.Allowed), printed.High.Value * (1 + VoltageBand.Allowed));
    }

    /// <summary>What the span has in common with another; null when that is nothing.</summary>
    public VoltageSpan? Overlap(decimal low, decimal high)
    {
        var span = new VoltageSpan(Math.Max(Low, low), Math.Min(High, high));
        return span.Low <= span.High ? span : null;
    }
}
