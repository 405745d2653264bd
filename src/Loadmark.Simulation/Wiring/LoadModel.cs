using Loadmark.Circuits.Devices;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Simulation.Figures;

namespace Loadmark.Simulation.Wiring;

/// <summary>The figures of a load in the circuit, with defaults where the rig gives none.</summary>
internal static class LoadModel
{
    private const double LeastVolts = 1e-3;
    private const string Practice = "common practice, no source";

    /// <summary>The branch of a load that draws; its device and slots are to be filled in.</summary>
    public static LoadBranch Branch(WiredLoad load, WiredFeed feed, Volts fed, AssumptionList assumptions)
    {
        var rating = load.Rating;
        var defaults = LoadBranch.DefaultsOf(rating);
        var printed = rating.Voltage.Value;
        var nominal = Math.Max(LeastVolts, (double)Quantity<Volt>.Min(Quantity<Volt>.Max(fed, printed.Low), printed.High).Value);
        var lowest = (double)printed.Low.Value;
        if (rating.Voltage.IsAssumed)
            assumptions.Add("printed voltage", rating.Voltage.Value.ToString(), load.Id, Practice);
        if (rating.Running is { IsAssumed: true } running)
            assumptions.Add(
                "draw",
                running.Value.ToString(),
                load.Id,
                rating.StandIn is null ? "the label can be read in several ways: the highest" : Practice);

        var (starts, stops) = Thresholds(rating, defaults, lowest, load.Id, assumptions);
        var hasStart = rating.StartIsGiven && rating.Starting?.Value > rating.Running?.Value;
        var isHeater = rating.DrawLaw == DrawLaw.Resistance && rating.Load.Kind?.Class == LoadClass.Valve;
        if (!isHeater)
            assumptions.Take(defaults.Delay, load.Id);
        return new LoadBranch
        {
            Load = load,
            Feed = feed,
            Law = rating.DrawLaw switch { DrawLaw.Power => LoadLaw.Power, DrawLaw.Resistance => LoadLaw.Resistance, _ => LoadLaw.Current },
            IsHeater = isHeater,
            NominalVolts = nominal,
            RunAmps = (double)rating.Running!.Value.Value.Value,
            StartAmps = isHeater && !hasStart
                ? (double)rating.Running.Value.Value.Value / assumptions.Take(CircuitDefaults.HeaterColdShare, load.Id)
                : (double)rating.Starting!.Value.Value.Value,
            StartSeconds = !hasStart || isHeater
                ? 0
                : rating.StartDuration is { } lasts ? (double)lasts.Value : assumptions.Take(CircuitDefaults.StartSeconds, load.Id),
            StartsAbove = starts,
            StopsBelow = stops,
            LowestPrintedVolts = lowest,
        };
    }

    /// <summary>The devices at the load's jack: what draws, and its input capacitor.</summary>
    public static IEnumerable<Device> Devices(LoadBranch branch, Terminals jack, AssumptionList assumptions)
    {
        var (name, rating) = (NameOf(branch.Load), branch.Load.Rating);
        var defaults = LoadBranch.DefaultsOf(rating);
        yield return branch.IsHeater
            ? Heater(branch, name, jack, assumptions)
            : new LoadDevice(name, jack.Plus, jack.Minus, branch.Law, branch.DrawOf(branch.RunAmps))
            {
                StartsAbove = branch.StartsAbove,
                StopsBelow = branch.StopsBelow,
                DelaySeconds = defaults.DelaySeconds,
                BootDraw = branch.StartSeconds > 0 ? branch.DrawOf(branch.StartAmps) : null,
                BootSeconds = branch.StartSeconds,
            };

        if (rating.Load.InputCapacitance is null)
            assumptions.Take(defaults.Input, branch.Id);
        var farads = FaradsOf(rating);
        if (farads > 0)
            yield return new Capacitor(
                $"input of {branch.Id}", jack.Plus, jack.Minus, farads, assumptions.Take(CircuitDefaults.InputSeriesOhms, branch.Id));
    }

    /// <summary>The capacitance at the load's input, F, 0 or more: as stated, else as its class has it.</summary>
    public static double FaradsOf(LoadRating rating) =>
        rating.Load.InputCapacitance is { } stated ? (double)stated.Value : LoadBranch.DefaultsOf(rating).InputFarads;

    /// <summary>The name of the device that draws.</summary>
    public static string NameOf(WiredLoad load) => $"load {load.Id}";

    private static Heater Heater(LoadBranch branch, string name, Terminals jack, AssumptionList assumptions) => new(
        name,
        jack.Plus,
        jack.Minus,
        branch.DrawOf(branch.StartAmps),
        branch.DrawOf(branch.RunAmps),
        branch.NominalVolts,
        assumptions.Take(CircuitDefaults.HeaterSeconds, branch.Id));

    /// <summary>As stated; what is not is the class's, and never so that it would start below where it stops.</summary>
    private static (double Starts, double Stops) Thresholds(
        LoadRating rating, LoadClassDefaults defaults, double lowest, string id, AssumptionList assumptions)
    {
        var starts = rating.Load.StartsBelow is { } from ? (double)from.Value : lowest * assumptions.Take(defaults.Starts, id);
        var stops = rating.Load.StopsBelow is { } until ? (double)until.Value : lowest * assumptions.Take(defaults.Stops, id);
        return rating.Load.StartsBelow is null ? (Math.Max(starts, stops), stops) : (starts, Math.Min(starts, stops));
    }
}
