using Google.OrTools.Sat;
using Loadmark.Core.Fits;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Model;

/// <summary>How many loads of a group there are in some place.</summary>
/// <param name="Load">The loads.</param>
/// <param name="Count">How many.</param>
/// <param name="Most">How many at the most.</param>
/// <param name="Occupant">What each of them is there to others that share its return.</param>
internal readonly record struct LoadCount(LoadGroup Load, IntVar Count, long Most, Occupant Occupant);
