namespace Loadmark.Planning.Cutting;

/// <summary>A reel from which nothing more is cut: the end of a way through the graph.</summary>
/// <param name="Filled">What is taken from the reel.</param>
/// <param name="Stock">Of which stock it is, by its place.</param>
internal readonly record struct GraphEnd(int Filled, int Stock);
