using System.Collections.Immutable;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Buying;

/// <summary>A supply as the relaxed model sees it: its kinds of outlets and what it gives in all.</summary>
/// <param name="Kinds">Its kinds of outlets.</param>
/// <param name="Amps">The total in amps; null where there is none.</param>
/// <param name="Watts">The total in watts; null where there is none.</param>
internal sealed record SupplyTerms(ImmutableArray<OutletKind> Kinds, decimal? Amps, decimal? Watts)
{
    /// <summary>A supply with nothing on it.</summary>
    public static SupplyTerms Of(Supply supply)
    {
        var total = SupplyRating.Of(supply).Total;
        return new SupplyTerms([.. OutletKind.Of(supply.Outlets.Items.Select(outlet => OutletRating.Of(supply, outlet)))], total?.Amps?.Value, total?.Watts?.Value);
    }

    /// <summary>What pinned feeds leave of a supply.</summary>
    public static SupplyTerms Left(WiredRig pinned, SupplyRating supply)
    {
        var outlets = pinned.Outlets.Items.Where(outlet => outlet.Supply == supply).ToList();
        var amps = outlets.Sum(static outlet => outlet.Run.Value);
        var watts = outlets.Sum(static outlet => outlet.Run.Value * (outlet.Volts?.Value ?? 0));
        return new SupplyTerms(
            [.. OutletKind.Of(outlets.Where(static outlet => outlet.Feeds.Count == 0).Select(static outlet => outlet.Rating))],
            supply.Total?.Amps is { } most ? Math.Max(0, most.Value - amps) : null,
            supply.Total?.Watts is { } power ? Math.Max(0, power.Value - watts) : null);
    }
}
