using Loadmark.Core.Rigs;

namespace Loadmark.Core.Offers;

/// <summary>A supply that can be bought, as many of it as are wanted.</summary>
/// <param name="Supply">The supply; its id is the name on the price list.</param>
/// <param name="Price">What one costs, in the user's own money; not negative.</param>
/// <param name="MassGrams">What one weighs, in grams, more than zero; null when not known.</param>
public sealed record SupplyOffer(Supply Supply, decimal Price, decimal? MassGrams) : Offer(Price, MassGrams)
{
    /// <inheritdoc/>
    public override string Id => Supply.Id;
}
