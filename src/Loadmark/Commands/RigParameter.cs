using Loadmark.CommandLines;

namespace Loadmark.Commands;

/// <summary>A rig, as commands take it.</summary>
internal static class RigParameter
{
    /// <summary>A rig whose wiring is looked at.</summary>
    public static ParameterSpec Wired { get; } = new(
        "RIG",
        "A rig file with its wiring, or - for one on standard input. If it has none, have it planned first: "
        + "loadmark plan RIG --write FILE.");
}
