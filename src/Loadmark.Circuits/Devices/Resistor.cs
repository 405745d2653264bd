namespace Loadmark.Circuits.Devices;

/// <summary>A linear resistance: i = v / R.</summary>
/// <param name="Name">The device's name, unique in the netlist.</param>
/// <param name="Plus">Node of one end.</param>
/// <param name="Minus">Node of the other end.</param>
/// <param name="Ohms">Resistance, over 0 Ω.</param>
public sealed record Resistor(string Name, string Plus, string Minus, double Ohms) : Device(Name, Plus, Minus);
