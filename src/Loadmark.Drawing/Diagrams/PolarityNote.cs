using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;

namespace Loadmark.Drawing.Diagrams;

/// <summary>What a drawing says of a polarity: nothing of centre negative, which is the rule, and where nothing tells it, that.</summary>
internal static class PolarityNote
{
    /// <summary>The words; null for centre negative, and for alternating current, which has no polarity.</summary>
    /// <param name="polarity">The polarity.</param>
    /// <param name="form">The kind of current.</param>
    /// <param name="isShort">Whether there is little room.</param>
    public static string? Of(Figure<Polarity> polarity, Figure<SupplyForm> form, bool isShort = false) => (form.Value, polarity) switch
    {
        (SupplyForm.Alternating, _) => null,
        (_, { IsKnown: false }) => isShort ? "polarity ?" : "polarity not known",
        (_, { Value: Polarity.CentreNegative }) => null,
        _ => isShort ? "centre +" : PolarityText.Of(polarity.Value),
    };
}
