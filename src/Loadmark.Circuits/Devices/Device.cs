namespace Loadmark.Circuits.Devices;

/// <summary>A device of a netlist: data only. What it does in an analysis is said elsewhere.</summary>
/// <param name="Name">The device's name, unique in the netlist; case matters.</param>
/// <param name="Plus">Node of its positive terminal.</param>
/// <param name="Minus">Node of its negative terminal.</param>
public abstract record Device(string Name, string Plus, string Minus);
