namespace Loadmark.Planning.Cutting;

/// <summary>Reels of one length that wire can be cut from.</summary>
/// <param name="Id">What the reel is called.</param>
/// <param name="Length">The wire on each of them, over zero.</param>
/// <param name="Count">How many there are, zero or more; null for as many as are needed.</param>
public sealed record StockReel(string Id, Metres Length, int? Count = null);
