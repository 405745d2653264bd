namespace Loadmark.Storage.Rigs;

/// <summary>What became of a change, and the rig after it.</summary>
/// <param name="State">Whether it was done.</param>
/// <param name="Rig">
/// The rig as it is kept now: after the change, or in a conflict as the other one left it. Of a removed rig, what restoring it would
/// bring back. Null when there is no such rig.
/// </param>
public sealed record SaveOutcome(SaveState State, StoredRig? Rig);
