using Google.OrTools.Sat;

namespace Loadmark.Planning.Model;

/// <summary>What the search came to.</summary>
/// <param name="Values">The best solution's value of a variable; null when none was found.</param>
/// <param name="Gaps">For each level how far the solution may be from the best; null when nothing is proven of it.</param>
internal sealed record ModelAnswer(Func<IntVar, long>? Values, long?[] Gaps);
