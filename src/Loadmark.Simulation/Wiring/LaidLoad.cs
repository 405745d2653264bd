namespace Loadmark.Simulation.Wiring;

/// <summary>A load as plugged in.</summary>
/// <param name="Branch">The load; its device and slots are still to be filled in.</param>
/// <param name="Device">What stands for it among the devices.</param>
internal sealed record LaidLoad(LoadBranch Branch, int Device);
