namespace Loadmark.Planning.Buying;

/// <summary>A basket with what options are compared by, in whole units.</summary>
/// <param name="Basket">The basket.</param>
/// <param name="Price">The basket's price in the smallest unit of the list.</param>
/// <param name="Mass">The basket's mass in the smallest unit of the list; one more than any that is known where it is not.</param>
/// <param name="Spare">What is to spare, in whole watts; negative where the draws are above what is known of the supplies.</param>
internal sealed record PricedBasket(Basket Basket, long Price, long Mass, long Spare);
