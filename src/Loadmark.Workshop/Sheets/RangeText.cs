using Loadmark.Core.Display;
using Loadmark.Drawing.Paper;

namespace Loadmark.Workshop.Sheets;

/// <summary>Ranges of computed figures on paper.</summary>
internal static class RangeText
{
    /// <summary>As <see cref="FigureDisplay.Outwards"/> writes it, on one line.</summary>
    public static string Of(QuantityRange<Volt>? range) => FigureDisplay.Outwards(range).Replace(' ', WrappedText.Tie);
}
