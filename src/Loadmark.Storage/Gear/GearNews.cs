using System.Collections.Immutable;

namespace Loadmark.Storage.Gear;

/// <summary>What has changed in the library.</summary>
/// <param name="Stamp">The library's count of changes now; to be handed back when asking again.</param>
/// <param name="Gear">The pieces that changed, as they are now, removed ones too; in no particular order.</param>
/// <param name="IsAll">Whether they are all there are, and what is known beyond them is gone: a backup was put in the library's
/// place.</param>
public sealed record GearNews(long Stamp, ImmutableArray<StoredGear> Gear, bool IsAll = false);
