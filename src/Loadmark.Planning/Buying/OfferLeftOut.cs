using Loadmark.Core.Offers;

namespace Loadmark.Planning.Buying;

/// <summary>An offer that was not considered.</summary>
/// <param name="Offer">The offer.</param>
/// <param name="Because">Why, as a sentence for a technician.</param>
/// <param name="IsBeaten">Whether it would do but another offer beats it in everything; false where it is of no use here.</param>
public sealed record OfferLeftOut(Offer Offer, string Because, bool IsBeaten);
