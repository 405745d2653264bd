using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;

namespace Loadmark.Core.Fits;

/// <summary>What stands at the plug of a lead: all that a load is judged by before it is plugged in.</summary>
/// <param name="Volts">The nominal voltage; null when not known.</param>
/// <param name="Unloaded">The voltage with nothing drawn where that is known and another; null otherwise.</param>
/// <param name="MayStandAt">The voltage at which it may stand with nothing drawn, by practice only; null where nothing calls for it.</param>
/// <param name="Form">Direct or alternating.</param>
/// <param name="Polarity">The polarity at the plug, meaningless where alternating.</param>
/// <param name="Plug">The plug.</param>
public sealed record FeedPoint(
    Volts? Volts, Volts? Unloaded, Volts? MayStandAt, Figure<SupplyForm> Form, Figure<Polarity> Polarity, Figure<Plug> Plug)
{
    /// <summary>The nominal voltage, or that with nothing drawn where it is known and higher; null when neither is known.</summary>
    public Volts? Highest => Volts is { } nominal && Unloaded is { } open ? Quantity<Volt>.Max(nominal, open) : Volts ?? Unloaded;

    /// <summary>What stands at the plugs of a feed.</summary>
    /// <param name="feed">The feed, with its outlets set and its lead.</param>
    public static FeedPoint Of(WiredFeed feed)
    {
        var known = OpenVoltage.Of(feed);
        var possible = known is { IsAssumed: false } ? null : OpenVoltage.Possible(feed);
        return new FeedPoint(
            feed.Volts,
            known is { IsAssumed: false } unloaded ? unloaded.Value : null,
            possible?.Value,
            feed.Form,
            PolarityOf(feed),
            feed.Plug);
    }

    /// <summary>What would stand at the contacts of an outlet that is not wired yet.</summary>
    /// <param name="outlet">The outlet.</param>
    /// <param name="supply">Its supply.</param>
    /// <param name="volts">The voltage it would be set to.</param>
    public static FeedPoint At(OutletRating outlet, SupplyRating supply, Volts volts)
    {
        var limit = outlet.ModeAt(volts)?.LimitAt(volts);
        var known = OpenVoltage.Of(outlet, supply, limit, volts, countsPossible: false);
        var possible = known is { IsAssumed: false } ? null : OpenVoltage.Of(outlet, supply, limit, volts, countsPossible: true);
        return new FeedPoint(
            volts, known is { IsAssumed: false } unloaded ? unloaded.Value : null, possible?.Value, outlet.Form, outlet.Polarity, outlet.Plug);
    }

    /// <summary>The same at the end of a lead.</summary>
    /// <param name="reverses">Whether the lead exchanges centre and sleeve.</param>
    /// <param name="plug">The plug that the lead ends in; null for the outlet's.</param>
    public FeedPoint Over(bool reverses, Plug? plug) => !reverses && plug is null ? this : this with
    {
        Polarity = reverses ? Polarity with { Value = Opposite(Polarity.Value) } : Polarity,
        Plug = plug is { } own ? new Figure<Plug>(own, Origin.Stated) : Plug,
    };

    /// <summary>The polarity at the plugs of a feed; not known where that of any of its outlets is not.</summary>
    private static Figure<Polarity> PolarityOf(WiredFeed feed)
    {
        var polarity = feed.Outlets[0].Rating.Polarity;
        foreach (var outlet in feed.Outlets)
        {
            if (!outlet.Rating.Polarity.IsKnown)
                polarity = outlet.Rating.Polarity;
        }

        return polarity with { Value = feed.PolarityAtPlug };
    }

    private static Polarity Opposite(Polarity polarity) =>
        polarity == Gear.Polarity.CentreNegative ? Gear.Polarity.CentrePositive : Gear.Polarity.CentreNegative;
}
