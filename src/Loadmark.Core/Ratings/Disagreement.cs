namespace Loadmark.Core.Ratings;

/// <summary>Two figures for the same thing that do not agree, and which one counts.</summary>
/// <param name="What">What the figures are about, such as "current".</param>
/// <param name="Working">Both figures with where each stands: "typed 250 mA, label 300 mA".</param>
/// <param name="Outcome">Which counts, as a sentence: "The typed figure counts."</param>
public sealed record Disagreement(string What, string Working, string Outcome);
