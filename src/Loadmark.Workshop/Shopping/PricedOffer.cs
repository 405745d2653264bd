using Loadmark.Core.Offers;

namespace Loadmark.Workshop.Shopping;

/// <summary>The line of a price list that surely is something that is to be bought.</summary>
/// <param name="Offer">What the line offers.</param>
/// <param name="How">What it was told by: "same tag", "same name".</param>
public sealed record PricedOffer(Offer Offer, string How);
