using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Trials;

/// <summary>A change to a rig that was tried: the rig as it would be, and what the rules say of that.</summary>
/// <param name="What">The change as an instruction, such as "Set brick/5 to 9 V".</param>
/// <param name="Rig">The rig after the change.</param>
/// <param name="Check">What the rules say of it.</param>
public sealed record Trial(string What, Rig Rig, CheckResult Check);
