using Loadmark.Core.Display;
using Loadmark.Drawing.Paper;

namespace Loadmark.Workshop.Sheets;

/// <summary>Ranges of computed figures on paper.</summary>
internal static class RangeText
{
    /// <summary>
    /// "8.55 to 9.45 V"; "?" where it is not known. The ends are rounded outwards: no value within them reads as outside.
    /// </summary>
    public static string Of(QuantityRange<Volt>? range)
    {
        if (range is not { } known)
            return FigureDisplay.Unknown;
        var (low, high) = (Math.Floor(known.Low.Value * 100) / 100, Math.Ceiling(known.High.Value * 100) / 100);
        var text = low == high ? $"{new Volts(low)}" : $"{FigureDisplay.Number(low)} to {new Volts(high)}";
        return text.Replace(' ', WrappedText.Tie);
    }
}
