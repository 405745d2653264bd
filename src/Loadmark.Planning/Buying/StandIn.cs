using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Buying;

/// <summary>
/// A supply as what may stand in for others, whatever is fed: for each outlet of the other it has one of its own that gives at least as
/// much at the same voltages over the same plug, and its total is no tighter.
/// </summary>
internal sealed class StandIn
{
    /// <summary>Comparing outlets one by one is not worth it beyond this many.</summary>
    private const int MostOutlets = 64;

    private readonly Supply _supply;
    private readonly SupplyRating _rating;
    private readonly OutletRating[] _outlets;
    private readonly bool _mustBeFed;

    /// <summary>Rates a supply once, to be compared with many.</summary>
    /// <param name="supply">The supply.</param>
    public StandIn(Supply supply)
    {
        (_supply, _rating, _mustBeFed) = (supply, SupplyRating.Of(supply), SupplyInput.MustBeFed(supply));
        _outlets = supply.Outlets.Count > MostOutlets ? [] : [.. supply.Outlets.Items.Select(outlet => OutletRating.Of(supply, outlet))];
    }

    /// <summary>Whether it can stand in for another. What is not seen to hold is taken not to.</summary>
    /// <param name="other">The other.</param>
    public bool StandsInFor(StandIn other)
    {
        // What must be fed itself stands in only for its like.
        if (_mustBeFed && !(other._mustBeFed && Equals(_supply.Label, other._supply.Label)))
            return false;
        if (_supply.Outlets.Count < other._supply.Outlets.Count || _supply.Outlets.Count > MostOutlets)
            return false;
        return Restlessness(_rating) <= Restlessness(other._rating)
            && GivesAsMuchInAll(_rating.Total, other._rating.Total, other._outlets) && Match(_outlets, other._outlets);
    }

    /// <summary>How far a supply may leave its printed voltage: not at all, as far as is known; perhaps; for certain.</summary>
    private static int Restlessness(SupplyRating supply) => supply.Regulated == false ? 2 : supply.MayBeUnregulated ? 1 : 0;

    /// <summary>Whether one figure is the same as another, and known if the other is.</summary>
    private static bool IsNoLess<T>(Figure<T> mine, Figure<T> other)
        where T : struct =>
        EqualityComparer<T>.Default.Equals(mine.Value, other.Value) && (mine.IsKnown || !other.IsKnown);

    private static bool GivesAsMuchInAll(SupplyTotal? mine, SupplyTotal? theirs, OutletRating[] others)
    {
        if (mine is null)
            return true;
        decimal amps = 0;
        decimal watts = 0;
        foreach (var outlet in others)
        {
            if (outlet.Modes.Any(static mode => mode is not { Limit: not null, Volts: not null, Power: null }))
                return mine == theirs;
            amps += outlet.Modes.Max(static mode => mode.Limit!.Value.Value.Value);
            watts += outlet.Modes.Max(static mode => mode.Limit!.Value.Value.Value * mode.Volts!.Value.High.Value);
        }

        amps = Math.Min(amps, theirs?.Amps?.Value ?? decimal.MaxValue);
        watts = Math.Min(watts, theirs?.Watts?.Value ?? decimal.MaxValue);
        return !(mine.Amps?.Value < amps) && !(mine.Watts?.Value < watts);
    }

    /// <summary>Whether each of the other's outlets can be given one of its own that is at least as good.</summary>
    private static bool Match(OutletRating[] own, OutletRating[] others)
    {
        var assignment = new Assignment(
            own.Select(static _ => 1),
            others.Length,
            (place, outlet) => Covers(own[place], others[outlet], own.Length == 1, others.Length == 1));
        return Enumerable.Range(0, others.Length).All(outlet => assignment.TryGive(outlet, 1));
    }

    private static bool Covers(OutletRating mine, OutletRating other, bool iAmAlone, bool otherIsAlone)
    {
        var hasOwnReturn = mine.Isolated.Value || iAmAlone;
        return (hasOwnReturn || !(other.Isolated.Value || otherIsAlone))
            && IsNoLess(mine.Form, other.Form) && IsNoLess(mine.Polarity, other.Polarity) && IsNoLess(mine.Plug, other.Plug)
            && other.Modes.All(theirs => mine.Modes.Any(ours => Covers(ours, theirs)));
    }

    private static bool Covers(OutletMode ours, OutletMode theirs)
    {
        if (ours.Volts is not { } volts || ours.Volts != theirs.Volts)
            return false;
        if (ours.Limit is null || theirs.Limit is null)
            return ours == theirs;
        return ours.LimitAt(volts.Low)!.Value.Value >= theirs.LimitAt(volts.Low)!.Value.Value
            && ours.LimitAt(volts.High)!.Value.Value >= theirs.LimitAt(volts.High)!.Value.Value
            && (volts.IsSingle || (ours.Power is null && theirs.Power is null) || ours == theirs);
    }
}
