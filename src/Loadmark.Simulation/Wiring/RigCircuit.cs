using System.Collections.Immutable;
using Loadmark.Circuits.Networks;
using Loadmark.Core.Checks;
using Loadmark.Core.Ratings;
using Loadmark.Simulation.Figures;

namespace Loadmark.Simulation.Wiring;

/// <summary>
/// The circuit of a rig as wired, compiled once. Its draws, voltages, limits and leads may be changed and it may be solved again
/// and again without compiling; changing and reading allocate nothing. One thread at a time; for more, <see cref="Copy"/>.
/// </summary>
/// <remarks>Figures here are plain doubles in SI units, for inner loops. See docs/theory/rig-circuit.md.</remarks>
public sealed class RigCircuit
{
    private readonly NodePair[] _jacks;
    private readonly NodePair[] _terminals;

    private RigCircuit(RigCircuit circuit)
    {
        (Rig, Netlist, Loads, Outlets, Leads, Assumptions, Untold, Assumed) =
            (
                circuit.Rig,
                circuit.Netlist,
                circuit.Loads,
                circuit.Outlets,
                circuit.Leads,
                circuit.Assumptions,
                circuit.Untold,
                circuit.Assumed);
        (_jacks, _terminals) = (circuit._jacks, circuit._terminals);
        Parts = [.. circuit.Parts.Select(static part => part with { Network = part.Network.Copy() })];
    }

    internal RigCircuit(
        WiredRig rig,
        Netlist netlist,
        ImmutableArray<CircuitPart> parts,
        ImmutableArray<LoadBranch> loads,
        ImmutableArray<OutletBranch> outlets,
        ImmutableArray<LeadPart> leads,
        ImmutableArray<Assumption> assumptions,
        ImmutableArray<Untold> untold,
        ImmutableArray<AssumedFigure> assumed)
    {
        (
            Rig,
            Netlist,
            Parts,
            Loads,
            Outlets,
            Leads,
            Assumptions,
            Untold,
            Assumed) = (rig, netlist, parts, loads, outlets, leads, assumptions, untold, assumed);
        _jacks = new NodePair[loads.Length];
        for (var load = 0; load < _jacks.Length; load++)
            _jacks[load] = NodePair.None;
        _terminals = new NodePair[outlets.Length];
        for (var part = 0; part < parts.Length; part++)
        {
            foreach (var load in parts[part].Loads)
                _jacks[load] = NodePair.Of(part, parts[part].Network, loads[load].Jack!.Value);
            foreach (var outlet in parts[part].Outlets)
                _terminals[outlet] = NodePair.Of(part, parts[part].Network, outlets[outlet].Terminals);
        }
    }

    /// <summary>The rig whose circuit this is.</summary>
    public WiredRig Rig { get; }

    /// <summary>The circuit as a description, with the figures of the rig.</summary>
    public Netlist Netlist { get; }

    /// <summary>
    /// The circuit made ready, in parts that have nothing to do with one another; none where nothing of the rig can be computed, as of one
    /// that is not wired.
    /// </summary>
    public ImmutableArray<CircuitPart> Parts { get; }

    /// <summary>All loads of the rig in its order, also those that are not in the circuit.</summary>
    public ImmutableArray<LoadBranch> Loads { get; }

    /// <summary>The outlets that feed something, in the order of the rig.</summary>
    public ImmutableArray<OutletBranch> Outlets { get; }

    /// <summary>The stretches of all leads, feed by feed from the supply to the last plug.</summary>
    public ImmutableArray<LeadPart> Leads { get; }

    /// <summary>What was assumed for want of figures.</summary>
    public ImmutableArray<Assumption> Assumptions { get; }

    /// <summary>What cannot be computed, and why. The rule's name is empty.</summary>
    public ImmutableArray<Untold> Untold { get; }

    /// <summary>The assumed figures that a charging pulse depends on.</summary>
    internal ImmutableArray<AssumedFigure> Assumed { get; }

    /// <summary>Builds the circuit of a rig.</summary>
    /// <param name="rig">The rig; without wiring it gives a circuit in which nothing is fed.</param>
    public static RigCircuit Of(WiredRig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return new CircuitBuilder(rig).Build();
    }

    /// <summary>The same circuit, with the figures that are in force now, for another thread.</summary>
    public RigCircuit Copy() => new(this);

    /// <summary>Changes what a load draws when it runs.</summary>
    /// <param name="load">Its place in <see cref="Loads"/>; one without a device is left alone.</param>
    /// <param name="amps">The draw at its nominal voltage, A, 0 or more.</param>
    public void SetRun(int load, double amps)
    {
        if (Loads[load] is { RunSlot: { } slot, Device: { } device } branch)
            Parts[device.Part].Network[slot] = branch.DrawOf(amps);
    }

    /// <summary>Changes what a load draws while it starts; of a heater what it draws cold.</summary>
    /// <param name="load">Its place in <see cref="Loads"/>; one without a starting draw is left alone.</param>
    /// <param name="amps">The draw at its nominal voltage, A, 0 or more.</param>
    public void SetStart(int load, double amps)
    {
        if (Loads[load] is { StartSlot: { } slot, Device: { } device } branch)
            Parts[device.Part].Network[slot] = branch.DrawOf(amps);
    }

