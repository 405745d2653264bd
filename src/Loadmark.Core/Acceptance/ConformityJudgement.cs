namespace Loadmark.Core.Acceptance;

/// <summary>A reading judged against limits.</summary>
/// <typeparam name="TUnit">The unit of the reading.</typeparam>
/// <param name="Judged">What it says.</param>
/// <param name="GuardBand">By how much the limits were moved inwards to pass and outwards to fail; null where that is not known.</param>
/// <param name="Probability">
/// How probable it is that the value is within, 0 to 1, were what the reading may be off spread normally; null where that is not known. It
/// is told beside the judgement and decides nothing.
/// </param>
public sealed record ConformityJudgement<TUnit>(Conformity Judged, Quantity<TUnit>? GuardBand, double? Probability)
    where TUnit : struct, IUnit;
