using Loadmark.Core.Offers;

namespace Loadmark.Planning.Buying;

/// <summary>An offer that may be of use.</summary>
/// <param name="Offer">The offer.</param>
/// <param name="Terms">The offer's outlets and totals; a lead has none.</param>
/// <param name="SpareWatts">What one adds to the spare capacity, in watts.</param>
/// <param name="Most">More than this many can never all be needed.</param>
internal sealed record OfferTerms(Offer Offer, SupplyTerms Terms, decimal SpareWatts, int Most);
