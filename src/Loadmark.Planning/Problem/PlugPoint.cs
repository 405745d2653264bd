using Loadmark.Core.Fits;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;

namespace Loadmark.Planning.Problem;

/// <summary>Tells what would stand at the plug of outlets that are not wired yet; of wired ones <see cref="FeedPoint"/> tells the same itself.</summary>
internal static class PlugPoint
{
    /// <summary>What stands at the plug of an outlet, or of several alike side by side.</summary>
    /// <param name="outlet">The outlet.</param>
    /// <param name="setting">How it is set.</param>
    public static FeedPoint Of(OutletRating outlet, Setting setting) => Of(setting.Volts, setting.Open, setting.MayOpen, outlet);

    /// <summary>What stands at the plug of two outlets in series.</summary>
    /// <param name="outlet">The first, whose polarity and plug count.</param>
    /// <param name="first">How it is set, its voltage known.</param>
    /// <param name="second">How the other is set, its voltage known.</param>
    public static FeedPoint InSeries(OutletRating outlet, Setting first, Setting second) =>
        Of(first.Volts + second.Volts, Sum(static one => one.Open, first, second), Sum(static one => one.MayOpen, first, second), outlet);

    /// <summary>
    /// Whether an outlet may be joined with another: its voltage, its kind of current and its polarity are known, and it is d.c. What is not
    /// known may short the other.
    /// </summary>
    /// <param name="point">What stands at its plug.</param>
    public static bool IsForJoining(FeedPoint point) => point is
    {
        Volts: not null,
        Form: { IsKnown: true, Value: SupplyForm.Direct },
        Polarity.IsKnown: true,
    };

    private static FeedPoint Of(Volts? volts, Figure<Volts>? open, Figure<Volts>? mayOpen, OutletRating outlet)
    {
        var isKnown = open is { IsAssumed: false };
        return new FeedPoint(volts, isKnown ? open?.Value : null, isKnown ? null : mayOpen?.Value, outlet.Form, outlet.Polarity, outlet.Plug);
    }

    private static Figure<Volts>? Sum(Func<Setting, Figure<Volts>?> which, Setting first, Setting second)
    {
        if (which(first) is null && which(second) is null)
            return null;
        var isAssumed = which(first) is { IsAssumed: true } || which(second) is { IsAssumed: true };
        return new Figure<Volts>(
            (which(first)?.Value ?? first.Basis) + (which(second)?.Value ?? second.Basis), isAssumed ? Origin.Assumed : Origin.Derived);
    }
}
