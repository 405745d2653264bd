namespace Loadmark.Planning.Model;

/// <summary>What the search came to.</summary>
/// <param name="Values">The best solution: the variables' values by their indices.</param>
/// <param name="Gaps">For each level how far the solution may be from the best; null when nothing is proven of it.</param>
internal sealed record ModelAnswer(long[] Values, long?[] Gaps);
