using Loadmark.Core.Offers;

namespace Loadmark.Planning.Buying;

/// <summary>One line of a shopping list.</summary>
/// <param name="Offer">What to buy.</param>
/// <param name="Count">How many, at least one.</param>
public sealed record Purchase(Offer Offer, int Count);
