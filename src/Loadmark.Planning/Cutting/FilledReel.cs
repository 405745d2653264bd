using System.Collections.Immutable;

namespace Loadmark.Planning.Cutting;

/// <summary>One reel with what is cut from it.</summary>
/// <param name="Stock">Of which stock it is, by its place.</param>
/// <param name="Kinds">The kinds of the pieces, by their place; a kind stands as often as there are pieces of it.</param>
internal sealed record FilledReel(int Stock, ImmutableArray<int> Kinds);
