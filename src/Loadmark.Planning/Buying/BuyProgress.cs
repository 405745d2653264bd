namespace Loadmark.Planning.Buying;

/// <summary>How far choosing supplies has come.</summary>
/// <param name="LeastPrice">Whatever is still found costs at least this much, in the money of the price list.</param>
/// <param name="Found">How many options were found so far; the wiring of each is planned at the end.</param>
/// <param name="Planned">How many of them are planned; null while it is still searched for more.</param>
/// <param name="IsForQuiet">Whether it is the cheapest that is quiet which is looked for, and the price is that of such.</param>
public sealed record BuyProgress(decimal LeastPrice, int Found, int? Planned, bool IsForQuiet = false);
