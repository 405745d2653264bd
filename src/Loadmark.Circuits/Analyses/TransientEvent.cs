using Loadmark.Circuits.Networks;

namespace Loadmark.Circuits.Analyses;

/// <summary>A device has changed its state.</summary>
/// <param name="Seconds">When, s.</param>
/// <param name="Device">Number of the device.</param>
/// <param name="From">The device's state before.</param>
/// <param name="To">The device's state from then on.</param>
public readonly record struct TransientEvent(double Seconds, int Device, DeviceState From, DeviceState To);
