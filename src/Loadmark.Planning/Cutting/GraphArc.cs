namespace Loadmark.Planning.Cutting;

/// <summary>A piece that is cut from a reel at a place: an arc of the graph.</summary>
/// <param name="From">What is taken from the reel before it.</param>
/// <param name="To">What is taken with it.</param>
/// <param name="Kind">The kind of the piece, by its place.</param>
internal readonly record struct GraphArc(int From, int To, int Kind);
