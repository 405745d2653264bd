namespace Loadmark.Core.Ratings;

/// <summary>A figure that was computed because it is not printed.</summary>
/// <param name="What">Which figure, such as "current".</param>
/// <param name="Working">The arithmetic: "45 W ÷ 9 V = 5 A".</param>
public sealed record Derivation(string What, string Working);
