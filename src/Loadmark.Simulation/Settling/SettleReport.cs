using Loadmark.Circuits.Analyses;
using Loadmark.Core.Checks;
using Loadmark.Core.Fits;
using Loadmark.Core.Ratings;
using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Settling;

/// <summary>Writes a steady state down as a result.</summary>
internal static class SettleReport
{
    /// <summary>What was found, with quantities.</summary>
    public static SettleResult Of(Settlement settlement)
    {
        var circuit = settlement.Circuit;
        var meters = TotalMeter.Of(circuit);
        foreach (var meter in meters)
            meter.Read(outlet => (circuit.OutletVolts(outlet), circuit.OutletAmps(outlet)));

        var places = new int?[circuit.Rig.Outlets.Count];
        for (var place = 0; place < circuit.Outlets.Length; place++)
            places[circuit.Outlets[place].Outlet.Index] = place;
        var loads = new List<SettledLoad>();
        for (var load = 0; load < circuit.Loads.Length; load++)
            loads.Add(Load(settlement, load));
        return new SettleResult
        {
            Rig = circuit.Rig.Rig.Name,
            IsFound = settlement.IsFound,
            Loads = [.. loads],
            Outlets = [.. circuit.Rig.Outlets.Items.Select(outlet => Outlet(settlement, outlet, places[outlet.Index]))],
            Totals = settlement.IsFound ? [.. meters.Select(static meter => meter.Result())] : [],
            Assumptions = [.. circuit.Assumptions.Where(static assumption => !assumption.IsForStartUp)],
            Untold = [.. circuit.Untold],
        };
    }

    private static SettledLoad Load(Settlement settlement, int place)
    {
        var branch = settlement.Circuit.Loads[place];
        var lowest = branch.Load.Rating.Voltage.Value.Low;
        if (!settlement.LoadIsFound(place))
        {
            return new SettledLoad(branch.Id, null, null, LoadState.Off)
            {
                LowestPrinted = lowest,
                Because = branch.Because ?? "No steady state was found.",
            };
        }

        var state = settlement.LoadState(place);
        var drawIsUnknown = branch.Device is null && branch.Load.Rating.Running is null && branch.Feed is not null;
        return new SettledLoad(
            branch.Id,
            SiConversion.Volts(settlement.LoadVolts(place)),
            drawIsUnknown ? null : SiConversion.Amps(state == LoadState.Off ? 0 : settlement.LoadAmps(place)),
            state)
        {
            LowestPrinted = lowest,
            Cycles = settlement.LoadCycles(place),
            Because = branch.Because ?? Because(settlement, branch, place, state),
        };
    }

    private static string? Because(Settlement settlement, LoadBranch branch, int place, LoadState state)
    {
        if (settlement.ReasonOf(place) is { } reason)
            return Because(branch, reason.Status == OperatingPointStatus.Unsteady ? Proof(settlement.Circuit, branch) ?? reason : reason);
        if (settlement.LoadCycles(place))
            return $"{branch.Feed!.OutletNames} is at its limit and switches off and on over and over.";
        return state == LoadState.Off
            ? $"It drops out below {SiConversion.Volts(branch.StopsBelow)} and does not start below "
                + $"{SiConversion.Volts(branch.StartsAbove)}."
            : null;
    }

    /// <summary>The proof that a load cannot be fed, sought with all loads on; null where there is none.</summary>
    private static OperatingPointResult? Proof(RigCircuit circuit, LoadBranch branch)
    {
        var alone = circuit.Copy().Parts[branch.Device!.Value.Part].Network;
        var result = new OperatingPoint(alone, new OperatingPointOptions { DropsOut = false }).Solve();
        return result.Proof is null ? null : result;
    }

    private static string Because(LoadBranch branch, in OperatingPointResult reason) => reason switch
    {
        { Proof: { Loads.Length: 1 } proof } => $"{branch.Id} asks for {SiConversion.Of<Watt>(proof.DemandWatts)}; "
            + $"no more than {SiConversion.Of<Watt>(proof.LimitWatts)} can reach it.",
        { Proof: { } proof } =>
            $"{Phrases.List([.. proof.Loads.Select(static name => name["load ".Length..])])} ask together for more than can reach them.",
        { Status: OperatingPointStatus.Unsteady } => $"{branch.Id} drops out when it draws and starts again when it does not.",
        _ => $"{branch.Id} finds no voltage at which it gets what it asks for.",
    };

    private static SettledOutlet Outlet(Settlement settlement, WiredOutlet outlet, int? at)
    {
        var limit = outlet.Limit?.Value;
        if (at is not { } place)
        {
            var isFree = outlet.Feeds.Count == 0;
            var open = outlet.Volts is { } nominal ? OpenVoltage.Of(outlet, nominal)?.Value ?? nominal : (Volts?)null;
            return new SettledOutlet(
                outlet.Rating.Reference, open, isFree ? default(Amps) : null, OutletState.Regulating)
            { IsFree = isFree, Limit = limit };
        }

        if (!settlement.OutletIsFound(place))
            return new SettledOutlet(outlet.Rating.Reference, null, null, OutletState.Off) { Limit = limit };
        return new SettledOutlet(
            outlet.Rating.Reference,
            SiConversion.Volts(settlement.Circuit.OutletVolts(place)),
            SiConversion.Amps(settlement.OutletAmps(place)),
            settlement.OutletState(place))
        {
            Cycles = settlement.OutletCycles(place),
            Limit = limit,
        };
    }
}
