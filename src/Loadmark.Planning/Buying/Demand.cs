using Loadmark.Core.Fits;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Buying;

/// <summary>Loads to be fed that are alike in what they need.</summary>
/// <param name="Rating">What each needs.</param>
/// <param name="Loads">Their tags, in the order of the rig.</param>
internal sealed record Demand(LoadRating Rating, IReadOnlyList<string> Loads)
{
    /// <summary>Whether each makes a finding of noise of any return that it shares.</summary>
    public bool MindsCompany { get; } = Occupant.Of(Rating, isReversed: false, SupplyForm.Direct, isInSignal: true).MindsCompany;

    /// <summary>How many there are.</summary>
    public int Count => Loads.Count;

    /// <summary>The loads of a rig that no pinned feed feeds.</summary>
    public static List<Demand> Of(WiredRig pinned) =>
    [
        .. FedSupplies.DarkLoads(pinned).Select(static load => load.Rating)
            .GroupBy(static rating => (
                (rating.Form.Value, rating.Form.IsKnown, rating.TakesEitherForm, rating.Voltage.Value, rating.Voltage.IsKnown),
                (
                    rating.Polarity.Value,
                    rating.Polarity.IsKnown,
                    rating.TakesEitherForm && rating.Polarity.IsAssumed,
                    rating.Plug.Value,
                    rating.Plug.IsKnown),
                (rating.Running?.Value, rating.Starting?.Value, VoltageBand.IsAnalog(rating), rating.DrawVaries ? rating.Id : ""),
                (rating.IsDigital == true, rating.Load.Isolate, rating.Load.Board)))
            .Select(static alike => new Demand(alike.First(), [.. alike.Select(static rating => rating.Id)])),
    ];
}