    /// <summary>Changes the EMF of an outlet.</summary>
    /// <param name="outlet">Its place in <see cref="Outlets"/>.</param>
    /// <param name="volts">EMF, V, 0 or more.</param>
    public void SetVolts(int outlet, double volts) => NetworkOf(outlet)[Outlets[outlet].VoltsSlot] = volts;

    /// <summary>Changes the limit of an outlet; one with a fuse or without a limit does not heed it.</summary>
    /// <param name="outlet">Its place in <see cref="Outlets"/>.</param>
    /// <param name="amps">Limit, A, over 0.</param>
    public void SetLimit(int outlet, double amps) => NetworkOf(outlet)[Outlets[outlet].LimitSlot] = amps;

    /// <summary>The limit of an outlet that is in force, A.</summary>
    /// <param name="outlet">Its place in <see cref="Outlets"/>.</param>
    public double Limit(int outlet) => NetworkOf(outlet)[Outlets[outlet].LimitSlot];

    /// <summary>Changes the wire of a stretch of lead, both conductors; its contacts stay.</summary>
    /// <param name="part">Its place in <see cref="Leads"/>.</param>
    /// <param name="factor">Its resistance as a multiple of the rig's, 0 or more: the factor of its length, or one over that of its
    /// cross-section.</param>
    public void SetWire(int part, double factor)
    {
        var lead = Leads[part];
        var ohms = Math.Max(CircuitDefaults.LeastOhms, lead.ContactOhms + (lead.WireOhms * factor));
        for (var place = 0; place < lead.Slots.Length; place++)
            Parts[lead.Devices[place].Part].Network[lead.Slots[place]] = ohms;
    }

    /// <summary>Makes the charging pulses of a part of the circuit harder or milder, as far as what decides them is assumed.</summary>
    /// <param name="part">Its place in <see cref="Parts"/>.</param>
    /// <param name="factor">Assumed input capacitances as a multiple of what was taken, and what assumed source resistances are divided by;
    /// over 0.</param>
    internal void SetPulse(int part, double factor)
    {
        foreach (var figure in Assumed)
        {
            if (figure.Part == part)
                Parts[part].Network[figure.Slot] = figure.IsSource
                    ? Math.Max(CircuitDefaults.LeastSourceOhms, figure.Value / factor)
                    : figure.Value * factor;
        }
    }

    /// <summary>Puts every figure that can be changed back to the rig's.</summary>
    public void Reset()
    {
        for (var load = 0; load < Loads.Length; load++)
        {
            SetRun(load, Loads[load].RunAmps);
            SetStart(load, Loads[load].StartAmps);
        }

        for (var outlet = 0; outlet < Outlets.Length; outlet++)
        {
            SetVolts(outlet, Outlets[outlet].Volts);
            SetLimit(outlet, Outlets[outlet].LimitAmps);
        }

        for (var part = 0; part < Leads.Length; part++)
            SetWire(part, 1);
    }

    /// <summary>
    /// Voltage at a load's jack in the polarity that it wants, V, at the point solved last; NaN where it is not in the circuit.
    /// </summary>
    /// <param name="load">Its place in <see cref="Loads"/>.</param>
    public double LoadVolts(int load) => _jacks[load].Volts(Parts);

    /// <summary>What a load draws, A, without what charges its capacitor; 0 where it has no device.</summary>
    /// <param name="load">Its place in <see cref="Loads"/>.</param>
    public double LoadAmps(int load) => Loads[load].Device is { } device ? Parts[device.Part].Network.Current(device.Number) : 0;

    /// <summary>Whether a load draws: it has started and not dropped out. A heater always does.</summary>
    /// <param name="load">Its place in <see cref="Loads"/>.</param>
    public bool LoadIsOn(int load) => Loads[load].Device is { } device && StateOf(device) is not DeviceState.Off;

    /// <summary>Voltage at an outlet's contacts, V, at the point solved last.</summary>
    /// <param name="outlet">Its place in <see cref="Outlets"/>.</param>
    public double OutletVolts(int outlet) => _terminals[outlet].Volts(Parts);

    /// <summary>What an outlet gives, A, at the point solved last.</summary>
    /// <param name="outlet">Its place in <see cref="Outlets"/>.</param>
    public double OutletAmps(int outlet) => NetworkOf(outlet).Current(Outlets[outlet].Device.Number);

    /// <summary>What an outlet is doing; tripped where its fuse is.</summary>
    /// <param name="outlet">Its place in <see cref="Outlets"/>.</param>
    public DeviceState OutletState(int outlet) =>
        Outlets[outlet].Fuse is { } fuse && StateOf(fuse) == DeviceState.Tripped ? DeviceState.Tripped : StateOf(Outlets[outlet].Device);

    private Network NetworkOf(int outlet) => Parts[Outlets[outlet].Device.Part].Network;

    private DeviceState StateOf(DevicePlace device) => Parts[device.Part].Network.State(device.Number);
}
