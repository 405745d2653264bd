namespace Loadmark.Simulation.Wiring;

/// <summary>Where a device is.</summary>
/// <param name="Part">The part of the circuit, by its place in <see cref="RigCircuit.Parts"/>.</param>
/// <param name="Number">The device's number in the network of that part.</param>
public readonly record struct DevicePlace(int Part, int Number);
