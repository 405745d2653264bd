using System.Collections.Immutable;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Buying;

/// <summary>A supply as the relaxed model sees it: its kinds of outlets and what it gives in all.</summary>
/// <param name="Kinds">The supply's kinds of outlets.</param>
/// <param name="Amps">The total in amps; null where there is none.</param>
/// <param name="Watts">The total in watts; null where there is none.</param>
internal sealed record SupplyTerms(ImmutableArray<OutletKind> Kinds, decimal? Amps, decimal? Watts)
{
    /// <summary>What a lead gives as a supply: nothing.</summary>
    public static SupplyTerms None { get; } = new([], null, null);

    /// <summary>A supply with nothing on it.</summary>
    /// <param name="supply">The supply, one on the list.</param>
    /// <param name="loads">All loads of the rig.</param>
    public static SupplyTerms Of(Supply supply, IReadOnlyCollection<LoadRating> loads)
    {
        var rating = SupplyRating.Of(supply);
        var total = rating.Total;
        var outlets = supply.Outlets.Items.Select(outlet => OutletRating.Of(supply, outlet));
        return new SupplyTerms([.. OutletKind.Of(outlets, rating, loads, mustBeCertain: true)], total?.Amps?.Value, total?.Watts?.Value);
    }

    /// <summary>What pinned feeds leave of a supply.</summary>
    public static SupplyTerms Left(WiredRig pinned, SupplyRating supply, IReadOnlyCollection<LoadRating> loads)
    {
        var outlets = pinned.Outlets.Items.Where(outlet => outlet.Supply == supply).ToList();
        var amps = outlets.Sum(static outlet => outlet.Run.Value);
        var watts = outlets.Sum(static outlet => outlet.Run.Value * (outlet.Volts?.Value ?? 0));
        var free = outlets.Where(static outlet => outlet.Feeds.Count == 0).Select(static outlet => outlet.Rating);
        return new SupplyTerms(
            [.. OutletKind.Of(free, supply, loads, mustBeCertain: false)],
            supply.Total?.Amps is { } most ? Math.Max(0, most.Value - amps) : null,
            supply.Total?.Watts is { } power ? Math.Max(0, power.Value - watts) : null);
    }
}
