namespace Loadmark.Core.Offers;

/// <summary>Something that can be bought: a supply or a lead.</summary>
/// <param name="Price">What one costs, in the user's own money; not negative.</param>
/// <param name="MassGrams">What one weighs, in grams, more than zero; null when not known.</param>
public abstract record Offer(decimal Price, decimal? MassGrams)
{
    /// <summary>The name on the price list; unique there.</summary>
    public abstract string Id { get; }
}
