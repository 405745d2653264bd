using System.Collections.Immutable;

namespace Loadmark.Planning.Cutting;

/// <summary>Reels of one length.</summary>
/// <param name="Length">The wire on each, in micrometres.</param>
/// <param name="Capacity">
/// What the sizes of the pieces cut from one may come to, in micrometres: its length and one cut more, because behind the last piece none
/// is needed.
/// </param>
/// <param name="Most">How many may be opened: as many as there are, and no more than there are pieces.</param>
/// <param name="Reels">The reels, in the order in which they were given.</param>
internal sealed record StockKind(long Length, long Capacity, int Most, ImmutableArray<StockReel> Reels);
