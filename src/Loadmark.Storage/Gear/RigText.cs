using Loadmark.Storage.Rigs;

namespace Loadmark.Storage.Gear;

/// <summary>A rig that has a piece of gear.</summary>
/// <param name="Rig">Which rig, as it is listed.</param>
/// <param name="Text">The text of its file.</param>
public sealed record RigText(RigSummary Rig, string Text);
