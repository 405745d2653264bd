using Loadmark.Circuits.Devices;
using Loadmark.Circuits.Networks;

namespace Loadmark.Circuits.Analyses;

/// <summary>
/// Looks for a proof that the loads of constant power in some part of a network cannot be fed. See docs/theory/collapse.md.
/// </summary>
internal static class ShortfallSearch
{
    /// <summary>What rounding and the conductances of devices that are off may make of a limit.</summary>
    private const double Margin = 1e-8;

    private const int Rounds = 300;

    /// <summary>The proof weighs every load against every other; of more than so many none is sought.</summary>
    private const int MostPorts = 300;

    /// <summary>A proof, or null where none is found. The unknowns of the network are left as they were.</summary>
    public static Shortfall? Find(Network network)
    {
        var kept = (double[])network.System.Unknowns.Clone();
        var powers = network.Elements.OfType<LoadElement>().Where(load => load is { IsOn: true, Law: LoadLaw.Power, Draw: > 0 }).ToList();
        foreach (var load in powers)
            load.IsOn = false;
        Array.Clear(network.System.Unknowns);
        var isOpen = new NewtonSolver(network.System).Solve(network.Point, 100) && network.System.ComputeStep();
        var parts = Parts(network);
        Shortfall? proof = null;
        foreach (var part in powers.GroupBy(load => parts.Find(Anchor(load.Device))))
        {
            if (isOpen && proof is null && Model(network, [.. part], parts) is { } model)
                proof = Single(model) ?? Weighted(model);
        }

        foreach (var load in powers)
            load.IsOn = true;
        kept.CopyTo(network.System.Unknowns, 0);
        network.System.Evaluate(network.Point);
        return proof;
    }

    /// <summary>Parts of the network that meet at ground only: none knows of another.</summary>
    private static DisjointSets Parts(Network network)
    {
        var parts = new DisjointSets();
        foreach (var device in network.Devices
            .Where(device => device is not Capacitor && device.Plus != Netlist.Ground && device.Minus != Netlist.Ground))
            parts.Join(device.Plus, device.Minus);
        return parts;
    }

    private static string Anchor(Device device) => device.Plus == Netlist.Ground ? device.Minus : device.Plus;

    /// <summary>
    /// The linear model of a part; null where it is not linear, or where an outlet might be driven backwards, which the proof
    /// does not cover.
    /// </summary>
    private static PortModel? Model(Network network, LoadElement[] powers, DisjointSets parts)
    {
        var part = parts.Find(Anchor(powers[0].Device));
        var members = network.Elements.Where(element => parts.Find(Anchor(element.Device)) == part).ToList();
        var outlets = members.OfType<OutletElement>().ToList();
        if (members.Exists(element => element is DiodeElement or ThermalElement)
            || outlets.Count > 1
            || (outlets.Count == 1
                && (members.Exists(element => element is VoltageSourceElement or CurrentSourceElement) || IsOffLine(network, outlets[0])))
            || members.OfType<LoadElement>()
                .Any(
                    load => load is { Law: LoadLaw.Current, IsOn: true, Draw: > 0 }
                        && network.System.VoltageOf(load.Pair) < load.FloorVolts))
        {
            return null;
        }

        // An outlet at its limit gives less than its EMF and resistance would: as if something drew current at its terminals.
        PairSlots[] ports =
        [
            .. powers.Select(load => load.Pair),
            .. outlets.Where(outlet => double.IsFinite(outlet.LimitAmps)).Select(outlet => outlet.Pair),
        ];
        if (ports.Length > MostPorts)
            return null;
        var ohms = new double[ports.Length, ports.Length];
        var vector = new double[network.System.Size + 1];
        for (var port = 0; port < ports.Length; port++)
        {
            Array.Clear(vector);
            vector[ports[port].Plus] += 1;
            vector[ports[port].Minus] -= 1;
            network.System.SolveInPlace(vector.AsSpan(0, network.System.Size));
            vector[^1] = 0;
            for (var other = 0; other < ports.Length; other++)
                ohms[other, port] = vector[ports[other].Plus] - vector[ports[other].Minus];
        }

        double[] watts = [.. ports.Select((_, port) => port < powers.Length ? powers[port].Draw : 0)];
        return new PortModel(
            [.. powers.Select(load => load.Device.Name)], [.. ports.Select(port => network.System.VoltageOf(port))], ohms, watts);
    }

    /// <summary>Whether an outlet is not on the straight part of its characteristic without the loads of constant power.</summary>
    private static bool IsOffLine(Network network, OutletElement outlet)
    {
        outlet.Accept(network.System, network.Point);
        return outlet.State != DeviceState.Regulating;
    }

    /// <summary>One load asks for more than E²/4R, where nothing that the others draw can raise its voltage.</summary>
    private static Shortfall? Single(PortModel model)
    {
        for (var load = 0; load < model.Loads.Length; load++)
        {
            var limit = model.Open[load] * model.Open[load] / (4 * model.Ohms[load, load]);
            var isLowered = Enumerable.Range(0, model.Count).All(other => model.Ohms[load, other] >= 0);
            if (isLowered && model.Watts[load] > limit * (1 + Margin))
                return new Shortfall([model.Loads[load]], [1], model.Watts[load], limit);
        }

        return null;
    }

    /// <summary>
    /// Weights for which the weighted demand is over its limit, sought downhill: limit minus demand is convex in the weights.
    /// </summary>
    private static Shortfall? Weighted(PortModel model)
    {
        // Equal weights to begin with: the resistances between ports are symmetric, so there is a maximum.
        var weights = new double[model.Count];
        Array.Fill(weights, 1);
        var (stride, best) = (0.5, Gap(model, weights));
        for (var round = 0; round < Rounds && best is { } found && stride > 1e-6; round++)
        {
            var demand = Demand(model, weights);
            if (found.Gap < -Margin * demand)
                return Proof(model, weights, demand, found.Gap + demand);

            var trial = new double[weights.Length];
            for (var port = 0; port < weights.Length; port++)
            {
                var mismatch = model.Power(port, found.Amps) - model.Watts[port];
                trial[port] = weights[port] * Math.Exp(-stride * Math.Clamp(mismatch / Math.Max(demand / weights.Length, 1e-12), -1, 1));
            }

            var next = Gap(model, trial);
            if (next is { } better && better.Gap / Demand(model, trial) < found.Gap / demand)
                (weights, best, stride) = (trial, next, Math.Min(1, stride * 1.3));
            else
                stride /= 2;
        }

        return null;
    }

    private static (double Gap, double[] Amps)? Gap(PortModel model, double[] weights) =>
        model.Limit(weights) is { } limit ? (limit.Watts - Demand(model, weights), limit.Amps) : null;

    private static double Demand(PortModel model, double[] weights) => weights.Zip(model.Watts, (weight, watts) => weight * watts).Sum();

    private static Shortfall Proof(PortModel model, double[] weights, double demand, double limit)
    {
        var largest = weights.Take(model.Loads.Length).Max();
        return new Shortfall(
            model.Loads, [.. weights.Take(model.Loads.Length).Select(weight => weight / largest)], demand / largest, limit / largest);
    }
}
