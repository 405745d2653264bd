using Loadmark.Storage.Gear;

namespace Loadmark.Answers;

/// <summary>A change of a piece of gear.</summary>
/// <param name="Change">The change.</param>
/// <param name="Tag">The piece's tag.</param>
internal sealed record TaggedChange(GearChange Change, string Tag);
