namespace Loadmark.Circuits.Devices;

/// <summary>A heater whose resistance rises as it warms: R = cold + (hot − cold)·x, τ·dx/dt = p / P − x, P = rated² / hot.</summary>
/// <remarks>At its rated voltage it settles at its hot resistance. See docs/theory/heater.md.</remarks>
/// <param name="Name">The device's name, unique in the netlist.</param>
/// <param name="Plus">Node of its positive terminal.</param>
/// <param name="Minus">Node of its negative terminal.</param>
/// <param name="ColdOhms">Resistance when cold, over 0 Ω.</param>
/// <param name="HotOhms">Resistance at the rated voltage, at least the cold one.</param>
/// <param name="RatedVolts">Rated voltage, over 0 V.</param>
/// <param name="ThermalSeconds">Thermal time constant τ, over 0 s.</param>
public sealed record Heater(
    string Name, string Plus, string Minus, double ColdOhms, double HotOhms, double RatedVolts,
    double ThermalSeconds) : Device(Name, Plus, Minus);
