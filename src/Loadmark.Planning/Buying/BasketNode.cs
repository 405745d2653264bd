namespace Loadmark.Planning.Buying;

/// <summary>A basket in the making: another one and one offer more.</summary>
/// <param name="Parent">The basket before; null for the empty one.</param>
/// <param name="Place">The place of the last offer taken, in the order of the search; later ones are at this place or after it.</param>
/// <param name="Price">What it costs, in units of the scale.</param>
/// <param name="Mass">What it weighs, in units of the scale.</param>
/// <param name="Milliwatts">What it and the supplies there are have to spare.</param>
internal sealed record BasketNode(BasketNode? Parent, int Place, long Price, long Mass, long Milliwatts);
