namespace Loadmark.Core.Acceptance;

/// <summary>
/// How a reading is judged against limits when it may be off: the limits are moved inwards to pass and outwards to fail, both by w = r·U,
/// where U is the expanded uncertainty of the reading. Source: JCGM 106:2012, Evaluation of measurement data – The role of measurement
/// uncertainty in conformity assessment, 8.3 (guarded acceptance and guarded rejection; the number of the clause is from memory).
/// </summary>
public sealed record GuardBand
{
    /// <summary>
    /// r, zero or more. One, which JCGM 106:2012 8.3.2.2 and ISO 14253-1 give as in common use, unless set (both from memory). For a meter
    /// whose band is ±a, U = 2·a/√3 is more than a, so with one "pass" is never said of what may be outside. Below one it may be.
    /// </summary>
    public decimal Multiplier { get; init; } = 1;

    /// <summary>k, over zero: how many standard uncertainties an expanded one is. Two unless set (JCGM 100:2008, GUM, 6.3.3).</summary>
    public decimal CoverageFactor { get; init; } = 2;

    /// <summary>U = k·u.</summary>
    /// <param name="standardUncertainty">u, zero or more, in the unit; null where it is not known.</param>
    public Quantity<TUnit>? Expanded<TUnit>(double? standardUncertainty)
        where TUnit : struct, IUnit =>
        standardUncertainty is { } uncertainty ? new Quantity<TUnit>(CoverageFactor * (decimal)uncertainty) : null;

    /// <summary>Judges a reading.</summary>
    /// <param name="low">The least that the value may be; null for no such limit.</param>
    /// <param name="high">The most that the value may be, not below <paramref name="low"/>; null for no such limit.</param>
    /// <param name="reading">The reading.</param>
    /// <param name="expanded">Its expanded uncertainty U, zero or more; null where it is not known, and then nothing is sure.</param>
    /// <exception cref="ArgumentException">
    /// There is no limit, the limits are the wrong way round, the uncertainty or <see cref="Multiplier"/> is below zero, or
    /// <see cref="CoverageFactor"/> is not over it.
    /// </exception>
    public ConformityJudgement<TUnit> Judge<TUnit>(
        Quantity<TUnit>? low, Quantity<TUnit>? high, Quantity<TUnit> reading, Quantity<TUnit>? expanded)
        where TUnit : struct, IUnit
    {
        if (low is null && high is null)
            throw new ArgumentException("There is no limit to judge by.", nameof(low));
        if (low is { } least && high is { } most && least > most)
            throw new ArgumentException("The lower limit is above the upper one.", nameof(low));
        if (expanded is { Value: < 0 })
            throw new ArgumentException("An uncertainty is not below zero.", nameof(expanded));
        if (Multiplier < 0 || CoverageFactor <= 0)
            throw new ArgumentException("The multiplier is below zero, or the coverage factor not over it.", nameof(expanded));
        if (expanded is not { } uncertainty)
            return new ConformityJudgement<TUnit>(Conformity.NotSure, GuardBand: null, Probability: null);

        var width = Multiplier * uncertainty;
        var isInside = (low is null || reading >= low.Value + width) && (high is null || reading <= high.Value - width);
        var isOutside = (low is not null && reading < low.Value - width) || (high is not null && reading > high.Value + width);
        return new ConformityJudgement<TUnit>(
            isInside ? Conformity.Pass : isOutside ? Conformity.Fail : Conformity.NotSure,
            width,
            ConformityProbability.Of(low, high, reading, (double)(uncertainty / CoverageFactor).Value));
    }
}
