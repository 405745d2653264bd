using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;

namespace Loadmark.Workshop.Sessions;

/// <summary>A rig as it would be, shown in the diagram until it is taken or left.</summary>
/// <param name="What">What taking it does, for the undo button: "plan the wiring".</param>
/// <param name="Rig">The rig.</param>
/// <param name="Check">What the rules say of it.</param>
public sealed record RigPreview(string What, Rig Rig, CheckResult Check);
