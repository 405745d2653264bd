using Loadmark.Core.Checks;
using Loadmark.Core.Display;
using Loadmark.Core.Offers;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Buying;

/// <summary>
/// A combination of supplies and leads that feeds everything, together with those there are; nothing of it can be left out.
/// </summary>
public sealed record BuyOption
{
    /// <summary>What to buy, supplies and leads, in the order of the price list; empty where what is there suffices.</summary>
    public required ValueList<Purchase> Purchases { get; init; }

    /// <summary>What the option costs, in the money of the price list.</summary>
    public required decimal Price { get; init; }

    /// <summary>What the option weighs, in grams; null when the mass of one of its supplies or leads is not known.</summary>
    public required decimal? MassGrams { get; init; }

    /// <summary>
    /// Spare capacity in whole watts, rounded down: what all supplies together can give at the voltages of the rig's loads (of each
    /// the smaller of its total and the sum of its outlets), less what the loads draw at the lowest voltage they are printed for.
    /// What nothing tells counts as nothing.
    /// </summary>
    public required Watts Spare { get; init; }

    /// <summary>The best wiring found with it; what is bought is in the rig of the plan.</summary>
    public required PlanResult Plan { get; init; }

    /// <summary>What the rules say of the rig with it, as it is planned.</summary>
    public Severity Verdict => Plan.Check.Verdict;

    /// <summary>Whether everything is fed and the rules find no noise in it; what else they find, <see cref="Verdict"/> says.</summary>
    public bool IsQuiet => Plan.Unfed.Count == 0 && Plan.Check.Findings.Items.All(static finding => finding.Severity != Severity.Noise);

    /// <summary>The names of what is bought that is unregulated, or may be, in the order of the price list.</summary>
    public ValueList<string> MayBeUnregulated =>
    [
        .. Purchases.Items.Select(static purchase => purchase.Offer).OfType<SupplyOffer>()
            .Where(static offer => SupplyRating.Of(offer.Supply) is { MayBeUnregulated: true } or { Regulated: false })
            .Select(static offer => offer.Id),
    ];

    /// <summary>
    /// Whether it was wired so that nothing hums, whatever that costs on levels that otherwise count more, such as headroom.
    /// </summary>
    public bool IsWiredForQuiet { get; init; }

    /// <summary>How many supplies are bought; leads are no boxes.</summary>
    public int Count => Supplies.Items.Sum(static purchase => purchase.Count);

    /// <summary>What of it is supplies, in the order of the price list.</summary>
    public ValueList<Purchase> Supplies => [.. Purchases.Items.Where(static purchase => purchase.Offer is SupplyOffer)];

    /// <summary>What of it is leads, in the order of the price list.</summary>
    public ValueList<Purchase> Leads => [.. Purchases.Items.Where(static purchase => purchase.Offer is LeadOffer)];

    /// <summary>The leads to buy in words: "2 reversing leads, 1 daisy chain with 5 plugs"; null where none is.</summary>
    public string? LeadWords => Leads.Count == 0
        ? null
        : string.Join(", ", Leads.Items.Select(static purchase => LeadNames.Counted(((LeadOffer)purchase.Offer).Lead, purchase.Count)));
}
