using Loadmark.Core.Rigs;

namespace Loadmark.Sources;

/// <summary>What came of reading one rig.</summary>
/// <param name="Rig">The rig; null when it could not be read.</param>
/// <param name="Faults">What is wrong with the file, in its order; at least one when there is no rig.</param>
internal sealed record RigInput(Rig? Rig, IReadOnlyList<InputFault> Faults);
