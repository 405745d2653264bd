using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Drawing.Paper;
using Loadmark.Drawing.Texts;

namespace Loadmark.Workshop.Sheets;

/// <summary>A cell with the sign of a polarity before its texts.</summary>
internal static class PolarityCell
{
    private const double SignScale = 0.85;

    /// <summary>The cell.</summary>
    public static TableCell Of(Polarity polarity, params TableText[] texts) => new([.. texts])
    {
        Sign = middle => PolaritySign.Of(middle, polarity, SignScale),
        SignWidth = PolaritySign.Width * SignScale,
        SignWords = PolarityText.Of(polarity),
    };
}
