using Loadmark.Core.Rigs;

namespace Loadmark.Core.Offers;

/// <summary>A lead that can be bought.</summary>
/// <param name="Lead">
/// The lead; its id is the name on the price list, and its own count is null, which on a list says nothing of how many can be had.
/// </param>
/// <param name="Available">How many can be had, at least one; null for as many as are wanted.</param>
/// <param name="Price">What one costs, in the user's own money; not negative.</param>
/// <param name="MassGrams">What one weighs, in grams, more than zero; null when not known.</param>
public sealed record LeadOffer(Lead Lead, int? Available, decimal Price, decimal? MassGrams) : Offer(Price, MassGrams)
{
    /// <inheritdoc/>
    public override string Id => Lead.Id;
}
