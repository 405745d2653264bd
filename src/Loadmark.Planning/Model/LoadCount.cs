using Google.OrTools.Sat;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Model;

/// <summary>How many loads of a group there are in some place.</summary>
/// <param name="Load">The loads.</param>
/// <param name="Count">How many.</param>
/// <param name="Most">How many at the most.</param>
internal readonly record struct LoadCount(LoadGroup Load, IntVar Count, long Most);
