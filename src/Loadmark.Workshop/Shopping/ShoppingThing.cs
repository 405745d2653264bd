using Loadmark.Core.Rigs;

namespace Loadmark.Workshop.Shopping;

/// <summary>Something that is to be bought, once or several times.</summary>
public sealed record ShoppingThing
{
    /// <summary>What the rig calls it: its tag, or what it is where it has none.</summary>
    public required string Name { get; init; }

    /// <summary>What it is: what a shop is to be told, a line each.</summary>
    public required ValueList<string> Facts { get; init; }

    /// <summary>How many of it, at least one.</summary>
    public required int Count { get; init; }

    /// <summary>The line of the price list that surely is it; null where there is none.</summary>
    public PricedOffer? Line { get; init; }

    /// <summary>For how many of <see cref="Count"/> the list has a price: fewer where it offers fewer, 0 without a line.</summary>
    public int Priced { get; init; }

    /// <summary>Why there is no price, or not for all of it; null where nothing is to be said.</summary>
    public string? Remark { get; init; }

    /// <summary>What all that the list has of it costs, in the money of the list; null where it has no price.</summary>
    public decimal? Cost => Line is { } line ? line.Offer.Price * Priced : null;
}
