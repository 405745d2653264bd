using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Tests.Oracle.Naive;

/// <summary>One way to feed something: these outlets at these settings over this one lead; which loads is open.</summary>
/// <param name="Outlets">One outlet, or the two that are joined.</param>
/// <param name="Joined">How.</param>
/// <param name="At">The setting of each.</param>
/// <param name="Lead">The listed lead; null for a plain one.</param>
/// <param name="Copy">Which of several such leads, from 0.</param>
internal sealed record NaiveFeed(WiredOutlet[] Outlets, Joint Joined, Volts[] At, Lead? Lead, int Copy)
{
    /// <summary>The feed that is pinned; null for one that is open.</summary>
    public Feed? Pinned { get; init; }

    /// <summary>The nominal voltage at the plugs.</summary>
    public Volts Volts => Joined == Joint.Series ? At[0] + At[1] : At[0];

    /// <summary>Whether two or more loads make it a special feed, and even one does.</summary>
    public bool IsSpecial => Joined != Joint.None || Lead is { Type: not LeadType.Straight };

    /// <summary>The limits in amps with their surges, one for each outlet, or one for two in parallel together; null where nothing tells.</summary>
    public IEnumerable<(decimal? Amps, decimal? Surge, decimal? SurgeSeconds)> Limits()
    {
        if (Joined == Joint.Parallel)
        {
            var surge = Outlets[0].Rating.Outlet.Surge;
            yield return (LimitOf(0) * 2, surge?.Current.Value * 2, surge?.Duration?.Value);
            yield break;
        }

        for (var place = 0; place < Outlets.Length; place++)
        {
            var surge = Outlets[place].Rating.Outlet.Surge;
            yield return (LimitOf(place), surge?.Current.Value, surge?.Duration?.Value);
        }
    }

    /// <summary>How many findings of margin a load has on it; null where a rule on voltage, polarity, form or plug refuses it.</summary>
    public int? MarginsOf(LoadRating load)
    {
        var first = Outlets[0].Rating;
        if (first.Form.Value != load.Form.Value && !load.TakesEitherForm)
            return null;

        var isReversed = Lead?.Type == LeadType.Reversing;
        var centre = first.Polarity.Value == Polarity.CentreNegative != isReversed ? Polarity.CentreNegative : Polarity.CentrePositive;
        if (first.Form.Value == SupplyForm.Direct && load.Form.Value == SupplyForm.Direct && load.Polarity.Value != centre)
            return null;

        var plug = PlugFitting.Judge(Lead?.Plug ?? first.Plug.Value, load.Plug.Value);
        var nominal = VoltageBand.Judge(Volts, load.Voltage.Value);
        var open = VoltageBand.Judge(Volts.Max(Volts, OpenVolts() ?? Volts), load.Voltage.Value);
        var unloaded = OpenVolts() is { } stands ? VoltageBand.Judge(stands, load.Voltage.Value) : nominal;
        if (plug == PlugFit.None || nominal is VoltageFit.TooLow or VoltageFit.TooHigh || unloaded == VoltageFit.TooHigh)
            return null;
        return (plug == PlugFit.Loose ? 1 : 0) + (nominal == VoltageFit.Low ? 1 : 0) + (open == VoltageFit.High ? 1 : 0);
    }

    private decimal? LimitOf(int place) => Outlets[place].Rating.ModeAt(At[place])?.LimitAt(At[place])?.Value.Value;

    /// <summary>The voltage with nothing drawn; null where it is not known to differ, or only guessed.</summary>
    private Volts? OpenVolts()
    {
        var sum = Volts.Zero;
        var differs = false;
        for (var place = 0; place < Outlets.Length; place++)
        {
            var stands = At[place];
            if (Outlets[place].Rating.Outlet.NoLoad is { } measured)
            {
                (stands, differs) = (measured, true);
            }
            else if (Outlets[place].Supply.Regulated is false)
            {
                if (Outlets[place].Rating.Outlet.SourceOhms is not { } ohms || LimitOf(place) is not { } limit)
                    return null;
                (stands, differs) = (stands + (new Amps(limit) * ohms), true);
            }

            sum = Joined == Joint.Series ? sum + stands : Volts.Max(sum, stands);
        }

        return differs ? sum : null;
    }
}
