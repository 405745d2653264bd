namespace Loadmark.Circuits.Devices;

/// <summary>A capacitance with a resistance in series: C·du/dt = i, v = u + R·i, where u is the voltage inside.</summary>
/// <param name="Name">The device's name, unique in the netlist.</param>
/// <param name="Plus">Node of its positive terminal.</param>
/// <param name="Minus">Node of its negative terminal.</param>
/// <param name="Farads">Capacitance, over 0 F.</param>
/// <param name="SeriesOhms">Equivalent series resistance, 0 Ω or more.</param>
/// <param name="InitialVolts">Voltage inside at the start of a transient that does not start from an operating point.</param>
public sealed record Capacitor(
    string Name, string Plus, string Minus, double Farads, double SeriesOhms = 0, double InitialVolts = 0) : Device(Name, Plus, Minus);
