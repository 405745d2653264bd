using Loadmark.Core.Fits;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;

namespace Loadmark.Planning.Problem;

/// <summary>What a lead does to polarity and plug on its way.</summary>
/// <param name="Reverses">Whether it exchanges centre and sleeve.</param>
/// <param name="Plug">The plug at its load ends; null for the outlet's own.</param>
internal readonly record struct LeadEnds(bool Reverses, Plug? Plug)
{
    /// <summary>A plain straight lead.</summary>
    public static LeadEnds Plain => default;

    /// <summary>What counts in the objective when a load is fed over such a lead; null when the load must not be.</summary>
    /// <param name="point">What stands at the outlets' own plug.</param>
    /// <param name="load">The load.</param>
    /// <param name="mustBeCertain">Whether it must be known to suit.</param>
    public LoadCost? CostOf(FeedPoint point, LoadRating load, bool mustBeCertain) =>
        LoadCost.Of(Suitability.Of(point.Over(Reverses, Plug), load), mustBeCertain);
}
