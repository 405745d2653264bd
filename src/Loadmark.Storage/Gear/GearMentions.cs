using Loadmark.Core.Gear;

namespace Loadmark.Storage.Gear;

/// <summary>Names the gear that a rig's text has. The store does not read rigs itself.</summary>
/// <param name="text">The text of a rig file.</param>
/// <returns>The gear, in any order; null when the text cannot be read, and then what was found before stays.</returns>
public delegate IReadOnlyCollection<GearMention>? GearMentions(string text);
