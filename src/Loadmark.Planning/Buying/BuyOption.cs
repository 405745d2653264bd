using Loadmark.Core.Checks;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Buying;

/// <summary>A combination of supplies that feeds everything, together with those there are; no supply of it can be left out.</summary>
public sealed record BuyOption
{
    /// <summary>What to buy, in the order of the price list; empty where the supplies there are suffice.</summary>
    public required ValueList<Purchase> Purchases { get; init; }

    /// <summary>What the option costs, in the money of the price list.</summary>
    public required decimal Price { get; init; }

    /// <summary>What the option weighs, in grams; null when the mass of one of its supplies is not known.</summary>
    public required decimal? MassGrams { get; init; }

    /// <summary>
    /// Spare capacity in whole watts, rounded down: what all supplies together can give at the voltages of the rig's loads (of each
    /// the smaller of its total and the sum of its outlets), less what the loads draw at the lowest voltage they are printed for.
    /// What nothing tells counts as nothing.
    /// </summary>
    public required Watts Spare { get; init; }

    /// <summary>The best wiring found with it; the supplies bought are in the rig of the plan.</summary>
    public required PlanResult Plan { get; init; }

    /// <summary>What the rules say of the rig with it, as it is planned.</summary>
    public Severity Verdict => Plan.Check.Verdict;

    /// <summary>Whether the rules find no noise in it, and nothing worse.</summary>
    public bool IsQuiet => Plan.Unfed.Count == 0 && Plan.Check.Findings.Items.All(static finding => finding.Severity < Severity.Noise);

    /// <summary>The names of what is bought that is unregulated, or may be, in the order of the price list.</summary>
    public ValueList<string> MayBeUnregulated =>
    [
        .. Purchases.Items.Select(static purchase => purchase.Offer)
            .Where(static offer => SupplyRating.Of(offer.Supply) is { MayBeUnregulated: true } or { Regulated: false })
            .Select(static offer => offer.Id),
    ];

    /// <summary>How many supplies are bought.</summary>
    public int Count => Purchases.Items.Sum(static purchase => purchase.Count);
}
