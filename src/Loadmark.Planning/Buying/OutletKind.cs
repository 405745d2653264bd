using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Buying;

/// <summary>
/// Outlets of one supply that are alike, as the relaxed model sees them. Whatever the rules allow is allowed here too; some of
/// what they refuse may be.
/// </summary>
internal sealed class OutletKind(OutletRating rating, int count)
{
    /// <summary>Covers the last digits of divisions, which the rules forgive.</summary>
    public const decimal Forgiven = 1.000000001m;

    /// <summary>What each of them gives.</summary>
    public OutletRating Rating { get; } = rating;

    /// <summary>How many one supply has.</summary>
    public int Count { get; } = count;

    /// <summary>The most that one of them gives at any setting, in amps; null where nothing tells a setting's limit.</summary>
    public decimal? MostAmps { get; } = rating.Modes.Any(static mode => Most(mode) is null) ? null : rating.Modes.Max(static mode => Most(mode));

    /// <summary>What it bears for a moment, in amps; null where nothing is stated.</summary>
    public decimal? Surge => Rating.Outlet.Surge?.Current.Value;

    /// <summary>The kinds of outlet that a supply has.</summary>
    /// <param name="ratings">The ratings of its outlets.</param>
    public static IEnumerable<OutletKind> Of(IEnumerable<OutletRating> ratings) => ratings
        .GroupBy(static rating => rating.Outlet with { Id = "" })
        .Select(static alike => new OutletKind(alike.First(), alike.Count()));

    /// <summary>How a load may be fed from such an outlet, alone or with others; null when it may not.</summary>
    public KindFit? FitOf(LoadRating load, LeadStock leads)
    {
        if (Rating.Form.Value != load.Form.Value && !load.TakesEitherForm)
            return null;
        if (!leads.HasOtherPlugs && PlugFitting.Judge(Rating.Plug.Value, load.Plug.Value) == PlugFit.None)
            return null;
        var reverses = Rating.Form.Value == SupplyForm.Direct && Rating.Polarity.Value != load.Polarity.Value;
        if (reverses && leads.Reversing == 0)
            return null;

        decimal? least = null;
        foreach (var mode in Rating.Modes)
        {
            if (mode.Volts is not { } range || VoltageSpan.Of(load).Overlap(range.Low.Value, range.High.Value) is not { } span)
                continue;
            if (Bears(mode, new Volts(span.Low), load) || Bears(mode, new Volts(span.High), load))
                least = Math.Min(least ?? span.Low, span.Low);
        }

        return least is { } volts ? new KindFit(reverses, volts) : null;
    }

    private bool Bears(OutletMode mode, Volts volts, LoadRating load)
    {
        if (mode.LimitAt(volts) is not { } limit)
            return true;
        var draw = LoadDraw.Least(load, volts);
        var most = limit.Value.Value * Forgiven;
        return draw.Run <= most && draw.Start <= Math.Max(most, (Surge ?? 0) * Forgiven);
    }

    private static decimal? Most(OutletMode mode) =>
        mode.Volts is { } volts ? mode.LimitAt(volts.Low)?.Value.Value : mode.Limit?.Value.Value;
}
