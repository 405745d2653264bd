using Loadmark.Circuits.Networks;

namespace Loadmark.Simulation.Wiring;

/// <summary>A figure of a rig's circuit that is assumed and decides how high a charging pulse is.</summary>
/// <param name="Part">The part of the circuit that it is in.</param>
/// <param name="Slot">The figure's slot.</param>
/// <param name="Value">What was taken, F or Ω.</param>
/// <param name="IsSource">Whether it is the resistance of a source; else the capacitance of a load's input.</param>
internal readonly record struct AssumedFigure(int Part, ParameterSlot Slot, double Value, bool IsSource);
