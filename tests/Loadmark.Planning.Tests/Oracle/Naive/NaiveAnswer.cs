using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Tests.Oracle.Naive;

/// <summary>What the naive model found.</summary>
/// <param name="Rig">The rig with the best wiring found; null when none was.</param>
/// <param name="Proven">How many levels, from the first, are proven.</param>
/// <param name="Bounds">What is proven that no wiring falls below, level by level as far as the search came.</param>
internal sealed record NaiveAnswer(Rig? Rig, int Proven, IReadOnlyList<decimal> Bounds)
{
    /// <summary>The levels of that wiring, measured by the rules; null when there is none.</summary>
    public decimal[]? Vector { get; } = Rig is null ? null : Levels.Of(Rig);
}
