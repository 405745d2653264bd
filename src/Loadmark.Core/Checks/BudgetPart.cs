using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks;

/// <summary>One load's part of a budget, in the budget's unit.</summary>
/// <param name="Load">The load.</param>
/// <param name="Run">What it draws when it runs; zero when not known.</param>
/// <param name="Start">What it draws while it starts; zero when not known.</param>
/// <param name="IsKnown">Whether anything tells what it draws, and in watts at which voltage.</param>
internal sealed record BudgetPart(WiredLoad Load, decimal Run, decimal Start, bool IsKnown);
