using Loadmark.Circuits.Devices;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Checks;

/// <summary>
/// Whether an outlet gives so much more than its loads ask for that nothing on it can sag or drop out. Then its circuit need not
/// be solved to be judged. What is not ample may still be fine: it is solved. See docs/theory/rig-circuit.md.
/// </summary>
internal static class SurplusBound
{
    private const double LowShare = (double)(1 - VoltageBand.Allowed);

    /// <summary>Whether every load surely settles at a voltage that it is made for.</summary>
    /// <param name="laid">The outlet with its loads.</param>
    public static bool Settles(LaidOutlet laid)
    {
        if (laid.IsJoined || laid.Fuse is not null)
            return false;

        // No load of constant power draws more than at the least voltage that is asked for.
        var (least, emf, limit) = (0.0, laid.Figures.Volts, laid.Figures.LimitAmps);
        foreach (var load in laid.Loads)
            least = Math.Max(least, Math.Max(load.StartsAbove, LowShare * load.LowestPrintedVolts));
        var amps = 0.0;
        foreach (var load in laid.Loads)
            amps += Most(load, load.RunAmps, least, emf);
        return amps < LimitOf(laid, limit) && emf - (OhmsOf(laid) * amps) >= least;
    }

    /// <summary>Whether every load surely starts and never drops out, given that <see cref="Settles"/>.</summary>
    /// <param name="laid">The outlet with its loads.</param>
    public static bool Starts(LaidOutlet laid)
    {
        if (laid.IsJoined || laid.Fuse is not null)
            return false;

        // A heater alone: its resistance only rises, its voltage with it, and at a limit over its hot current it warms to the end.
        if (laid is { Figures.Overload: null or OverloadWay.CurrentLimit, Loads: [{ IsHeater: true }] })
            return true;
        return IsChargedBeforeAnyStart(laid) || (laid.Figures.Overload is null or OverloadWay.CurrentLimit && OnlyRises(laid));
    }

    /// <summary>
    /// Whether the capacitors charge without the limit being met, so that all voltages are up before the first load starts, and no load
    /// ever sees less than the highest threshold after that.
    /// </summary>
    private static bool IsChargedBeforeAnyStart(LaidOutlet laid)
    {
        var (emf, limit) = (laid.Figures.Volts, LimitOf(laid, laid.Figures.LimitAmps));
        var (least, inrush) = (0.0, InrushOf(laid));
        foreach (var load in laid.Loads)
        {
            if (load.IsHeater || LoadBranch.DefaultsOf(load.Load.Rating).DelaySeconds < CircuitDefaults.SoftStartSeconds.Value)
                return false;
            least = Math.Max(least, load.StartsAbove);
        }

        var amps = inrush;
        foreach (var load in laid.Loads)
            amps += Most(load, Greater(load), least, emf);
        if (emf - (OhmsOf(laid) * amps) < least)
            return false;
        if (laid.Figures.Overload != OverloadWay.Foldback)
            return amps < limit;

        // What foldback gives grows with its voltage, from its short-circuit current to its limit.
        var (atRest, knee) = (limit * CircuitDefaults.FoldbackShare.Value, emf - (laid.Figures.SourceOhms * limit));
        return knee > 0 && inrush < atRest && amps < atRest + ((limit - atRest) * Math.Min(1, least / knee));
    }

    /// <summary>
    /// Whether, from the first start on, the outlet always has more to give than is drawn, however slowly its limit lets the voltages rise.
    /// </summary>
    private static bool OnlyRises(LaidOutlet laid)
    {
        var (emf, limit) = (laid.Figures.Volts, laid.Figures.LimitAmps);
        var (first, last) = (double.PositiveInfinity, 0.0);
        var peak = 0.0;
        foreach (var load in laid.Loads)
        {
            (first, last) = (Math.Min(first, load.StartsAbove), Math.Max(last, load.StartsAbove));
            peak += Most(load, Greater(load), load.StopsBelow, emf);
        }

        // What the voltages at any two places differ by at most, as no conductor carries more than the outlet gives.
        var given = laid.Figures.Overload is null ? double.PositiveInfinity : Math.Max(limit, SurgeOf(laid));
        var spread = OhmsOf(laid) * Math.Min(given, peak + InrushOf(laid));
        var amps = 0.0;
        foreach (var load in laid.Loads)
        {
            // When a load starts all others are within the spread, and from there on they rise if the outlet has more to give.
            if (load.StartsAbove - (2 * spread) < load.StopsBelow)
                return false;
            amps += Most(load, Greater(load), first - (2 * spread), emf);
        }

        return emf - spread >= last && amps < LimitOf(laid, limit);
    }

    /// <summary>What charges the capacitors while the outlet's voltage rises at its own rate, A.</summary>
    private static double InrushOf(LaidOutlet laid)
    {
        var farads = 0.0;
        foreach (var load in laid.Loads)
            farads += LoadModel.FaradsOf(load.Load.Rating);
        return farads * laid.Figures.Volts / CircuitDefaults.SoftStartSeconds.Value;
    }

    /// <summary>The most that a load draws from some voltage up to the outlet's own, A.</summary>
    private static double Most(LoadBranch load, double amps, double leastVolts, double emf) => load.Law switch
    {
        LoadLaw.Current => amps,
        LoadLaw.Power => leastVolts > 0 ? amps * load.NominalVolts / leastVolts : double.PositiveInfinity,
        _ => amps * emf / load.NominalVolts,
    };

    private static double Greater(LoadBranch load) => Math.Max(load.RunAmps, load.StartAmps);

    private static double LimitOf(LaidOutlet laid, double limit) => laid.Figures.Overload is null ? double.PositiveInfinity : limit;

    private static double SurgeOf(LaidOutlet laid) => laid.Outlet.Rating.Outlet.Surge is { } surge ? (double)surge.Current.Value : 0;

    private static double OhmsOf(LaidOutlet laid) => laid.Figures.SourceOhms + laid.LeadOhms + CircuitDefaults.InputSeriesOhms.Value;
}
