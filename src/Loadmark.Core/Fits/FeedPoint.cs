using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;

namespace Loadmark.Core.Fits;

/// <summary>What stands at the plug of a lead: all that a load is judged by before it is plugged in.</summary>
/// <param name="Standing">The voltage at which it stands, or may stand.</param>
/// <param name="Form">Direct or alternating.</param>
/// <param name="Polarity">The polarity at the plug, meaningless where alternating.</param>
/// <param name="Plug">The plug.</param>
public sealed record FeedPoint(StandingVoltage Standing, Figure<SupplyForm> Form, Figure<Polarity> Polarity, Figure<Plug> Plug)
{
    /// <inheritdoc cref="StandingVoltage.Volts"/>
    public Volts? Volts => Standing.Volts;

    /// <inheritdoc cref="StandingVoltage.Unloaded"/>
    public Volts? Unloaded => Standing.Unloaded;

    /// <inheritdoc cref="StandingVoltage.MayStandAt"/>
    public Volts? MayStandAt => Standing.MayStandAt;

    /// <inheritdoc cref="StandingVoltage.Highest"/>
    public Volts? Highest => Standing.Highest;

    /// <summary>What stands at the plugs of a feed.</summary>
    /// <param name="feed">The feed, with its outlets set and its lead.</param>
    public static FeedPoint Of(WiredFeed feed) => new(StandingVoltage.Of(feed), feed.Form, PolarityOf(feed), feed.Plug);

    /// <summary>What would stand at the contacts of an outlet that is not wired yet.</summary>
    /// <param name="outlet">The outlet.</param>
    /// <param name="supply">Its supply.</param>
    /// <param name="volts">The voltage it would be set to.</param>
    public static FeedPoint At(OutletRating outlet, SupplyRating supply, Volts volts) =>
        At(outlet, StandingVoltage.Of(outlet, supply, outlet.ModeAt(volts)?.LimitAt(volts), volts));

    /// <summary>
    /// What would stand at the contacts of an outlet that is not wired yet, of several alike side by side, or of several in series of which
    /// it is the first: its kind of current, polarity and plug count.
    /// </summary>
    /// <param name="outlet">The outlet.</param>
    /// <param name="standing">The voltage at which they stand.</param>
    public static FeedPoint At(OutletRating outlet, StandingVoltage standing) => new(standing, outlet.Form, outlet.Polarity, outlet.Plug);

    /// <summary>
    /// Whether it may be joined with another: its voltage, its kind of current and its polarity are known, and it is d.c. What is not known
    /// may short the other.
    /// </summary>
    public bool IsForJoining => this is { Volts: not null, Form: { IsKnown: true, Value: SupplyForm.Direct }, Polarity.IsKnown: true };

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
