using Loadmark.Core.Rigs;
using Loadmark.Planning.Explaining;

namespace Loadmark.Web.Views;

/// <summary>What a plan could not feed, as it is carried to where supplies are bought for it.</summary>
/// <param name="Dark">The loads, each with the outlet that it lacks.</param>
/// <param name="Only">The supplies that the plan might use; null for all.</param>
/// <param name="AcrossBoards">Whether supplies of one board might feed loads of another.</param>
public sealed record Shortage(ValueList<DarkLoad> Dark, IReadOnlySet<string>? Only, bool AcrossBoards);
